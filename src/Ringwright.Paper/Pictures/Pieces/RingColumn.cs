using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A line beside a picture, divided where its rings meet, and left of it every ring's name and height.</summary>
internal static class RingColumn
{
    private const double Tick = 1, Elbow = 5, Gap = 1, Between = 2; // mm
    private const double NameRoom = 24;                             // of one name, mm; longer ones are cut
    private const double Pitch = 3.6;                               // from line to line, mm
    private const double Over = 6;                                  // how far the names may reach above and below the rings, mm

    private static readonly TextStyle Letters = TypeScale.Note with { Fractions = true };

    /// <summary>Draws it.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="x">Where the line stands, mm.</param>
    /// <param name="rings">The rings from the bottom up.</param>
    /// <param name="ends">Lower end of the lowest ring and upper end of every ring on the paper, mm.</param>
    /// <param name="style">How lengths are printed.</param>
    public static void Draw(Drawing drawing, double x, ImmutableArray<Ring> rings, IReadOnlyList<double> ends, MeasureStyle style)
    {
        int most = Math.Max(1, (int)((ends[0] - ends[^1] + (2 * Over)) / Pitch));
        ImmutableArray<RingGroup> groups = RingGroup.Of(rings, most);
        List<double> marks = [ends[0]];
        for (int i = 0, done = 0; i < groups.Length; i++) marks.Add(ends[done += groups[i].Rings.Length]);
        drawing.Line(new(x, marks[0]), new(x, marks[^1]), Pens.Fine);
        foreach (double y in marks) drawing.Line(new(x - Tick, y), new(x + Tick, y), Pens.Fine);
        double[] middles = [.. groups.Select((_, i) => (marks[i] + marks[i + 1]) / 2)];
        Names(drawing, x, groups, middles, style);
    }

    // From the bottom up, so the paper's y falls.
    private static void Names(Drawing drawing, double x, ImmutableArray<RingGroup> groups, double[] middles, MeasureStyle style)
    {
        double[] rows = Apart([.. middles.Select(y => -y)], Pitch);
        double right = x - Elbow - Gap;
        TextLine[] heights = [.. groups.Select(g => Typesetter.Set(g.Height(style), Letters))];
        double names = right - heights.Max(h => h.Width) - Between;
        for (int i = 0; i < groups.Length; i++)
        {
            double y = -rows[i];
            drawing.Line(new(x, middles[i]), new(x - Elbow, y), Pens.Fine)
                .Text(heights[i], new(right, y), Anchor.MiddleRight)
                .Text(Typesetter.Set(Name(groups[i]), Letters), new(names, y), Anchor.MiddleRight);
        }
    }

    private static string Name(RingGroup group)
    {
        (string first, string? last) = group.Names;
        string Cut(string name, double room) => Shortened.To(name, s => Typesetter.WidthOf(s, Letters) <= room);
        return last is null ? Cut(first, NameRoom) : $"{Cut(first, NameRoom / 2)} – {Cut(last, NameRoom / 2)}";
    }

    /// <summary>Rising places moved as little as possible (least squares) until neighbours are at least <paramref name="pitch"/> apart.</summary>
    internal static double[] Apart(IReadOnlyList<double> places, double pitch)
    {
        // Less their pitch they must not fall: what falls is pooled to its mean.
        List<(double Sum, int Count)> pools = [];
        for (int i = 0; i < places.Count; i++)
        {
            (double Sum, int Count) pool = (places[i] - (i * pitch), 1);
            for (; pools.Count > 0 && pools[^1].Sum / pools[^1].Count > pool.Sum / pool.Count; pools.RemoveAt(pools.Count - 1))
                pool = (pool.Sum + pools[^1].Sum, pool.Count + pools[^1].Count);
            pools.Add(pool);
        }

        return [.. pools.SelectMany(p => Enumerable.Repeat(p.Sum / p.Count, p.Count)).Select((place, i) => place + (i * pitch))];
    }
}
