using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Profiles;

/// <summary>The point of a curve nearest to another point.</summary>
internal static class NearestPoint
{
    private const int Parts = 16;

    /// <summary>The nearest point of the spans; whole spans that lie farther than the best so far are passed over.</summary>
    public static Vector2D On(ImmutableArray<CurveSpan> spans, Vector2D point)
    {
        Vector2D best = spans[0].Start;
        double least = (best - point).Length;
        foreach (CurveSpan span in spans)
        {
            if (FromBox(span.Start, span.End, point) >= least) continue;
            for (int i = 0; i < Parts; i++)
            {
                double low = (double)i / Parts, high = (i + 1.0) / Parts;
                Vector2D start = span.At(low), end = i == Parts - 1 ? span.End : span.At(high);
                if (FromBox(start, end, point) >= least) continue;
                Vector2D near = InPart(span, point, low, high, end);
                double distance = (near - point).Length;
                if (distance < least) (best, least) = (near, distance);
            }
        }

        return best;
    }

    // The distance shrinks while the run of the curve points towards the point.
    private static Vector2D InPart(CurveSpan span, Vector2D point, double low, double high, Vector2D end)
    {
        if (Away(span, point, low) >= 0) return span.At(low);
        if (Away(span, point, high) <= 0) return end;
        for (double u = (low + high) / 2; u > low && u < high; u = (low + high) / 2)
        {
            if (Away(span, point, u) < 0) low = u;
            else high = u;
        }

        return span.At(high);
    }

    private static double Away(CurveSpan span, Vector2D point, double u) => span.Run(u).Dot(span.At(u) - point);

    // Neither radius nor height turns back within a span, so its ends are corners of its box.
    private static double FromBox(Vector2D a, Vector2D b, Vector2D point)
    {
        double x = Math.Max(0, Math.Max(Math.Min(a.X, b.X) - point.X, point.X - Math.Max(a.X, b.X)));
        double y = Math.Max(0, Math.Max(a.Y - point.Y, point.Y - b.Y));
        return double.Hypot(x, y);
    }
}
