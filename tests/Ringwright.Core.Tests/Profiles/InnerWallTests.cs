using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using static Ringwright.Core.Tests.Profiles.AnyShape;

namespace Ringwright.Core.Tests.Profiles;

public class InnerWallTests
{
    [Fact]
    public void A_cylinder_keeps_its_wall()
    {
        var form = TurnedForm.Of(Walled(6, 10, At(100, 0), At(100, 80)));
        Assert.Equal((0, 44), (form.Inner(10, Side.Below), form.Inner(10, Side.Above)));
        Assert.Equal((0, 44, 44), (form.Inner(0), form.Inner(37), form.Inner(80)));
    }

    /// <summary>Parallel line of a line: shifted by t/cos of its lean; around the corner at the wide end a circle, at the other the line goes on.</summary>
    [Fact]
    public void A_cone_has_a_parallel_inside()
    {
        const double Lean = 0.3, T = 7;
        var form = TurnedForm.Of(Walled(T, null, At(200, 0), At(200 - (2 * 100 * Math.Tan(Lean)), 100)));
        for (double z = 0; z <= 100; z += 2.5)
        {
            double line = 100 - (z * Math.Tan(Lean)) - (T / Math.Cos(Lean)), round = T * Math.Sin(Lean);
            if (z > 100 - round) line = 100 - (100 * Math.Tan(Lean)) - Math.Sqrt((T * T) - ((100 - z) * (100 - z)));
            Assert.Equal(line, form.Inner(z), 9);
        }
    }

    /// <summary>The parallel of a circle is a circle (do Carmo, Differential Geometry of Curves and Surfaces, section 1-5).</summary>
    [Theory]
    [InlineData(0, 80, 12)] // a ball
    [InlineData(60, 30, 12)] // the outside of a torus
    [InlineData(60, 30, 29)] // nearly down to its core
    public void A_circle_has_a_smaller_circle_inside(double across, double radius, double t)
    {
        var form = TurnedForm.Of(Walled(t, null, Circle(radius, across, 100, -1.3, 1.3, 201)));
        double tip = (radius - t) * Math.Sin(1.29);
        for (double z = -tip; z <= tip; z += tip / 50)
            Assert.Equal(across + Math.Sqrt(((radius - t) * (radius - t)) - (z * z)), form.Inner(100 + z), 4);
    }

    /// <summary>The hollow side of a torus: there the parallel circle is larger.</summary>
    [Fact]
    public void A_waist_has_a_larger_circle_inside()
    {
        var form = TurnedForm.Of(Walled(8, null, Circle(30, 120, 100, Math.PI + 1.2, Math.PI - 1.2, 201)));
        for (double z = -30 * Math.Sin(1.2); z <= 30 * Math.Sin(1.2); z += 1)
            Assert.Equal(120 - Math.Sqrt((38 * 38) - (z * z)), form.Inner(100 + z), 4);
    }

    [Fact]
    public void Corners_round_outward_and_stay_sharp_inward()
    {
        var form = TurnedForm.Of(Walled(5, null, At(100, 0), At(100, 40, true), At(60, 40, true), At(60, 80)));
        Assert.Equal((45, 30), (form.Inner(35, Side.Below), form.Inner(35, Side.Above)));
        Assert.Equal(30 - Math.Sqrt(25 - 4), form.Inner(38), 12);
        Assert.Equal(25, form.Inner(41), 12);
    }

    [Fact]
    public void A_tight_belly_is_swallowed_to_a_sharp_corner()
    {
        ShapePoint[] belly = Circle(10, 40, 60, -1.2, 1.2, 101);
        var form = TurnedForm.Of(Walled(25, null, [At(60, 0), .. belly, At(60, 120)]));
        Assert.Contains(form.Corners, z => z is > 50 and < 70);
        Assert.InRange(form.Inner(60), 1, 49 - 25);
    }

    /// <summary>NetTopologySuite's buffer of the finely sampled curve: the inner wall lies on the edge of the union of its circles.</summary>
    [Fact]
    public void The_wall_is_the_edge_of_a_general_librarys_buffer() => EvenWall.Sample(
        shape =>
        {
            var form = TurnedForm.Of(shape.Shape);
            var line = new LineString([.. form.OuterCurve.Spans.SelectMany(s => Enumerable.Range(0, 101).Select(i => s.At(i / 100.0))).Select(p => new Coordinate(p.X, p.Y))]);
            NetTopologySuite.Geometries.Geometry boundary = line.Buffer(shape.Thickness, new BufferParameters(64)).Boundary;
            for (int i = 1; i < 20; i++)
            {
                double z = form.Bottom + (form.Height * i / 20), inner = form.Inner(z);
                if (inner == 0) continue;
                var point = new Point(inner, z);
                Assert.InRange(boundary.Distance(point), 0, 0.02);
                Assert.InRange(point.Distance(line), shape.Thickness - 0.02, shape.Thickness + 0.02);
            }
        },
        iter: 40);

    [Fact]
    public void No_inner_point_is_nearer_than_the_wall_and_each_is_as_near() => EvenWall.Sample(
        shape =>
        {
            var form = TurnedForm.Of(shape.Shape);
            for (int i = 0; i <= 40; i++)
            {
                double z = form.Bottom + (form.Height * i / 40);
                foreach (Side side in new[] { Side.Below, Side.Above })
                {
                    if (form.Inner(z, side) is not (> 0 and double inner)) continue;
                    var inside = new Vector2D(inner, z);
                    Assert.Equal(shape.Thickness, (NearestPoint.On(form.OuterCurve.Spans, inside) - inside).Length, 8);
                }
            }
        },
        iter: 100);

    /// <summary>The definition itself, by brute force: the least of R − √(t² − (z − Z)²) over the whole curve.</summary>
    [Fact]
    public void The_wall_is_the_least_over_all_circles() => Good.Where(s => s.Inside is Wall).Sample(
        shape =>
        {
            var form = TurnedForm.Of(shape);
            double floor = ((Wall)shape.Inside!).Floor?.Millimetres ?? form.Bottom;
            var thickness = WallThickness.Of((Wall)shape.Inside);
            for (int i = 1; i <= 12; i++)
            {
                double z = floor + ((form.Top - floor) * (i - 0.37) / 12);
                Assert.Equal(Math.Max(0, BruteForce.Inner(form.OuterCurve, thickness, z)), form.Inner(z), 7);
            }
        },
        iter: 60);
}
