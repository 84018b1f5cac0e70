using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stations;

/// <summary>How far a part of the picture has come.</summary>
internal enum Growth
{
    /// <summary>Nothing done yet.</summary>
    Loose,

    /// <summary>Glued by itself.</summary>
    Glued,

    /// <summary>On the stack.</summary>
    Stacked,
}

/// <summary>The glue-up as it grows: the rings of a stack from the side, or the pieces of a single ring from above.</summary>
internal sealed class GlueGrowth
{
    private const double Apart = 0.12, RunsApart = 0.07; // of the radius, outwards

    private GlueGrowth(ImmutableArray<(string Points, string Wood, Growth State)> parts, string viewBox) => (Parts, ViewBox) = (parts, viewBox);

    /// <summary>Corners, wood and state of each part.</summary>
    public ImmutableArray<(string Points, string Wood, Growth State)> Parts { get; }

    public string ViewBox { get; }

    /// <summary>The picture of a plan.</summary>
    public static GlueGrowth Of(GluePlan glue, GlueTicks ticks) => glue.Rings.Length > 1 ? Stack(glue, ticks) : Ring(glue.Rings[0], ticks);

    private static GlueGrowth Stack(GluePlan glue, GlueTicks ticks)
    {
        ImmutableArray<ImmutableArray<Vector2D>> blanks = PieceOutlines.Side(glue.Plan).Blanks;
        double reach = blanks.SelectMany(b => b).Max(v => v.X), high = blanks.SelectMany(b => b).Max(v => v.Y), low = blanks.SelectMany(b => b).Min(v => v.Y);
        return new(
            [.. blanks.Index().SelectMany(b => new[] { b.Item, [.. b.Item.Select(v => new Vector2D(-v.X, v.Y))] }.Select(side => (Svg.Points(side, 1), glue.Plan.Rings[b.Index].Layout[0].Wood, StateOf(b.Index))))],
            Box(-reach, -high, reach, -low));

        Growth StateOf(int ring) => ticks.IsStacked(ring) ? Growth.Stacked : ticks.IsGlued(ring) ? Growth.Glued : Growth.Loose;
    }

    private static GlueGrowth Ring(RingGluing ring, GlueTicks ticks)
    {
        ImmutableArray<LaidOutline> laid = LaidOutline.Of(ring.Ring);
        double reach = laid.SelectMany(o => o.Corners).Select(c => c.Length).DefaultIfEmpty(ring.Ring.Ring.Outside.Millimetres / 2).Max();
        bool closed = ring.GlueUps.IsEmpty || ticks.IsClosed(0), parts = !closed && ticks.HasParts(0);
        GluedRun[] runs = parts ? [.. ring.GlueUps[..^1].Where((_, g) => !ring.GlueUps[..^1].Any(u => u.After.Contains(g))).SelectMany(u => u.Made)] : [];
        double edge = reach * 1.15;
        return new([.. laid.Select((o, i) => (Svg.Points(o.Corners.Select(c => c + Moved(i, o)), 1), ring.Ring.Layout[o.Place].Wood, closed ? Growth.Stacked : parts ? Growth.Glued : Growth.Loose))], Box(-edge, -edge, edge, edge));

        Vector2D Moved(int index, LaidOutline outline)
        {
            if (closed) return Vector2D.Zero;
            GluedRun run = runs.FirstOrDefault(r => (index - r.First + laid.Length) % laid.Length < r.Count);
            if (run.Count == 0) return Vector2D.Polar(Apart * reach, outline.Middle);
            Vector2D middle = Enumerable.Range(run.First, run.Count).Aggregate(Vector2D.Zero, (sum, i) => sum + Vector2D.Polar(1, laid[i % laid.Length].Middle));
            return middle.Length < 1e-9 ? Vector2D.Zero : (RunsApart * reach / middle.Length) * middle;
        }
    }

    private static string Box(double left, double top, double right, double bottom)
    {
        double edge = 0.04 * Math.Max(right - left, bottom - top);
        return $"{Svg.N(left - edge)} {Svg.N(top - edge)} {Svg.N(right - left + (2 * edge))} {Svg.N(bottom - top + (2 * edge))}";
    }
}
