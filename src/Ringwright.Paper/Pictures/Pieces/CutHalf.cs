using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>The right half of a piece cut through along the axis: each ring's wood hatched, around it dashed what was glued.</summary>
internal static class CutHalf
{
    /// <summary>Draws it.</summary>
    public static void Draw(Drawing drawing, ImmutableArray<PieceRing> rings, Placement place)
    {
        for (int i = 0; i < rings.Length; i++)
            if (rings[i].Turned is not null) drawing.Hatch(place.Polygon(Wood(rings[i].Levels)), SectionHatch.Of(i));
        foreach (PieceRing ring in rings) drawing.Stroke(place.Polygon(RingBlank.Of(ring.Stacked)), Pens.Hidden);
    }

    /// <summary>The wall inside, from the bottom up, in chains: none where the piece is solid.</summary>
    public static IEnumerable<IReadOnlyList<Vector2D>> Inside(ImmutableArray<PieceRing> rings)
    {
        List<Vector2D> chain = [];
        foreach (Vector2D at in rings.SelectMany(r => r.Levels).Select(l => new Vector2D(l.Inner, l.Z)))
        {
            // Along the axis there is no wall; a floor runs from the axis outward, a ceiling back to it.
            if (chain.Count > 0 && at.X == 0 && chain[^1].X == 0) chain.Clear();
            chain.Add(at);
            if (at.X > 0 || chain.Count < 2) continue;
            yield return [.. chain];
            chain = [at];
        }

        if (chain.Count > 1) yield return chain;
    }

    /// <summary>The wood of a ring, around its cut.</summary>
    public static IEnumerable<Vector2D> Wood(ImmutableArray<WallLevel> levels) =>
        levels.Select(l => new Vector2D(l.Outer, l.Z)).Concat(levels.Reverse().Select(l => new Vector2D(l.Inner, l.Z)));
}
