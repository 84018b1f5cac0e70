using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Tests.Planning;

public class BlankRadiiTests
{
    private static readonly Shop Unsanded = Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(2500) }, Sanding = new() { PerFace = AnyPiece.Mm(0) } };

    private static RingPart Segment(double share) => new() { Wood = "maple", Share = share };

    private static RingPart Spacer(double thickness) => new() { Wood = "wenge", Thickness = AnyPiece.Mm(thickness) };

    private static MixedRing Mixed(params RingPart[] parts) => new()
    {
        Name = "Mixed",
        Diameter = AnyPiece.Mm(196),
        InnerDiameter = AnyPiece.Mm(160),
        Thickness = AnyPiece.Mm(15),
        Allowance = AnyPiece.Mm(2),
        Parts = [.. parts],
        Repeats = 2,
    };

    private static RingPlan Plan(Ring ring) => Planner.Plan(new() { Name = "Test", Rings = [ring] }, Unsanded).Rings[0];

    // Twice 120°, 30°, 30°: sides of a triangle and of a regular dodecagon, all 100 mm from the centre. Radius through the corners
    // of a triangle 2·r, of a dodecagon r·(√6 − √2) (Machinery's Handbook, table of regular polygons; MathWorld, "Dodecagon").
    [Fact]
    public void Unequal_segments_have_the_corners_of_their_own_polygons()
    {
        RingPlan plan = Plan(Mixed(Segment(4), Segment(1), Segment(1)));
        BlankRadii blank = BlankRadii.Of(plan).Low;
        Assert.Equal(100, blank.OuterFlat, 1e-9);
        Assert.Equal(200, blank.OuterCorner, 1e-9);
        // The triangle's side is the nearest to the hole's corner, so its corner is where the inside is turned: 80 − 2 mm.
        Assert.Equal(78, blank.InnerCorner, 1e-9);
        Assert.Equal(39, blank.InnerFlat, 1e-9);
        double small = plan.Batches.Single(b => b.Places.Length == 4).Glued.OuterCorner;
        Assert.Equal(100 * (Math.Sqrt(6) - Math.Sqrt(2)), small, 1e-9);
    }

    // A corner beside a spacer, by Pythagoras: as far out as its flat, as far aside as where the joint crosses it. Joint and ray are
    // parallel, half a spacer apart, so the aside is flat · tan(half the angle) − half the thickness / cos(half the angle).
    [Fact]
    public void Spacers_move_the_corners_and_are_read_themselves()
    {
        const double t = 6;
        RingPlan plan = Plan(Mixed(Segment(1), Spacer(t), Segment(1), Spacer(t)));
        (double outer, double half) = (100, Math.PI / 4);
        double aside = (outer * Math.Tan(half)) - (t / 2 / Math.Cos(half));
        SpacerBatch spacer = Assert.Single(plan.Spacers);
        double corner = Math.Max(Hypot(outer, aside), Hypot(spacer.Outer, t / 2));
        Assert.Equal(corner, BlankRadii.Of(plan).Low.OuterCorner, 1e-9);
        Assert.True(corner < 100 / Math.Cos(half), "spacers keep the corners away from where the flats would meet");
        Assert.Equal(Math.Min(outer, spacer.Outer), BlankRadii.Of(plan).Low.OuterFlat, 1e-9);
    }

    // tan and cos of the regular polygon (Machinery's Handbook): for equal segments nothing but them.
    [Fact]
    public void Equal_segments_are_a_regular_polygon() => Gen.OneOf(AnyPiece.Disc, AnyPiece.Open).Sample(ring =>
    {
        RingPlan plan = Plan(ring);

        (BlankRadii low, BlankRadii high) = BlankRadii.Of(plan);
        double cos = Math.Cos(Math.PI / ring.Around);
        Assert.Equal(low, high);
        Assert.Equal(low.OuterFlat / cos, low.OuterCorner, 1e-9);
        Assert.Equal(low.InnerFlat / cos, low.InnerCorner, 1e-9);
    });

    [Fact]
    public void Staves_lean_from_their_one_face_to_the_other()
    {
        RingPlan plan = Plan(new StaveRing { Name = "Staves", Segments = 8, Diameter = AnyPiece.Mm(200), InnerDiameter = AnyPiece.Mm(120), Thickness = AnyPiece.Mm(80), Lean = Angle.FromDegrees(15), Woods = ["maple"] });
        StaveGeometry stave = plan.Stave!.Value;
        (BlankRadii low, BlankRadii high) = BlankRadii.Of(plan);
        Assert.Equal(80 * Math.Tan(stave.Lean), high.OuterFlat - low.OuterFlat, 1e-9);
        BlankRadii middle = low.Towards(high, 0.5);
        Assert.Equal(stave.OuterApothem(40), middle.OuterFlat, 1e-9);
        Assert.Equal(stave.InnerApothem(40) / Math.Cos(Math.PI / 8), middle.InnerCorner, 1e-9);
    }

    private static double Hypot(double x, double y) => Math.Sqrt((x * x) + (y * y));
}
