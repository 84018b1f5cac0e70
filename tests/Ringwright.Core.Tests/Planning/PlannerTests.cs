using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

public class PlannerTests
{
    private static readonly WedgeDisc Disc = new()
    {
        Name = "Disc",
        Segments = 24,
        Diameter = AnyPiece.Mm(19),
        Thickness = AnyPiece.Mm(30),
        Allowance = AnyPiece.Mm(0),
        Woods = ["maple", "padauk"],
    };

    private static RingPlan Plan(Ring ring, Shop? shop = null) => Planner.Plan(new() { Name = "Test", Rings = [ring] }, shop ?? Shop.Starting).Rings[0];

    [Fact]
    public void Every_formula_gives_its_figure() =>
        Gen.Select(AnyPiece.Piece, AnyPiece.Shop).Sample((piece, shop) => FormulaReader.AssertGivesAll(Planner.Plan(piece, shop).Rings[0]));

    [Fact]
    public void Only_counts_and_searches_have_no_formula_to_evaluate()
    {
        RingPlan plan = Plan(Disc);
        Assert.Equal(["wedges-per-board", "maple/to-saw", "padauk/to-saw"], plan.Figures.Where(f => !f.Why.Evaluates).Select(f => f.Name));
    }

    [Fact]
    public void Same_inputs_same_plan_to_the_bit() =>
        Gen.Select(AnyPiece.Piece, AnyPiece.Shop).Sample((piece, shop) =>
            PlanJson.Write(Planner.Plan(piece, shop), MeasureStyle.Millimetres) == PlanJson.Write(Planner.Plan(piece, shop), MeasureStyle.Millimetres));

    [Fact]
    public void No_figure_is_ever_not_a_number() =>
        Gen.Select(AnyPiece.Piece, AnyPiece.Shop).Sample((piece, shop) =>
            Planner.Plan(piece, shop).Rings[0].Figures.All(f => double.IsFinite(f.Value)));

    // Common practice, no source: boards half as wide as the disc.
    [Theory]
    [InlineData(25.4, 12.7)]
    [InlineData(19, 9.5)]
    [InlineData(12.7, 6.35)]
    public void A_board_half_as_wide_as_the_disc_makes_a_disc_sawn_to_a_point(double diameter, double width) =>
        Assert.Equal(width, Plan(Disc with { Diameter = AnyPiece.Mm(diameter) })["board-width"].Value, 1e-12);

    // Machinery's Handbook, constants for a 5-inch sine bar, 10°: 0.86824 in (from memory; equals 5 sin 10°).
    [Fact]
    public void Sine_bar_height_is_the_handbook_constant()
    {
        RingPlan plan = Plan(Disc with { Segments = 18 }, Shop.Starting with { Sled = new() { SineBar = Length.Parse("5 in") } });
        Assert.Equal(0.86824 * 25.4, plan["sine-bar-height"].Value, 5e-6 * 25.4);
    }

    [Fact]
    public void The_sawn_wedge_is_the_finished_one_after_sanding()
    {
        RingPlan plan = Plan(Disc);
        double a = Math.PI / 24;
        Assert.Equal(plan["rim-edge"].Value + (2 * 0.05 / Math.Cos(a)), plan["sawn-rim-edge"].Value, 1e-12);
        Assert.Equal(plan["sawn-rim-edge"].Value, plan["stop"].Value);
        Assert.Equal(2 * 0.05 / Math.Cos(a), plan["sawn-tip"].Value, 1e-12);
    }

    [Fact]
    public void Boards_hold_the_wedges_they_are_said_to() =>
        Gen.Select(AnyPiece.Piece, AnyPiece.Shop).Sample((piece, shop) =>
        {
            RingPlan plan = Planner.Plan(piece, shop).Rings[0];
            int perBoard = (int)plan["wedges-per-board"].Value;
            double board = shop.Boards.Length.Millimetres;
            bool fits = plan.Strip.LengthFor(perBoard) <= board + 1e-6 && plan.Strip.LengthFor(perBoard + 1) > board;
            return fits && plan.Woods.Sum(w => w.Needed) == piece.Rings[0].Around && plan.Woods.All(w => w.Boards * perBoard >= w.ToSaw && w.LeftOver >= -1e-6);
        });

    [Fact]
    public void A_bore_that_covers_the_opening_recommends_the_easiest_tip_that_still_vanishes()
    {
        RingPlan plan = Plan(Disc with { Bore = AnyPiece.Mm(7) });
        Finding finding = Assert.Single(plan.Findings, f => f.Change is not null);
        Assert.Equal("tip", finding.Change!.Field);
        RingPlan changed = Plan(Disc with { Bore = AnyPiece.Mm(7), Tip = AnyPiece.Mm(finding.Change.Millimetres) });
        Assert.InRange(changed["bore-margin"].Value, 0, 0.3);
        Assert.DoesNotContain(changed.Findings, f => f.Change is not null);
    }

    [Fact]
    public void A_tip_too_flat_for_the_bore_is_a_doubt_with_the_change_that_mends_it()
    {
        RingPlan plan = Plan(Disc with { Bore = AnyPiece.Mm(4), Tip = AnyPiece.Mm(1) });
        Finding finding = plan.Findings[0];
        Assert.Equal(Weight.Doubt, finding.Weight);
        RingPlan mended = Plan(Disc with { Bore = AnyPiece.Mm(4), Tip = AnyPiece.Mm(finding.Change!.Millimetres) });
        Assert.True(mended["bore-margin"].Value >= 0);
    }

    [Fact]
    public void A_given_board_gives_the_tip()
    {
        RingPlan plan = Plan(Disc with { BoardWidth = AnyPiece.Mm(8) });
        Assert.Equal(8, plan["board-width"].Value, 1e-12);
        Assert.Equal(2 * 1.5 * Math.Tan(Math.PI / 24), plan["tip"].Value, 1e-12);
    }

    [Fact]
    public void A_board_wider_than_half_the_disc_is_refused_with_the_width_that_would_do()
    {
        BadInputException e = Assert.Throws<BadInputException>(() => Plan(Disc with { BoardWidth = AnyPiece.Mm(10) }));
        Assert.Contains("9.5 mm", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_turned_ring_lies_within_the_glued_one()
    {
        var ring = new SegmentRing { Name = "Ring", Segments = 12, Diameter = AnyPiece.Mm(120), InnerDiameter = AnyPiece.Mm(90), Thickness = AnyPiece.Mm(18), Allowance = AnyPiece.Mm(2), Woods = ["oak"] };
        RingPlan plan = Plan(ring);
        Assert.Equal(62, plan.Glued.OuterApothem, 1e-12);
        Assert.Equal(43, plan.Glued.InnerCorner, 1e-12);
    }

    [Fact]
    public void A_pattern_that_jumps_is_told() =>
        Assert.Contains(Plan(Disc with { Segments = 25 }).Findings, f => f.Weight == Weight.Doubt && f.Sentence.In(MeasureStyle.Millimetres).Contains("jumps", StringComparison.Ordinal));

    [Fact]
    public void Names_with_braces_are_only_names()
    {
        RingPlan plan = Plan(Disc with { Name = "{9}", Woods = ["{0}", "}{"] });
        Assert.All(plan.Findings, f => Assert.NotEmpty(f.Sentence.In(MeasureStyle.Millimetres)));
    }

    [Fact]
    public void Boards_too_short_for_one_wedge_are_refused_with_the_length_needed()
    {
        BadInputException e = Assert.Throws<BadInputException>(() => Plan(Disc, Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(80) } }));
        Assert.Contains("are needed", e.Message, StringComparison.Ordinal);
    }
}
