using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Planning;

/// <summary>Staves whose sizes come from the piece's shape, and what is turned from them.</summary>
public class StaveShapeTests
{
    private static readonly Gen<double> Radius = Gen.Double[40, 60];

    // Outside from foot to rim by way of a belly, the wall 5 mm square to it; open right through.
    private static Piece Mug(double foot, double belly, double rim, double height, Angle? lean = null) => new()
    {
        Name = "Mug",
        Shape = new()
        {
            Outer = [Point(foot, 0), Point(belly, height / 2), Point(rim, height)],
            Inside = new Wall { Thickness = AnyPiece.Mm(5) },
        },
        Rings = [new StaveRing { Name = "Body", Segments = 12, Lean = lean, Thickness = AnyPiece.Mm(height), Woods = ["ash", "walnut"] }],
    };

    private static ShapePoint Point(double radius, double height) => new() { Diameter = AnyPiece.Mm(2 * radius), Height = AnyPiece.Mm(height) };

    [Fact]
    public void The_shape_gives_lean_and_sizes_that_hold_the_wall_with_its_allowance() =>
        Gen.Select(Radius, Radius, Radius).Sample((foot, belly, rim) =>
        {
            Plan plan = Planner.Plan(Mug(foot, belly, rim, 80), Shop.Starting);
            RingPlan ring = plan.Rings[0];
            double q = Shop.Starting.Wanted.Allowance.Millimetres;
            foreach (WallLevel wall in plan.Form!.SectionWithin(0, 80, 0.01).Levels)
            {
                Assert.True(ring.Stave!.Value.OuterApothem(wall.Z) >= wall.Outer + q - 1e-9);
                Assert.True(ring.Stave!.Value.InnerApothem(wall.Z) / Math.Cos(ring.Stave.Value.HalfAngle) <= wall.Inner - q + 1e-9);
            }

            Assert.DoesNotContain(ring.Findings, f => f.Weight == Weight.Stop);
        });

    // A straight wall: the lean is its own, and both diameters are the shape's at the ends (0.02 mm is what the sizing keeps spare).
    [Theory]
    [InlineData(40, 55)]
    [InlineData(55, 40)]
    [InlineData(45, 45)]
    public void A_straight_shape_gives_its_own_sizes(double foot, double rim)
    {
        Piece mug = Mug(foot, (foot + rim) / 2, rim, 80);
        Shape drawn = mug.Shape! with { Inside = new Hollow { Points = [Point(foot - 6, 0), Point(rim - 6, 80)] } };
        var ring = (StaveRing)Planner.Plan(mug with { Shape = drawn }, Shop.Starting).Rings[0].Ring;
        double lean = Math.Atan((rim - foot) / 80);
        Assert.Equal(lean, ring.Lean!.Value.Radians, 1e-9);
        Assert.Equal(2 * Math.Max(foot, rim), ring.Outside.Millimetres, 0.03);
        Assert.Equal(2 * (Math.Min(foot, rim) - 6), ring.InnerDiameter!.Value.Millimetres, 0.03);
    }

    [Fact]
    public void Staves_too_narrow_for_the_shape_are_stopped()
    {
        Piece mug = Mug(40, 47.5, 55, 80);
        Piece narrow = mug with { Rings = [(StaveRing)mug.Rings[0] with { Diameter = AnyPiece.Mm(105) }] };
        Assert.Contains(Planner.Plan(narrow, Shop.Starting).Findings, f => f.Weight == Weight.Stop && f.Change?.Field == "diameter");
    }

    // Two rings of staves with one lean meet in faces that fit: at the joint the upper one is as wide as the lower one's top.
    [Fact]
    public void Glue_faces_of_leaning_staves_are_taken_where_they_meet()
    {
        Piece one = Mug(40, 55, 70, 120);
        var half = (StaveRing)one.Rings[0] with { Thickness = AnyPiece.Mm(60) };
        Plan plan = Planner.Plan(one with { Rings = [half with { Name = "Lower" }, half with { Name = "Upper" }] }, Shop.Starting);
        Assert.DoesNotContain(plan.Findings, f => f.Weight == Weight.Stop || f.Sentence.Template.Contains("overlaps", StringComparison.Ordinal));
    }

    [Fact]
    public void The_glued_volume_is_that_of_the_staves() =>
        Gen.Select(AnyStaves.Ring, AnyStaves.Shop).Sample((ring, shop) =>
        {
            // Without wood for flattening the staves end at the ring's faces.
            Shop flat = AnyStaves.Unsanded(shop);
            RingPlan plan = AnyStaves.Plan(ring, flat with { Sanding = flat.Sanding with { Flattening = AnyPiece.Mm(0) } });
            double sum = Enumerable.Range(0, plan.Layout.Length).Sum(i => AnyStaves.InBoard(plan, i).Volume);
            Assert.Equal(sum, plan.BlankVolume, 1e-6 * sum);
        }, iter: 40);

    // π ∫ (ro² − ri²) dz of a conical wall, exact by the mean of the end squares and their product.
    [Theory]
    [InlineData(5)]
    [InlineData(-5)]
    public void Turned_staves_without_a_shape_lean_with_their_wall(double degrees)
    {
        var ring = new StaveRing { Name = "Body", Segments = 12, Lean = Angle.FromDegrees(degrees), Thickness = AnyPiece.Mm(110), Diameter = AnyPiece.Mm(104), InnerDiameter = AnyPiece.Mm(66), Woods = ["ash", "walnut"] };
        double cone = 110 * Math.Tan(double.DegreesToRadians(5));
        double Cone(double wide, double narrow) => Math.PI * 110 * ((wide * wide) + (wide * narrow) + (narrow * narrow)) / 3;
        double volume = Cone(52, 52 - cone) - Cone(33 + cone, 33);
        Plan plan = Planner.Plan(new() { Name = "Mug", Rings = [ring] }, Shop.Starting);
        TurnedMass mass = TurnedMass.Of(plan.Turned().Rings, 700, 700);
        Assert.Equal(volume, mass.Whole.Volume, 1e-6 * volume);
        Assert.True(plan.Rings[0].BlankVolume > volume);
    }

    [Fact]
    public void Turned_staves_of_a_shape_are_its_wood() =>
        Gen.Select(Radius, Radius, Radius).Sample((foot, belly, rim) =>
        {
            Plan plan = Planner.Plan(Mug(foot, belly, rim, 80), Shop.Starting);
            double volume = TurnedVolumes.Of(plan.Turned().Rings[0].Section);
            Assert.Equal(volume, TurnedMass.Of(plan.Turned().Rings, 700, 700).Whole.Volume, 1e-6 * volume);
            Assert.Equal(plan.Form!.Volume, volume, 2e-3 * volume);
            Assert.True(plan.Rings[0].BlankVolume > volume);
        }, iter: 40);
}
