using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning.Constructions;

public class OpenSegmentsTests
{
    private static readonly Shop Unsanded = Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(2500) }, Sanding = new() { PerFace = AnyPiece.Mm(0) } };

    private static readonly OpenRing Ring = new()
    {
        Name = "Gapped",
        Segments = 24,
        Diameter = AnyPiece.Mm(160),
        InnerDiameter = AnyPiece.Mm(130),
        Thickness = AnyPiece.Mm(12),
        Allowance = AnyPiece.Mm(2),
        Gap = Angle.FromDegrees(3),
        Woods = ["ash"],
    };

    private static RingPlan Plan(Ring ring, Shop? shop = null) => Planner.Plan(new() { Name = "Test", Rings = [ring] }, shop ?? Unsanded).Rings[0];

    [Fact]
    public void A_gap_takes_its_share_of_every_wedge()
    {
        // By hand: 360/24 = 15°, less 3° leaves 12°, so a mitre of 6°.
        RingPlan plan = Plan(Ring);
        Assert.Equal(12, double.RadiansToDegrees(plan["wedge-angle"].Value), 9);
        Assert.Equal(6, double.RadiansToDegrees(plan["mitre"].Value), 9);
        Assert.Equal(82, plan.Glued.OuterApothem, 1e-9);
        Assert.Equal(63, plan.Glued.InnerCorner, 1e-9);
    }

    [Fact]
    public void Without_a_gap_to_speak_of_it_is_the_closed_ring()
    {
        RingPlan open = Plan(Ring with { Gap = Angle.FromDegrees(1e-7) });
        RingPlan closed = Plan(new SegmentRing { Name = "Closed", Segments = 24, Diameter = Ring.Diameter, InnerDiameter = Ring.InnerDiameter, Thickness = Ring.Thickness, Allowance = Ring.Allowance, Woods = ["ash"] });
        foreach (string name in new[] { "rim-edge", "tip", "stop", "board-width", "across-corners", "strip-per-wedge" })
            Assert.Equal(closed[name].Value, open[name].Value, 1e-5);
    }

    [Fact]
    public void Pieces_from_their_boards_stand_apart_by_the_spacer() =>
        AnyPiece.Gapped.Sample(ring =>
        {
            RingPlan plan = Plan(ring);
            ImmutableArray<ImmutableArray<Vector2D>> pieces = PlanAreas.FromBoards(plan, 2500);
            double rim = double.PositiveInfinity;
            for (int i = 0; i < pieces.Length; i++)
            {
                ImmutableArray<Vector2D> here = pieces[i], next = pieces[(i + 1) % pieces.Length];
                Assert.All(here, p => Assert.True(PlanAreas.Beyond(plan.Layout[i].From, p) > -1e-6 && PlanAreas.Beyond(plan.Layout[i].To, p) < 1e-6));
                Assert.False(PlanAreas.Polygon(here).Intersects(PlanAreas.Polygon(next)));
                // Least distance between neighbours, measured by NetTopologySuite, is at or below the gap between inner corners.
                double apart = PlanAreas.Polygon(here).Distance(PlanAreas.Polygon(next));
                Assert.InRange(apart, 0, plan["gap-at-tip"].Value + 1e-6);
                rim = Math.Min(rim, here.SelectMany(a => next.Select(b => (a, b))).Where(p => Far(p.a) && Far(p.b)).Min(p => (p.a - p.b).Length));
            }

            Assert.Equal(plan["gap-at-rim"].Value, rim, 1e-6);

            bool Far(Vector2D p) => Math.Abs(p.Length - plan.Glued.OuterCorner) < 1e-6;
        }, iter: 40);

    [Fact]
    public void Wedges_and_gaps_make_a_full_turn() =>
        AnyPiece.Gapped.Sample(ring =>
            Math.Abs((ring.Segments * (Plan(ring)["wedge-angle"].Value + ring.Gap.Radians)) - (2 * Math.PI)) < 1e-9);

    [Fact]
    public void Dividers_step_around_the_plate_in_as_many_steps_as_there_are_segments()
    {
        // Chord of a regular 24-gon, side over circumradius 0.26105 (Machinery's Handbook, table of regular polygons, from memory; 2 sin 7.5°).
        RingPlan plan = Plan(Ring);
        Assert.Equal(0.26105, plan["plate-step"].Value / (plan["plate-circle"].Value / 2), 5e-6);
    }

    [Fact]
    public void It_does_not_close_and_says_so()
    {
        RingPlan plan = Plan(Ring);
        Assert.Null(plan.Find("chance-to-close"));
        Assert.InRange(plan["chance-even"].Value, 0, 1);
        Assert.StartsWith("Its gaps look even", plan.Verdict.In(MeasureStyle.Millimetres), StringComparison.Ordinal);
        Assert.Contains(plan.Findings, f => f.Sentence.In(MeasureStyle.Millimetres).StartsWith("Open segments do not close", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wedge_off_by_its_limit_changes_each_gap_by_what_is_said()
    {
        RingPlan plan = Plan(Ring);
        RingPlan narrower = Plan(Ring with { Gap = Angle.FromRadians(Ring.Gap.Radians - plan["angle-per-wedge"].Value) });
        double change = plan["gap-at-rim"].Value - narrower["gap-at-rim"].Value;
        Assert.Equal(plan["gap-per-wedge-error"].Value, change, 0.01 * change);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(14)]
    public void A_gap_of_nothing_or_of_nearly_all_is_refused(double degrees)
    {
        BadInputException e = Assert.Throws<BadInputException>(() => PieceCheck.Check(new() { Name = "Test", Rings = [Ring with { Gap = Angle.FromDegrees(degrees) }] }));
        Assert.Contains("13.5°", e.Message, StringComparison.Ordinal);
    }
}
