using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Drawings;

/// <summary>Cuts lines at the edges of a box: exact for straight lines and arcs, so that what is cut goes on on the next page.</summary>
internal static class Clipping
{
    private const double Rounding = 1e-9; // mm

    /// <summary>What of a line lies inside <paramref name="box"/>; null when nothing does.</summary>
    public static Outline? Within(this Outline outline, Box box)
    {
        List<Contour> kept = [];
        foreach (Contour contour in outline.Contours) Add(kept, contour, box);
        return kept.Count == 0 ? null : new(kept);
    }

    private static void Add(List<Contour> kept, Contour contour, Box box)
    {
        (Vector2D From, Segment Step)[] steps = [.. Steps(contour)];
        if (steps.All(s => Inside(s, box)))
        {
            kept.Add(contour);
            return;
        }

        int first = kept.Count;
        foreach ((Vector2D start, Segment step) in steps.SelectMany(s => Parts(s.From, s.Step, box)))
        {
            // A part that begins where the last one ends goes on with it.
            if (kept.Count > first && (End(kept[^1]) - start).Length <= Rounding) kept[^1] = kept[^1] with { Segments = [.. kept[^1].Segments, step] };
            else kept.Add(new(start, [step], Closed: false));
        }
    }

    private static IEnumerable<(Vector2D From, Segment Step)> Steps(Contour contour)
    {
        Vector2D at = contour.Start;
        foreach (Segment step in contour.Segments)
        {
            yield return (at, step);
            at = Outline.EndOf(at, step);
        }

        if (contour.Closed && (at - contour.Start).Length > Rounding) yield return (at, new Segment.Line(contour.Start));
    }

    private static bool Inside((Vector2D From, Segment Step) part, Box box) =>
        Crossings(part.From, part.Step, box).Length == 0 && box.Contains(new(Along(part.From, part.Step, 0.5).X, Along(part.From, part.Step, 0.5).Y, 0, 0), Rounding);

    // The stretches between crossings whose middle lies inside.
    private static IEnumerable<(Vector2D From, Segment Step)> Parts(Vector2D from, Segment step, Box box)
    {
        double[] cuts = [0, .. Crossings(from, step, box), 1];
        for (int i = 0; i + 1 < cuts.Length; i++)
        {
            Vector2D middle = Along(from, step, (cuts[i] + cuts[i + 1]) / 2);
            if (!box.Contains(new(middle.X, middle.Y, 0, 0), Rounding)) continue;
            Vector2D start = Along(from, step, cuts[i]);
            yield return (start, step is Segment.Arc arc ? arc with { Sweep = arc.Sweep * (cuts[i + 1] - cuts[i]) } : new Segment.Line(Along(from, step, cuts[i + 1])));
        }
    }

    // Where a step crosses the lines of the box, as shares of its length, rising.
    private static double[] Crossings(Vector2D from, Segment step, Box box)
    {
        IEnumerable<double> all = step is Segment.Arc arc
            ? [.. OfArc(from, arc, box.X, p => p.X), .. OfArc(from, arc, box.Right, p => p.X), .. OfArc(from, arc, box.Y, p => p.Y), .. OfArc(from, arc, box.Bottom, p => p.Y)]
            : OfLine(from, ((Segment.Line)step).End, box);
        return [.. all.Where(t => t > Rounding && t < 1 - Rounding).Order()];
    }

    private static IEnumerable<double> OfLine(Vector2D a, Vector2D b, Box box) =>
        [(box.X - a.X) / (b.X - a.X), (box.Right - a.X) / (b.X - a.X), (box.Y - a.Y) / (b.Y - a.Y), (box.Bottom - a.Y) / (b.Y - a.Y)];

    private static IEnumerable<double> OfArc(Vector2D from, Segment.Arc arc, double at, Func<Vector2D, double> axis)
    {
        Vector2D spoke = from - arc.Centre;
        double radius = spoke.Length, share = (at - axis(arc.Centre)) / radius, start = Math.Atan2(spoke.Y, spoke.X);
        if (!(Math.Abs(share) <= 1)) yield break;
        double angle = Math.Acos(share), quarter = axis(new(1, 0)) == 1 ? 0 : Math.PI / 2;
        foreach (double crossing in new[] { quarter + angle, quarter - angle })
        {
            double turn = Math.IEEERemainder(crossing - start, 2 * Math.PI);
            // The same direction may come a turn later or earlier.
            foreach (double t in new[] { turn, turn + (2 * Math.PI), turn - (2 * Math.PI) }) yield return t / arc.Sweep;
        }
    }

    private static Vector2D Along(Vector2D from, Segment step, double t) => step is Segment.Arc arc
        ? arc.Centre + (from - arc.Centre).Rotated(arc.Sweep * t)
        : t == 1 ? ((Segment.Line)step).End : from + (t * (((Segment.Line)step).End - from));

    private static Vector2D End(Contour contour) => contour.Segments.Aggregate(contour.Start, Outline.EndOf);
}
