using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Planning;

public class StaveLayoutTests
{
    [Fact]
    public void Staves_lie_in_their_board_between_its_faces() =>
        Gen.Select(AnyStaves.Ring, AnyStaves.Shop).Sample((ring, shop) =>
        {
            RingPlan plan = AnyStaves.Plan(ring, AnyStaves.Unsanded(shop));
            double width = Math.Max(shop.Boards.Width?.Millimetres ?? 150, plan.Strip.LengthFor(1));
            for (int i = 0; i < plan.Layout.Length; i++)
            {
                ConvexSolid stave = AnyStaves.InBoard(plan, i);
                (double low, double high) = stave.Extent(new(0, 0, 1));
                Assert.Equal(0, low, 1e-6);
                Assert.Equal(plan["board-thickness"].Value, high, 1e-6);
                (double left, double right) = stave.Extent(new(0, 1, 0));
                Assert.InRange(left, shop.Saw.EndTrim.Millimetres - 1e-6, right);
                Assert.InRange(right, left, width + 1e-6);
                (double near, double far) = stave.Extent(new(1, 0, 0));
                Assert.InRange(near, shop.Saw.EndTrim.Millimetres - 1e-6, far);
                Assert.InRange(far, near, shop.Boards.Length.Millimetres - shop.Saw.HoldingLength.Millimetres + 1e-6);
            }
        }, iter: 60);

    // Neighbours from one board are one kerf apart: nothing is sawn twice, and nothing is left over between them.
    [Fact]
    public void Staves_of_a_board_are_a_kerf_apart() =>
        Gen.Select(AnyStaves.Ring, AnyStaves.Shop).Sample((ring, shop) =>
        {
            RingPlan plan = AnyStaves.Plan(ring with { Woods = ["oak"] }, AnyStaves.Unsanded(shop));
            int columns = (int)plan["staves-across"].Value;
            for (int i = 1; i < plan.Layout.Length; i++)
            {
                if (plan.Layout[i].Board != plan.Layout[i - 1].Board) continue;
                ConvexSolid before = AnyStaves.InBoard(plan, i - 1), after = AnyStaves.InBoard(plan, i);
                if (plan.Layout[i].Cut % columns != 0) Assert.Equal(shop.Saw.Kerf.Millimetres, Clear(before, after), 1e-6);
                else Assert.True(Clear(AnyStaves.InBoard(plan, i - columns), after) > shop.Saw.Kerf.Millimetres - 1e-6 || columns > i);
            }
        }, iter: 60);

    // A stave between its six planes: mean section times length (a prism with slanted ends and converging sides), summed by the clipper.
    [Fact]
    public void All_staves_together_are_the_ring_between_two_pyramids() =>
        Gen.Select(AnyStaves.Ring, AnyStaves.Shop).Sample((ring, shop) =>
        {
            RingPlan plan = AnyStaves.Plan(ring, AnyStaves.Unsanded(shop));
            StaveGeometry stave = plan.Stave!.Value;
            double sum = Enumerable.Range(0, plan.Layout.Length).Sum(i => AnyStaves.InBoard(plan, i).Volume);
            Assert.Equal(Pyramid(stave, stave.OuterApothem) - Pyramid(stave, stave.InnerApothem), sum, 1e-6 * sum);
        }, iter: 40);

    // Any wall that leans with the staves, from the diameter outside at the wide end to the diameter inside at the narrow end.
    [Fact]
    public void The_wall_with_its_allowance_lies_within_the_staves() =>
        Gen.Select(AnyStaves.Ring, AnyStaves.Shop, Gen.Double[0, 1]).Sample((ring, shop, at) =>
        {
            RingPlan plan = AnyStaves.Plan(ring, shop);
            StaveGeometry stave = plan.Stave!.Value;
            double z = at * ring.Thickness.Millimetres, slope = Math.Tan(Math.Abs(stave.Lean)), q = shop.Wanted.Allowance.Millimetres;
            double outside = (ring.Outside.Millimetres / 2) - (Math.Abs(stave.WideEnd > z ? ring.Thickness.Millimetres - z : z) * slope);
            double inside = (ring.InnerDiameter!.Value.Millimetres / 2) + (Math.Abs(stave.WideEnd > z ? z : ring.Thickness.Millimetres - z) * slope);
            Assert.InRange(outside + q, 0, stave.OuterApothem(z) + 1e-9);
            Assert.InRange(inside - q, (stave.InnerApothem(z) / Math.Cos(stave.HalfAngle)) - 1e-9, 1e9);
        });

    // A wall of three straight parts, in its own straight wall: held at every level, and touched outside and inside somewhere.
    [Fact]
    public void A_bulging_wall_is_held_by_the_narrowest_leaning_one() =>
        Gen.Select(Gen.Select(Gen.Double[30, 60], Gen.Double[3, 12]).Array[4], Gen.Double[-60, 60]).Sample((radii, degrees) =>
        {
            var wall = new WallSection([.. radii.Select((r, i) => new WallLevel(20.0 * i, r.Item1, r.Item1 - r.Item2))]);
            double lean = double.DegreesToRadians(degrees), slope = Math.Tan(Math.Abs(lean));
            (double outside, double inside) = StaveWall.Diameters(wall, lean, 0, 60);
            double[] clearOutside = [.. wall.Levels.Select(l => (outside / 2) - (slope * (lean >= 0 ? 60 - l.Z : l.Z)) - l.Outer)];
            double[] clearInside = [.. wall.Levels.Select(l => l.Inner - (inside / 2) - (slope * (lean >= 0 ? l.Z : 60 - l.Z)))];
            Assert.Equal(0, clearOutside.Min(), 1e-9);
            Assert.Equal(0, clearInside.Min(), 1e-9);
        });

    [Fact]
    public void A_conical_wall_gives_its_own_lean()
    {
        var cone = new WallSection([new(10, 40, 35), new(60, 65, 60)]);
        Assert.Equal(Math.Atan(0.5), StaveWall.LeanOf(cone), 1e-12);
        (double outside, double inside) = StaveWall.Diameters(cone, StaveWall.LeanOf(cone), 10, 60);
        Assert.Equal(130, outside, 1e-9);
        Assert.Equal(70, inside, 1e-9);
    }

    private static double Pyramid(StaveGeometry stave, Func<double, double> apothem)
    {
        double low = apothem(stave.Bottom), high = apothem(stave.Top);
        double areaFactor = stave.Segments * Math.Tan(stave.HalfAngle);
        return areaFactor * (stave.Top - stave.Bottom) * ((low * low) + (low * high) + (high * high)) / 3;
    }

    // Widest gap over the planes of both: the distance of two convex solids that a face of one keeps apart.
    private static double Clear(ConvexSolid a, ConvexSolid b)
    {
        double widest = double.NegativeInfinity;
        foreach ((ConvexSolid from, ConvexSolid to) in new[] { (a, b), (b, a) })
            foreach (HalfSpace plane in from.Planes) widest = Math.Max(widest, to.Extent(plane.Normal).Least - plane.Offset);
        return widest;
    }
}
