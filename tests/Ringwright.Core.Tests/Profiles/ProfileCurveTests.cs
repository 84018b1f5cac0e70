using System.Collections.Immutable;
using CsCheck;
using MathNet.Numerics.Interpolation;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using static Ringwright.Core.Tests.Profiles.AnyShape;

namespace Ringwright.Core.Tests.Profiles;

public class ProfileCurveTests
{
    [Fact]
    public void Two_points_make_a_straight_side()
    {
        var cone = ProfileCurve.Through([At(100, 10), At(40, 70)]);
        for (double z = 10.5; z <= 70; z += 7.5) Assert.Equal(50 - ((z - 10) / 2), cone.Radius(z, Side.Below), 12);
        Assert.Equal(2 / Math.Sqrt(5), cone.Normal(20, Side.Above).X, 12);
        Assert.Equal(1 / Math.Sqrt(5), cone.Normal(20, Side.Above).Y, 12);
    }

    [Fact]
    public void A_step_has_a_radius_on_either_side()
    {
        var curve = ProfileCurve.Through([At(60, 0), At(60, 20, true), At(100, 20, true), At(100, 40)]);
        Assert.Equal((30, 50), (curve.Radius(20, Side.Below), curve.Radius(20, Side.Above)));
        Assert.Equal((30, 30), curve.Extents(0, 20));
        Assert.Equal((50, 50), curve.Extents(20, 40));
        Assert.Equal((30, 50), curve.Extents(10, 30));
    }

    /// <summary>Before limiting, the slopes are those of MathNet.Numerics' parabolically terminated cubic spline.</summary>
    [Fact]
    public void Unlimited_slopes_are_those_of_a_general_spline_library()
    {
        double[] x = [0, 1, 2.5, 3, 5, 6.5, 7], y = [3, 1, 4, 1, 5, 9, 2];
        double[] steps = [.. x.Skip(1).Zip(x, (b, a) => b - a)], chords = [.. y.Skip(1).Zip(y, (b, a) => b - a).Zip(steps, (d, h) => d / h)];
        var peer = CubicSpline.InterpolateBoundariesSorted(x, y, SplineBoundaryCondition.ParabolicallyTerminated, 0, SplineBoundaryCondition.ParabolicallyTerminated, 0);
        double[] slopes = MonotoneTangents.Spline(steps, chords);
        for (int i = 0; i < x.Length; i++) Assert.Equal(peer.Differentiate(Math.Min(x[i], x[^1] - 1e-12)), slopes[i], 8);
    }

    [Fact]
    public void A_gentle_curve_keeps_the_slopes_of_the_smooth_spline()
    {
        ShapePoint[] points = Circle(50, 10, 60, -1.2, 1.2, 9);
        var curve = ProfileCurve.Through([.. points]);
        for (double a = -1.19; a < 1.2; a += 0.017)
            Assert.InRange(Math.Abs(new Vector2D(curve.Radius(60 + (50 * Math.Sin(a)), Side.Above) - 10, 50 * Math.Sin(a)).Length - 50), 0, 0.02);
    }

    /// <summary>The defining property of monotone interpolation (Fritsch and Carlson 1980): between neighbours, in both coordinates.</summary>
    [Fact]
    public void Between_two_points_neither_height_nor_radius_turns_back() => Outer.Sample(points =>
    {
        var curve = ProfileCurve.Through(points);
        Assert.Equal(points.Length - 1, curve.Spans.Length);
        for (int i = 0; i < curve.Spans.Length; i++)
        {
            CurveSpan span = curve.Spans[i];
            double way = Math.Sign(points[i + 1].Diameter.Millimetres - points[i].Diameter.Millimetres);
            Assert.Equal((points[i].Diameter.Millimetres / 2, points[i].Height.Millimetres), (span.Start.X, span.Start.Y));
            Assert.InRange((span.At(1) - span.End).Length, 0, 1e-11);
            for (double u = 0; u <= 1; u += 1.0 / 64)
            {
                Assert.InRange(way * span.Run(u).X, way == 0 ? 0 : -1e-11, double.MaxValue);
                Assert.InRange(span.Run(u).Y, -1e-11, double.MaxValue);
                Assert.True(span.Run(u).Length > 0, "the curve stands still");
            }
        }
    });

    [Fact]
    public void Smooth_points_are_passed_without_a_corner() => Outer.Sample(points =>
    {
        var curve = ProfileCurve.Through(points);
        for (int i = 0; i + 1 < curve.Spans.Length; i++)
        {
            Vector2D before = curve.Spans[i].Run(1), after = curve.Spans[i + 1].Run(0);
            if (curve.SmoothAbove[i]) Assert.InRange(Math.Abs(before.Cross(after)) / (before.Length * after.Length), 0, 1e-9);
        }
    });

    [Fact]
    public void Extents_contain_every_radius_and_are_attained() => Gen.Select(Outer, Gen.Double[0, 0.9], Gen.Double[0.01, 0.1]).Sample((points, start, width) =>
    {
        ImmutableArray<ShapePoint> usable = points[^1].Height == points[0].Height ? points.Add(At(50, points[0].Height.Millimetres + 10)) : points;
        var curve = ProfileCurve.Through(usable);
        double z0 = curve.Bottom + (start * (curve.Top - curve.Bottom)), z1 = Math.Min(curve.Top, z0 + (width * (curve.Top - curve.Bottom)));
        (double least, double most) = curve.Extents(z0, z1);
        double sampledLeast = double.MaxValue, sampledMost = 0;
        for (int i = 0; i <= 400; i++)
        {
            double r = curve.Radius(z0 + ((z1 - z0) * i / 400), i == 400 ? Side.Below : Side.Above);
            (sampledLeast, sampledMost) = (Math.Min(sampledLeast, r), Math.Max(sampledMost, r));
        }

        Assert.InRange(sampledLeast, least - 1e-9, double.MaxValue);
        Assert.InRange(sampledMost, 0, most + 1e-9);
        double[] candidates = [curve.Radius(z0, Side.Above), curve.Radius(z1, Side.Below), .. usable.Where(p => p.Height.Millimetres > z0 && p.Height.Millimetres < z1).Select(p => p.Diameter.Millimetres / 2)];
        Assert.Equal(candidates.Min(), least, 9);
        Assert.Equal(candidates.Max(), most, 9);
    });
}
