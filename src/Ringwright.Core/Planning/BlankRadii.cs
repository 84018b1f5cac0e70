using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>
/// How far the wood of a ring reaches before it is turned, at one height. Lengths in mm from the axis. Of unequal segments each has
/// corners of its own, and spacers stand between them, so all of them are read: cos(π/N) holds for equal ones only.
/// </summary>
/// <param name="OuterCorner">The greatest radius outside: the farthest corner.</param>
/// <param name="OuterFlat">The least radius outside: the middle of a flat.</param>
/// <param name="InnerCorner">The greatest radius of the hole: its farthest corner; 0 without a hole.</param>
/// <param name="InnerFlat">The least radius of the hole: the middle of a flat; 0 without a hole.</param>
public readonly record struct BlankRadii(double OuterCorner, double OuterFlat, double InnerCorner, double InnerFlat)
{
    /// <summary>The radii at a ring's lower and upper face. Between them each grows evenly with the height, whatever the construction.</summary>
    public static (BlankRadii Low, BlankRadii High) Of(RingPlan ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        if (ring.Stave is StaveGeometry stave) return (Stave(stave, 0), Stave(stave, ring.Ring.Thickness.Millimetres));
        if (ring.Board?[ring.Ring.Name] is SawnBoardRing sawn) return (Face(ring, sawn, up: false), Face(ring, sawn, up: true));
        BlankRadii upright = ring.Batches.IsEmpty ? Round((ring.Find("round")?.Value ?? ring.Ring.Outside.Millimetres) / 2, 0)
            : ring.Batches.Length == 1 && ring.Spacers.IsEmpty ? Equal(ring.Glued)
            : Pieces(LaidOutline.Of(ring));
        return (upright, upright);
    }

    /// <summary>The radii at <paramref name="share"/> of the way to <paramref name="other"/>: 0 here, 1 there.</summary>
    public BlankRadii Towards(BlankRadii other, double share)
    {
        double At(double from, double to) => from + (share * (to - from));
        return new(At(OuterCorner, other.OuterCorner), At(OuterFlat, other.OuterFlat), At(InnerCorner, other.InnerCorner), At(InnerFlat, other.InnerFlat));
    }

    private static BlankRadii Stave(StaveGeometry stave, double z)
    {
        double outer = stave.OuterApothem(z), inner = stave.InnerApothem(z), cos = Math.Cos(stave.HalfAngle);
        return new(outer / cos, outer, inner / cos, inner);
    }

    // Sawn out of a board it is round, but for the outside of the first ring, which is still the glued disc's.
    private static BlankRadii Face(RingPlan ring, SawnBoardRing sawn, bool up)
    {
        BlankRadii round = Round(sawn.Face(up).Outer, sawn.Face(up).Inner);
        return ring.Batches.IsEmpty ? round : round with { OuterCorner = round.OuterFlat / Math.Cos(ring.Glued.HalfAngle) };
    }

    private static BlankRadii Round(double outer, double inner) => new(outer, outer, inner, inner);

    private static BlankRadii Equal(WedgeGeometry wedge) => new(wedge.OuterCorner, wedge.OuterApothem, Math.Max(0, wedge.InnerCorner), Math.Max(0, wedge.InnerApothem));

    private static BlankRadii Pieces(ImmutableArray<LaidOutline> pieces) => new(
        pieces.Max(p => Math.Max(p.Corners[0].Length, p.Corners[1].Length)),
        pieces.Min(p => Nearest(p.Corners[0], p.Corners[1])),
        pieces.Max(p => Math.Max(p.Corners[2].Length, p.Corners[3].Length)),
        pieces.Min(p => Nearest(p.Corners[2], p.Corners[3])));

    // The point of the edge that lies nearest to the axis, which may be an end of it.
    private static double Nearest(Vector2D from, Vector2D to)
    {
        Vector2D along = to - from;
        double length = along.Dot(along);
        return length == 0 ? from.Length : (from + (Math.Clamp(-from.Dot(along) / length, 0, 1) * along)).Length;
    }
}
