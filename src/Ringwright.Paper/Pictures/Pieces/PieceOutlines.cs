using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>What is seen of one wood: closed outlines, mm, y upwards.</summary>
/// <param name="Wood">The wood.</param>
/// <param name="Outlines">Its outlines; they do not overlap.</param>
/// <param name="LeastWidth">Width of its narrowest piece where it is widest, mm.</param>
public sealed record WoodPatch(string Wood, ImmutableArray<ImmutableArray<Vector2D>> Outlines, double LeastWidth);

/// <summary>A piece from its side. Lengths in mm: x from the axis, y above the bottom of the lowest ring.</summary>
/// <param name="Woods">The left half from outside, by wood.</param>
/// <param name="Cut">The right half cut through along the axis: the wood of each ring that is not turned away.</param>
/// <param name="Blanks">Each ring as glued, cut through on the right.</param>
public sealed record SideOutlines(ImmutableArray<WoodPatch> Woods, ImmutableArray<ImmutableArray<Vector2D>> Cut, ImmutableArray<ImmutableArray<Vector2D>> Blanks);

/// <summary>One ring of the outside laid flat.</summary>
/// <param name="Ring">Index of the ring.</param>
/// <param name="Half">Half its length, mm.</param>
/// <param name="Low">Height of its lower edge in the picture, mm.</param>
/// <param name="High">Height of its upper edge, mm.</param>
/// <param name="Segments">Where each piece of wood begins and ends half way up, radians from the middle of the picture.</param>
public sealed record FlatRow(int Ring, double Half, double Low, double High, ImmutableArray<(double From, double To)> Segments);

/// <summary>The outside of a piece laid flat, as seen from outside.</summary>
/// <param name="Woods">The pieces by wood; x along the ring from the middle of the picture.</param>
/// <param name="Rows">The rings from the bottom up, without those that are turned away.</param>
public sealed record FlatOutlines(ImmutableArray<WoodPatch> Woods, ImmutableArray<FlatRow> Rows)
{
    private const double Turn = 2 * Math.PI;

    /// <summary>The ring and the piece of wood at a place in the picture, by index; null beside them.</summary>
    public (int Ring, int Segment)? At(Vector2D place)
    {
        if (Rows.FirstOrDefault(r => place.Y >= r.Low && place.Y < r.High && Math.Abs(place.X) <= r.Half) is not FlatRow row) return null;
        double angle = place.X / row.Half * Math.PI;
        for (int k = 0; k < row.Segments.Length; k++)
        {
            (double from, double to) = row.Segments[k];
            double into = angle - from;
            if (into - (Turn * Math.Floor(into / Turn)) < to - from) return (row.Ring, k);
        }

        return null;
    }
}

/// <summary>The outlines of a piece's pictures without paper, pens and letters: for a screen that draws them itself.</summary>
public static class PieceOutlines
{
    private const double ScreenFineness = 1e-3; // of the piece's size: under a pixel

    /// <summary>The piece from its side: the left half from outside, the right half cut through.</summary>
    public static SideOutlines Side(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<PieceRing> rings = PieceRing.Of(plan, ScreenFineness);
        var patches = new Patches();
        foreach (PieceRing ring in rings.Where(r => r.Turned is not null))
        {
            WallLevel widest = ring.Levels.MaxBy(l => l.Outer);
            foreach (SeenSegment segment in ring.Seen(ring.Levels))
                foreach (double move in Elevation.Quarter.Moves(segment))
                    patches.Add(segment, [.. Elevation.Edge(segment, move, l => l.From), .. Elevation.Edge(segment, move, l => l.To).Reverse()], widest);
        }

        return new(patches.All, [.. rings.Where(r => r.Turned is not null).Select(r => CutHalf.Wood(r.Levels).ToImmutableArray())], [.. rings.Select(r => RingBlank.Of(r.Stacked))]);
    }

    /// <summary>The outside laid flat.</summary>
    public static FlatOutlines Flat(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<PieceRing> rings = PieceRing.Of(plan, ScreenFineness);
        var patches = new Patches();
        var rows = ImmutableArray.CreateBuilder<FlatRow>();
        foreach (UnrolledRing row in UnrolledRing.Of(rings))
        {
            SeenSegment[] seen = [.. row.Seen()];
            foreach (SeenSegment segment in seen)
                foreach (double move in UnrolledRing.Turn.Moves(segment))
                    patches.Add(segment, [.. row.Edge(segment, move, l => l.From), .. row.Edge(segment, move, l => l.To).Reverse()], row.Middle);

            rows.Add(new(rings.IndexOf(row.Ring), row.Half, row.Low, row.High, [.. seen.Select(s => s.At(row.Middle)).Select(at => (at.From, at.To))]));
        }

        return new(patches.All, rows.DrainToImmutable());
    }

    private sealed class Patches
    {
        private readonly Dictionary<string, (ImmutableArray<ImmutableArray<Vector2D>>.Builder Outlines, double Least)> _byWood = new(StringComparer.OrdinalIgnoreCase);

        public ImmutableArray<WoodPatch> All => [.. _byWood.Select(w => new WoodPatch(w.Key, w.Value.Outlines.ToImmutable(), w.Value.Least))];

        public void Add(SeenSegment segment, ImmutableArray<Vector2D> outline, WallLevel widest)
        {
            SeenLevel at = segment.At(widest);
            double width = widest.Outer * Math.Min(1, at.To - at.From);
            (ImmutableArray<ImmutableArray<Vector2D>>.Builder outlines, double least) = _byWood.TryGetValue(segment.Wood, out var known) ? known : (ImmutableArray.CreateBuilder<ImmutableArray<Vector2D>>(), width);
            outlines.Add(outline);
            _byWood[segment.Wood] = (outlines, Math.Min(least, width));
        }
    }
}
