using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using Ringwright.Core.Documents;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning.Constructions;

public class MixedSegmentsTests
{
    private static readonly Shop Unsanded = Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(2500) }, Sanding = new() { PerFace = AnyPiece.Mm(0) } };

    private static readonly MixedRing Ring = new()
    {
        Name = "Mixed",
        Diameter = AnyPiece.Mm(200),
        InnerDiameter = AnyPiece.Mm(160),
        Thickness = AnyPiece.Mm(15),
        Allowance = AnyPiece.Mm(2),
        Parts = [Segment("maple", 2), Spacer("wenge", 1.5), Segment("cherry", 1), Spacer("wenge", 1.5)],
        Repeats = 6,
    };

    private static RingPart Segment(string wood, double share) => new() { Wood = wood, Share = share };

    private static RingPart Spacer(string wood, double thickness) => new() { Wood = wood, Thickness = AnyPiece.Mm(thickness) };

    private static RingPlan Plan(Ring ring, Shop? shop = null) => Planner.Plan(new() { Name = "Test", Rings = [ring] }, shop ?? Unsanded).Rings[0];

    [Fact]
    public void Wedge_angles_are_shares_of_the_whole_turn()
    {
        RingPlan plan = Plan(Ring);
        Assert.Equal([40.0, 20.0], plan.Batches.Select(b => Math.Round(double.RadiansToDegrees(b.Glued.WedgeAngle), 9)));
        Assert.Equal(10, double.RadiansToDegrees(plan["mitre-2"].Value), 9);
        Assert.Equal(plan["mitre-2"].Value, plan.Alone(1)["mitre"].Value);
        // t/(2 sin a) for equal spacers: two lines 0.75 mm beside rays 20° apart meet 0.75/sin 10° out.
        Assert.Equal(0.75 / Math.Sin(double.DegreesToRadians(10)), plan["apex-radius-2"].Value, 1e-9);
        SpacerBatch spacers = Assert.Single(plan.Spacers);
        Assert.Equal((12, 1.5), (spacers.Need.Needed, spacers.Thickness));
        Assert.Equal(24, plan.Layout.Length);
    }

    [Fact]
    public void Pieces_from_their_boards_fill_the_turned_ring_and_never_overlap() =>
        AnyPiece.Mixed.Sample(ring =>
        {
            RingPlan plan = Plan(ring);
            ImmutableArray<ImmutableArray<Vector2D>> pieces = PlanAreas.FromBoards(plan, 2500);
            for (int i = 0; i < pieces.Length; i++)
                Assert.All(pieces[i], p => Assert.True(PlanAreas.Beyond(plan.Layout[i].From, p) > -1e-6 && PlanAreas.Beyond(plan.Layout[i].To, p) < 1e-6, $"piece {i}"));
            Polygon[] polygons = [.. pieces.Select(p => PlanAreas.Polygon(p))];
            for (int i = 0; i < polygons.Length; i++)
                for (int j = i + 1; j < polygons.Length; j++)
                    if (polygons[i].EnvelopeInternal.Intersects(polygons[j].EnvelopeInternal))
                        Assert.True(polygons[i].Buffer(-1e-6).Intersection(polygons[j].Buffer(-1e-6)).Area < 1e-6, $"{i} and {j} overlap");
            // Chords of 256 sides lie within the round by 1 − cos(π/256), so the ring is taken that much narrower.
            double outer = (ring.Outside.Millimetres / 2) + 1.5, inner = (ring.InnerDiameter!.Value.Millimetres / 2) - 1.5;
            var turned = PlanAreas.Annulus(inner * 1.0002, outer);
            double covered = polygons.Sum(p => p.Intersection(turned).Area);
            Assert.Equal(turned.Area, covered, 1e-5 * turned.Area);
        }, iter: 40);

    [Fact]
    public void Without_spacers_and_with_equal_shares_it_is_the_closed_ring()
    {
        RingPlan mixed = Plan(Ring with { Parts = [Segment("maple", 1), Segment("cherry", 1)], Repeats = 8 });
        RingPlan closed = Plan(new SegmentRing { Name = "Closed", Segments = 16, Diameter = Ring.Diameter, InnerDiameter = Ring.InnerDiameter, Thickness = Ring.Thickness, Allowance = Ring.Allowance, Woods = ["maple", "cherry"] });
        Assert.Single(mixed.Batches);
        foreach (Figure figure in closed.Figures)
            Assert.Equal(figure.Value, mixed[figure.Name].Value, 1e-9 * Math.Max(1, figure.Value));
        Assert.Equal(closed.Layout.Select(l => (l.Wood, l.Board, l.Cut)), mixed.Layout.Select(l => (l.Wood, l.Board, l.Cut)));
    }

    [Fact]
    public void Mirrored_neighbours_share_one_batch_and_stand_to_either_side()
    {
        RingPlan plan = Plan(Ring with { Parts = [Segment("maple", 1), Spacer("wenge", 1), Segment("maple", 1), Spacer("wenge", 3)] });
        Assert.Single(plan.Batches);
        // (t1 − t2)/(4 cos a) by hand: 2/(4 cos 15°).
        Assert.Equal(0.5 / Math.Cos(double.DegreesToRadians(15)), plan["apex-aside"].Value, 1e-9);
        Assert.Equal(2, plan.Spacers.Length);
    }

    [Fact]
    public void A_thicker_spacer_moves_the_wedge_outwards_by_what_is_said()
    {
        RingPlan thin = Plan(Ring), thick = Plan(Ring with { Parts = [Segment("maple", 2), Spacer("wenge", 1.6), Segment("cherry", 1), Spacer("wenge", 1.6)] });
        Assert.Equal(thin["moved-by-spacers"].Value, thick.Batches[0].Glued.ApexRadius - thin.Batches[0].Glued.ApexRadius, 1e-9);
        Assert.Equal(thin["wedge-angle"].Value, thick["wedge-angle"].Value);
    }

    [Fact]
    public void Every_batch_is_set_by_itself_and_its_error_is_its_own()
    {
        // By hand: settings 6² + 6² where twelve alike would be 12².
        RingPlan plan = Plan(Ring);
        Assert.Equal(72, plan["share-from-setting"].Why.Inputs.Single(i => i.Symbol == "Q").Value);
        RingPlan alike = Plan(Ring with { Parts = [Segment("maple", 1), Spacer("wenge", 1.5), Segment("cherry", 1), Spacer("wenge", 1.5)] });
        Assert.Equal(144, alike["share-from-setting"].Why.Inputs.Single(i => i.Symbol == "Q").Value);
        Assert.True(plan["chance-to-close"].Value > alike["chance-to-close"].Value);
    }

    [Fact]
    public void Spacers_that_meet_before_the_hole_are_refused_with_the_diameter_that_would_do()
    {
        MixedRing ring = Ring with { Parts = [Segment("maple", 1), Spacer("wenge", 12)], Repeats = 48 };
        BadInputException e = Assert.Throws<BadInputException>(() => Plan(ring));
        Assert.Contains("inner diameter", e.Message, StringComparison.Ordinal);
        // 6/sin 3.75° = 91.74 mm, and the allowance of 2 mm.
        Plan(ring with { InnerDiameter = AnyPiece.Mm(187.5), Diameter = AnyPiece.Mm(230) });
    }

    [Theory]
    [InlineData("open-ring.json")]
    [InlineData("mixed-ring.json")]
    public void The_examples_can_be_planned(string file)
    {
        Piece piece = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", file)));
        Plan plan = Planner.Plan(piece, Shop.Starting);
        Assert.DoesNotContain(plan.Findings, f => f.Weight == Weight.Stop);
        Assert.Equal(plan.Rings[0].Layout.Length, plan.Rings[0].Batches.Sum(b => b.Places.Length) + plan.Rings[0].Spacers.Sum(s => s.Places.Length));
    }

    [Fact]
    public void Every_word_of_a_plan_can_be_printed() =>
        AnyPiece.Mixed.Sample(ring =>
        {
            RingPlan plan = Plan(ring);
            Assert.All(plan.Steps, s => Assert.NotEmpty(s.In(MeasureStyle.InchFractions)));
            Assert.All(plan.Findings, f => Assert.NotEmpty(f.Sentence.In(MeasureStyle.Millimetres)));
            Assert.Equal(plan.Figures.Length, plan.Figures.Select(f => f.Name).Distinct().Count());
        });
}
