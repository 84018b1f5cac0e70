using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Drawings;

/// <summary>Clips the lines of a hatch to a shape, by the even-odd rule, so that holes stay empty.</summary>
internal static class Hatching
{
    /// <summary>The lines of <paramref name="hatch"/> inside <paramref name="outline"/>.</summary>
    public static Outline Lines(Outline outline, Hatch hatch)
    {
        IReadOnlyList<Vector2D>[] contours = [.. outline.Flattened().Where(points => points.Count > 2)];
        return Outline.Join(hatch.Lines.SelectMany(family => Family(contours, family)));
    }

    // Works in axes along (u) and across (v) the lines, both through the paper's origin, so that neighbouring shapes
    // with the same hatch continue each other.
    private static IEnumerable<Outline> Family(IReadOnlyList<Vector2D>[] contours, HatchLines family)
    {
        Vector2D[][] turned = [.. contours.Select(c => c.Select(p => p.Rotated(-family.Angle)).ToArray())];
        if (turned.Length == 0)
            yield break;
        int first = (int)Math.Ceiling(turned.Min(c => c.Min(p => p.Y)) / family.Spacing);
        int last = (int)Math.Floor(turned.Max(c => c.Max(p => p.Y)) / family.Spacing);
        for (int row = first; row <= last; row++)
        {
            foreach ((double from, double to) in Spans(turned, row * family.Spacing).SelectMany(s => Dashes(s, family, row)))
                yield return Outline.Line(Back(from, row), Back(to, row));
        }

        Vector2D Back(double u, int row) => new Vector2D(u, row * family.Spacing).Rotated(family.Angle);
    }

    private static IEnumerable<(double From, double To)> Spans(Vector2D[][] contours, double v)
    {
        double[] crossings = [.. contours.SelectMany(c => Crossings(c, v)).Order()];
        for (int i = 0; i + 1 < crossings.Length; i += 2)
            yield return (crossings[i], crossings[i + 1]);
    }

    // An edge counts from its lower end up to, not including, its upper end, so that corners count once.
    private static IEnumerable<double> Crossings(Vector2D[] points, double v)
    {
        for (int i = 0; i < points.Length; i++)
        {
            Vector2D a = points[i], b = points[(i + 1) % points.Length];
            if (a.Y <= v != b.Y <= v)
                yield return a.X + ((v - a.Y) / (b.Y - a.Y) * (b.X - a.X));
        }
    }

    private static IEnumerable<(double From, double To)> Dashes((double From, double To) span, HatchLines family, int row)
    {
        if (family.Dash <= 0)
        {
            yield return span;
            yield break;
        }

        double period = family.Dash + family.Gap;
        double shift = row % 2 == 0 ? 0 : period / 2;
        for (double n = Math.Floor((span.From - shift) / period); shift + (n * period) < span.To; n++)
        {
            double from = Math.Max(span.From, shift + (n * period));
            double to = Math.Min(span.To, shift + (n * period) + family.Dash);
            if (to > from)
                yield return (from, to);
        }
    }
}
