using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Core.Tests.Sawing;

namespace Ringwright.Core.Tests.Planning.Milling;

public class MillingPlanTests
{
    private static SegmentRing Ring(string name, double diameter, double inner, double height, string wood = "oak") =>
        new() { Name = name, Segments = 12, Diameter = AnyPiece.Mm(diameter), InnerDiameter = AnyPiece.Mm(inner), Thickness = AnyPiece.Mm(height), Woods = [wood] };

    private static MillingPlan Mill(Shop? shop, params Ring[] rings) => MillingPlan.Of(Planner.Plan(new() { Name = "Stack", Rings = [.. rings] }, shop ?? Shop.Starting));

    [Fact]
    public void Equal_strips_are_one_setting_and_nothing_is_lost()
    {
        MillingPlan milling = Mill(null, Ring("a", 100, 70, 20), Ring("b", 100, 70, 20), Ring("c", 100, 70, 12), Ring("d", 100, 70, 20, "ash"));
        Assert.Equal([20.5, 12.5], milling.Planer.Select(p => p.Thickness));
        Assert.Single(milling.Rip);
        Assert.Equal(3, milling.Strips.Length);
        Assert.Equal(["a", "b"], milling.Strips.Single(s => s.Rings.Length == 2).Rings);
        Assert.Equal(milling.Plan.Rings.Sum(r => r.Woods.Sum(w => w.Length)), milling.Strips.Sum(s => s.Length), 1e-9);
    }

    [Fact]
    public void All_strips_of_any_piece_are_in_one_planer_setting_each() => Gen.Select(AnyPiece.Piece, AnyPiece.Shop).Sample((piece, shop) =>
    {
        var milling = MillingPlan.Of(Planner.Plan(piece, shop));
        Assert.Equal(milling.Strips.Length, milling.Planer.Sum(p => p.Strips.Length));
        Assert.Equal(milling.Strips.Length, milling.Rip.Sum(r => r.Strips.Length));
        foreach (Figure figure in milling.Figures)
            Assert.Equal(FormulaReader.Evaluate(figure.Why.Formula, figure.Why.Inputs.ToDictionary(i => i.Symbol, i => i.Value)), figure.Value, 1e-9);
    });

    [Fact]
    public void The_thinnest_rough_board_that_cleans_up_is_taken_in_whole_passes()
    {
        PlanerSetting setting = Mill(null, Ring("a", 100, 70, 25)).Planer[0]; // 25.5 mm and 2 mm to plane: not from 27
        Assert.Equal((34, 9), (setting.Rough, setting.Passes)); // 8.5 mm, at most 1 mm each
        PlanerSetting thin = Mill(null, Ring("a", 100, 70, 6)).Planer[0]; // 6.5 mm, 8.5 mm each and 1.2 mm between: two out of 27
        Assert.Equal((27, 2, 2), (thin.Rough, thin.Slices, thin.Passes));
        MillingPlan thick = Mill(null, Ring("a", 100, 70, 100));
        Assert.Null(thick.Planer[0].Rough);
        Assert.Contains("No rough board is thick enough", thick.Minds[0].In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }

    [Fact]
    public void Nearly_equal_widths_are_told_with_their_price()
    {
        MillingPlan milling = Mill(null, Ring("a", 100, 70, 20), Ring("b", 100, 71, 20));
        NearWidth near = Assert.Single(milling.Near);
        Assert.Equal(("b", "a"), (near.Ring, near.Other));
        Assert.Equal((near.Wider - near.Width) * 20.5 * milling.Strips.Single(s => s.Rings.Contains("b")).Length, near.Extra, 1e-6);
    }

    [Fact]
    public void Boards_shorter_than_the_planer_holds_are_told() =>
        Assert.Contains("shorter than", Mill(Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(250) } }, Ring("a", 100, 70, 20)).Minds[0].In(MeasureStyle.Millimetres), StringComparison.Ordinal);

    // The exact cut, simulated: on either jig the two edges are at the fence in turn, so every wedge is off by the taper's angle, all one way.
    [Theory]
    [InlineData(true, 0.3)]
    [InlineData(true, -0.3)]
    [InlineData(false, 0.3)]
    public void A_tapered_strip_changes_every_wedge_alike(bool flipped, double change)
    {
        SawJob job = Example.Job(flipped ? Example.Mitre() : Example.Sled());
        SawRun run = SawSimulator.Run(job with { Board = job.Board with { WidthChange = change } });
        double taper = Math.Atan(change / job.Board.Length);
        Assert.Equal(Example.Segments * Math.Abs(taper), Math.Abs((2 * Math.PI) - Example.SumOfAngles(run)), 1e-9);
        Assert.All(run.Wedges, wedge => Assert.Equal(run.Wedges[0].Angle, wedge.Angle, 1e-12));
    }

    [Fact]
    public void The_taper_that_is_allowed_uses_up_what_the_ring_allows()
    {
        MillingPlan milling = Mill(null, Ring("a", 100, 70, 20));
        RingPlan ring = milling.Plan.Rings[0];
        double taper = milling.Find("strip-taper")!.Value;
        Assert.Equal(ring["closing-limit"].Value, 12 * Math.Atan(taper / 400), 1e-12);
        Assert.Equal(Shop.Starting.Wanted.JointGap.Millimetres, milling.Find("taper-opens")!.Value * taper / 0.1, 1e-6);
        Assert.Null(Mill(Shop.Starting with { Sled = new() { Kind = SledKind.DiscSander } }, Ring("a", 100, 70, 20)).Find("strip-taper"));
    }
}
