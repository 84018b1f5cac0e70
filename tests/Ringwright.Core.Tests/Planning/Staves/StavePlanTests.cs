using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

public class StavePlanTests
{
    private static readonly StaveRing Mug = new()
    {
        Name = "Mug",
        Segments = 12,
        Lean = Angle.FromDegrees(8),
        Thickness = AnyPiece.Mm(100),
        Diameter = AnyPiece.Mm(110),
        InnerDiameter = AnyPiece.Mm(66),
        Woods = ["oak"],
    };

    [Fact]
    public void Every_formula_gives_its_figure() =>
        Gen.Select(AnyStaves.Ring, AnyStaves.Shop).Sample((ring, shop) => FormulaReader.AssertAll(AnyStaves.Plan(ring, shop)));

    [Fact]
    public void Boards_hold_the_staves_they_are_said_to() =>
        Gen.Select(AnyStaves.Ring, AnyStaves.Shop).Sample((ring, shop) =>
        {
            RingPlan plan = AnyStaves.Plan(ring, shop);
            int perBoard = (int)plan["wedges-per-board"].Value;
            return plan.Woods.Sum(w => w.Needed) == ring.Segments && plan.Woods.All(w => w.Boards * perBoard >= w.ToSaw && (w.Boards - 1) * perBoard < w.ToSaw && w.LeftOver >= -1e-6 && w.Length > 0)
                && plan.Layout.All(l => l.Cut < perBoard);
        });

    // Upright staves are a ring of wedges seen from the end: the same tilt as the mitre of a flat ring, parallel edges.
    [Fact]
    public void Upright_staves_need_no_mitre()
    {
        RingPlan plan = AnyStaves.Plan(Mug with { Lean = null }, Shop.Starting);
        Assert.Equal(Math.PI / 12, plan["blade-tilt"].Value, 1e-15);
        Assert.Null(plan.Find("mitre"));
        Assert.Equal(plan["rim-edge"].Value, plan["tip"].Value, 1e-12);
        Assert.Equal(100.5, plan["stave-length"].Value, 1e-12);
        Assert.Equal(56.5 - (31.5 * Math.Cos(Math.PI / 12)), plan["board-thickness"].Value, 1e-12);
    }

    [Fact]
    public void A_wider_bottom_is_the_same_work_as_a_wider_top()
    {
        RingPlan up = AnyStaves.Plan(Mug, Shop.Starting), down = AnyStaves.Plan(Mug with { Lean = Angle.FromDegrees(-8) }, Shop.Starting);
        Assert.Equal(up.Figures.Select(f => f.Name), down.Figures.Select(f => f.Name));
        Assert.All(up.Figures, f => Assert.Equal(f.Value, down[f.Name].Value, 1e-12 * Math.Max(1, f.Value)));
    }

    // Neighbours of one panel share a cut: (4 N − 2 runs) σ², as for wedges (design of the closing budget).
    [Fact]
    public void Leaning_staves_share_cuts_as_wedges_do()
    {
        RingPlan plan = AnyStaves.Plan(Mug, Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(1000), Width = AnyPiece.Mm(150) } });
        double edges = plan["closing-spread"].Why.Inputs.Single(i => i.Symbol == "V").Value;
        double panels = Math.Ceiling(12 / plan["staves-across"].Value);
        Assert.Equal((4 * 12) - (2 * panels), edges);
    }

    [Fact]
    public void A_lean_that_leaves_the_wall_is_refused_with_the_lean_that_would_do()
    {
        BadInputException e = Assert.Throws<BadInputException>(() => AnyStaves.Plan(Mug with { Lean = Angle.FromDegrees(20) }, Shop.Starting));
        Assert.Contains("ring Mug, lean", e.Message, StringComparison.Ordinal);
        double most = ((56.5 / Math.Cos(Math.PI / 12)) - 31.5) / 100;
        Assert.Contains(Math.Round(double.RadiansToDegrees(Math.Atan(most)), 2).ToString(System.Globalization.CultureInfo.InvariantCulture), e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Staves_that_come_to_a_point_inside_are_refused() =>
        Assert.Contains("come to a point", Assert.Throws<BadInputException>(() => AnyStaves.Plan(Mug with { Segments = 3, Diameter = AnyPiece.Mm(300), Lean = Angle.FromDegrees(30) }, Shop.Starting)).Message, StringComparison.Ordinal);

    [Fact]
    public void Boards_too_short_or_too_narrow_are_refused_with_what_is_needed()
    {
        Assert.Contains("are needed", Assert.Throws<BadInputException>(() => AnyStaves.Plan(Mug, Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(150) } })).Message, StringComparison.Ordinal);
        Assert.Contains("wide are needed", Assert.Throws<BadInputException>(() => AnyStaves.Plan(Mug, Shop.Starting with { Boards = new() { Width = AnyPiece.Mm(20) } })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_says_whether_it_closes_and_how_exact_the_tilt_must_be()
    {
        RingPlan plan = AnyStaves.Plan(Mug with { Lean = null }, Shop.Starting with { Hands = new() { AngleSd = Angle.FromDegrees(0.001), SettingSd = Angle.FromDegrees(0.001) } });
        Assert.Contains("tilt the blade within", plan.Verdict.In(MeasureStyle.Millimetres), StringComparison.Ordinal);
        Assert.NotEmpty(CutListCsv.Write(Planner.Plan(new() { Name = "Mug", Rings = [Mug] }, Shop.Starting), MeasureStyle.Millimetres));
    }
}
