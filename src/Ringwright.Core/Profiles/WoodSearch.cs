using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Profiles;

/// <summary>A place where wood is thin; points hold radius (X) and height (Y), mm.</summary>
/// <param name="Thickness">Distance between the two points, mm.</param>
/// <param name="Outside">The point outside.</param>
/// <param name="Inside">The point inside.</param>
public readonly record struct ThinnestWood(double Thickness, Vector2D Outside, Vector2D Inside);

/// <summary>Finds the least distance between outside and inside.</summary>
internal static class WoodSearch
{
    private const int PlacesPerArc = 8;
    private const double Even = 1e-9; // a wall this even, mm, has its least anywhere
    private const double GoldenShare = 0.381966011250105; // (3 − √5) / 2

    /// <summary>The thinnest wood: wall, floor or closed end.</summary>
    /// <param name="outer">The curve outside.</param>
    /// <param name="inner">The wall inside, not empty.</param>
    /// <param name="recess">Depth of a recess in the bottom, mm.</param>
    public static ThinnestWood Thinnest(ProfileCurve outer, WallLine inner, double recess)
    {
        ThinnestWood best = new(double.PositiveInfinity, default, default);
        ImmutableArray<CurveSpan> walls = [.. outer.Spans.Where(s => !IsMouth(s, outer, inner))];
        foreach (WallArc arc in inner.Arcs) best = AlongArc(walls, arc, best);
        if (inner.Bottom > outer.Bottom) best = Thinner(best, Upright(outer.Bottom + recess, inner.Bottom));
        if (inner.Top < outer.Top) best = Thinner(best, Upright(outer.Top, inner.Top));
        return best;
    }

    // Where the hollow opens through a level face, that face meets its edge; the distance there is nought and means nothing.
    private static bool IsMouth(CurveSpan span, ProfileCurve outer, WallLine inner)
    {
        if (!span.Level) return false;
        double mouth = span.End.Y == outer.Top ? inner.Radius(outer.Top, Side.Below) : span.End.Y == outer.Bottom ? inner.Radius(outer.Bottom, Side.Above) : 0;
        return mouth > Math.Min(span.Start.X, span.End.X);
    }

    // Even places first. Moving along the wall by some length changes the distance by no more than that length, so only stretches
    // that could still go below the best are searched.
    private static ThinnestWood AlongArc(ImmutableArray<CurveSpan> outer, WallArc arc, ThinnestWood best)
    {
        Span<ThinnestWood> found = stackalloc ThinnestWood[PlacesPerArc + 1];
        for (int i = 0; i <= PlacesPerArc; i++)
        {
            found[i] = From(outer, arc, i == PlacesPerArc ? arc.To : arc.From + (i * (arc.To - arc.From) / PlacesPerArc));
            best = Thinner(best, found[i]);
        }

        for (int i = 0; i <= PlacesPerArc; i++)
        {
            ThinnestWood below = found[Math.Max(0, i - 1)], above = found[Math.Min(PlacesPerArc, i + 1)];
            double here = found[i].Thickness, reach = Math.Abs(above.Inside.X - below.Inside.X) + above.Inside.Y - below.Inside.Y;
            bool even = Math.Max(below.Thickness, above.Thickness) - here < Even;
            if (even || here > Math.Min(below.Thickness, above.Thickness) || here - reach > best.Thickness) continue;
            best = Thinner(best, Golden(outer, arc, below.Inside.Y, above.Inside.Y));
        }

        return best;
    }

    private static ThinnestWood Golden(ImmutableArray<CurveSpan> outer, WallArc arc, double low, double high)
    {
        double first = low + (GoldenShare * (high - low)), second = high - (GoldenShare * (high - low));
        ThinnestWood atFirst = From(outer, arc, first), atSecond = From(outer, arc, second);
        while (second - first > 1e-7)
        {
            if (atFirst.Thickness <= atSecond.Thickness)
            {
                (high, second, atSecond) = (second, first, atFirst);
                first = low + (GoldenShare * (high - low));
                atFirst = From(outer, arc, first);
            }
            else
            {
                (low, first, atFirst) = (first, second, atSecond);
                second = high - (GoldenShare * (high - low));
                atSecond = From(outer, arc, second);
            }
        }

        return Thinner(atFirst, atSecond);
    }

    private static ThinnestWood From(ImmutableArray<CurveSpan> outer, WallArc arc, double z)
    {
        var inside = new Vector2D(arc.Radius(z), z);
        Vector2D outside = NearestPoint.On(outer, inside);
        return new((outside - inside).Length, outside, inside);
    }

    private static ThinnestWood Upright(double outside, double inside) => new(Math.Abs(inside - outside), new(0, outside), new(0, inside));

    private static ThinnestWood Thinner(ThinnestWood a, ThinnestWood b) => b.Thickness < a.Thickness ? b : a;
}
