using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Profiles;

/// <summary>
/// The curve through a shape's points: cubic spans over chord length, broken at sharp points. Its height never falls, and between
/// two points its radius stays between theirs, so the widest and narrowest places are always points the user set. Points of the
/// same height make a step. Immutable.
/// </summary>
public sealed class ProfileCurve
{
    private ProfileCurve(ImmutableArray<CurveSpan> spans, ImmutableArray<bool> smooth)
    {
        Spans = spans;
        SmoothAbove = smooth;
        Line = new([.. spans.Where(s => !s.Level).Select(s => new SpanArc(s))]);
    }

    /// <summary>Its spans from the bottom up, steps among them; they make a path of Bézier curves.</summary>
    public ImmutableArray<CurveSpan> Spans { get; }

    /// <summary>Height of its lowest point, mm.</summary>
    public double Bottom => Spans[0].Height.A;

    /// <summary>Height of its highest point, mm.</summary>
    public double Top => Line.Top;

    /// <summary>For each span, whether it goes over into the next one without a corner.</summary>
    internal ImmutableArray<bool> SmoothAbove { get; }

    /// <summary>Radius as a function of height.</summary>
    internal WallLine Line { get; }

    /// <summary>The curve through <paramref name="points"/>, which <c>ShapeCheck</c> has passed.</summary>
    public static ProfileCurve Through(ImmutableArray<ShapePoint> points)
    {
        Vector2D[] knots = [.. points.Select(p => new Vector2D(p.Diameter.Millimetres / 2, p.Height.Millimetres))];
        var spans = ImmutableArray.CreateBuilder<CurveSpan>(knots.Length - 1);
        var smooth = ImmutableArray.CreateBuilder<bool>(knots.Length - 1);
        int start = 0;
        for (int i = 1; i < knots.Length; i++)
        {
            bool corner = i == knots.Length - 1 || points[i].Sharp || MustTurn(knots[i - 1], knots[i], knots[i + 1]);
            smooth.Add(!corner);
            if (!corner) continue;
            AddRun(knots.AsSpan(start..(i + 1)), spans);
            start = i;
        }

        return new(spans.MoveToImmutable(), smooth.MoveToImmutable());
    }

    /// <summary>Radius at <paramref name="z"/>, mm, from one side. Outside the curve's heights 0.</summary>
    public double Radius(double z, Side side) => Line.Radius(z, side);

    /// <summary>Unit tangent at <paramref name="z"/>, going up: X is the change of radius. Outside the curve's heights (0, 1).</summary>
    public Vector2D Tangent(double z, Side side) => Line.At(z, side).Tangent;

    /// <summary>Unit normal at <paramref name="z"/>, pointing out of the wood.</summary>
    public Vector2D Normal(double z, Side side) => -Tangent(z, side).Perpendicular();

    /// <summary>Exact least and greatest radius over [<paramref name="z0"/>, <paramref name="z1"/>], steps at its ends left out.</summary>
    public (double Least, double Most) Extents(double z0, double z1) => Line.Extents(z0, z1);

    // At a step's end where the radius also turns back, a smooth curve that keeps both monotone would have to stand still there.
    private static bool MustTurn(Vector2D before, Vector2D here, Vector2D after) =>
        (here.Y == before.Y || after.Y == here.Y) && (here.X - before.X) * (after.X - here.X) <= 0;

    private static void AddRun(ReadOnlySpan<Vector2D> knots, ImmutableArray<CurveSpan>.Builder spans)
    {
        double[] steps = new double[knots.Length - 1], radii = new double[knots.Length], heights = new double[knots.Length];
        for (int i = 0; i < knots.Length; i++)
        {
            (radii[i], heights[i]) = (knots[i].X, knots[i].Y);
            if (i > 0) steps[i - 1] = (knots[i] - knots[i - 1]).Length;
        }

        double[] outward = MonotoneTangents.Of(steps, radii), upward = MonotoneTangents.Of(steps, heights);
        KeepMoving(0, 0, knots, steps, outward, upward);
        KeepMoving(knots.Length - 1, knots.Length - 2, knots, steps, outward, upward);
        for (int i = 0; i < steps.Length; i++)
            spans.Add(new(
                Cubic.Hermite(radii[i], radii[i + 1], outward[i] * steps[i], outward[i + 1] * steps[i]),
                Cubic.Hermite(heights[i], heights[i + 1], upward[i] * steps[i], upward[i + 1] * steps[i]),
                knots[i + 1]));
    }

    // Limiting may leave an end without any direction; then it starts along its chord.
    private static void KeepMoving(int knot, int span, ReadOnlySpan<Vector2D> knots, double[] steps, double[] outward, double[] upward)
    {
        if (outward[knot] != 0 || upward[knot] != 0) return;
        Vector2D chord = knots[span + 1] - knots[span];
        (outward[knot], upward[knot]) = (chord.X / steps[span], chord.Y / steps[span]);
    }
}
