using Ringwright.Core;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Bench;

/// <summary>Plans a change to the work; where it changed the outline, the rings follow.</summary>
internal static class FollowingRings
{
    /// <summary>
    /// The plan of a change. Rings that were found for an outline are ripped as wide as it asked; a width that is too narrow for
    /// another outline is let go, and the ring is as wide as it needs. A width that is typed is never let go: it is refused.
    /// </summary>
    /// <exception cref="BadInputException">It cannot be planned.</exception>
    public static Plan Plan(Work before, Work changed)
    {
        while (true)
        {
            try
            {
                return Planner.Plan(changed.Piece, changed.Shop);
            }
            catch (BadInputException e) when (WithoutWidth(before, changed, e) is not null)
            {
                changed = WithoutWidth(before, changed, e)!;
            }
        }
    }

    private static Work? WithoutWidth(Work before, Work changed, BadInputException refusal)
    {
        if (changed.Piece.Shape is null || changed.Piece.Shape == before.Piece.Shape) return null;
        foreach ((int index, Ring ring) in changed.Piece.Rings.Index())
        {
            if (ring is SegmentRing { BoardWidth: not null } named && refusal.Where == $"ring {ring.Name}, boardWidth" && before.Piece.Rings.Contains(ring))
                return changed.WithRing(index, named with { BoardWidth = null });
        }

        return null;
    }
}
