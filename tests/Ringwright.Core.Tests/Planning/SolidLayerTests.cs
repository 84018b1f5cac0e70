using CsCheck;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

public class SolidLayerTests
{
    private static readonly SolidLayer Lid = new() { Name = "Lid", Diameter = AnyPiece.Mm(120), Thickness = AnyPiece.Mm(12), Wood = "walnut" };
    private static readonly SegmentRing Wall = new() { Name = "Wall", Segments = 12, Diameter = AnyPiece.Mm(120), InnerDiameter = AnyPiece.Mm(90), Thickness = AnyPiece.Mm(20), Woods = ["cherry"] };

    private static readonly Gen<SolidLayer> Layers =
        from diameter in Gen.Double[1, 1500]
        from thickness in Gen.Double[0.2, 60]
        from allowance in Gen.Double[0, 5]
        from shift in Gen.Double[-2, 2]
        select Lid with { Diameter = AnyPiece.Mm(diameter), Thickness = AnyPiece.Mm(thickness), Allowance = AnyPiece.Mm(Math.Min(allowance, diameter)), Shift = shift };

    private static RingPlan Plan(SolidLayer layer, Shop? shop = null) => Planner.Plan(new() { Name = "Test", Rings = [layer] }, shop ?? Shop.Starting).Rings[0];

    [Fact]
    public void Every_formula_gives_its_figure_and_none_is_not_a_number() =>
        Gen.Select(Layers, AnyPiece.Shop, Gen.Double[20, 400]).Sample((layer, shop, width) =>
            FormulaReader.AssertAll(Plan(layer, shop with { Boards = shop.Boards with { Width = AnyPiece.Mm(width) } })));

    [Fact]
    public void The_round_lies_in_its_board_with_room_for_the_blade_all_around_and_its_grain_turned() =>
        Gen.Select(Layers, AnyPiece.Shop).Sample((layer, shop) =>
        {
            RingPlan plan = Plan(layer, shop);
            Frame3D board = Assert.Single(plan.Layout).Frame;
            double radius = plan["round"].Value / 2, kerf = layer.IsVeneer ? 0 : shop.Saw.Kerf.Millimetres, trim = layer.IsVeneer ? 0 : shop.Saw.EndTrim.Millimetres;
            for (int i = 0; i < 36; i++)
            {
                Vector2D rim = Vector2D.Polar(radius, i * Math.PI / 18);
                Vector3D at = board.ToLocal(new Vector3D(rim.X, rim.Y, 1));
                Assert.InRange(at.X, trim + kerf - 1e-9, plan["board-length"].Value - kerf + 1e-9);
                Assert.InRange(at.Y, kerf - 1e-9, plan["board-width"].Value - kerf + 1e-9);
                Assert.Equal(1, at.Z, 12);
            }

            Assert.Equal(1, board.X.Dot(new(Math.Cos(2 * Math.PI * layer.Shift), Math.Sin(2 * Math.PI * layer.Shift), 0)), 12);
            Assert.Equal(1, board.X.Cross(board.Y).Dot(board.Z), 12);
        });

    [Fact]
    public void It_is_one_piece_all_around()
    {
        LaidSegment laid = Assert.Single(Plan(Lid).Layout);
        Assert.Equal((0, 2 * Math.PI), (laid.From.Direction, laid.To.Direction));
        Assert.Equal(new WoodNeed("walnut", 1, 1, 1, 130.4, 269.6), Plan(Lid).Woods[0] with { Length = 130.4, LeftOver = 269.6 });
    }

    // Common practice, no source: 123 mm blank from 60 mm boards takes three of them (2 · 60 = 120 is too narrow).
    [Theory]
    [InlineData(200, 1)]
    [InlineData(125.4, 1)]
    [InlineData(125, 2)]
    [InlineData(60, 3)]
    public void A_disc_wider_than_a_board_is_glued_of_several(double width, int boards)
    {
        Shop shop = Shop.Starting with { Boards = new() { Width = AnyPiece.Mm(width) } };
        RingPlan plan = Plan(Lid, shop);
        Assert.Equal(boards, plan["boards-across"].Value);
        Assert.Equal(boards, plan.Woods[0].Boards);
        Assert.Equal(boards > 1, plan.Steps[0].In(MeasureStyle.Millimetres).Contains("side by side", StringComparison.Ordinal));
    }

    [Fact]
    public void Thick_and_wide_next_to_segments_is_a_doubt_and_neither_a_veneer_nor_a_disc_by_itself()
    {
        static Weight Worst(params Ring[] rings) => Planner.Plan(new() { Name = "Test", Rings = [.. rings] }, Shop.Starting).Rings[^1].Findings[0].Weight;
        Assert.Equal(Weight.Doubt, Worst(Wall, Lid));
        Assert.Equal(Weight.Note, Worst(Lid));
        Assert.Equal(Weight.Note, Worst(Wall, Lid with { Thickness = AnyPiece.Mm(1) }));
    }

    [Fact]
    public void A_veneer_is_cut_with_a_knife_and_loses_no_kerf()
    {
        RingPlan plan = Plan(Lid with { Thickness = AnyPiece.Mm(0.6) });
        Assert.Equal(123, plan["board-width"].Value, 12);
        Assert.Equal(0.6, plan["board-thickness"].Value, 12);
        Assert.Contains("knife", plan.Steps[0].In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }

    [Fact]
    public void A_board_too_short_is_refused_with_the_length_needed()
    {
        BadInputException e = Assert.Throws<BadInputException>(() => Plan(Lid with { Diameter = AnyPiece.Mm(500) }));
        Assert.Equal("boards of at least 511 mm are needed", e.Right);
    }

    [Fact]
    public void There_is_nothing_to_saw_or_fit_and_one_sentence_says_so()
    {
        RingPlan plan = Plan(Lid);
        Assert.Contains("one piece of wood", Assert.Throws<BadInputException>(() => FitForecast.Of(plan, Shop.Starting, 20, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("one piece of wood", Assert.Throws<BadInputException>(() => RingJobs.Saw(plan, Shop.Starting, 1, ErrorCause.All)).Message, StringComparison.Ordinal);
        Assert.Contains("no joints", plan.Verdict.In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }
}
