using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>One piece of wood of a glued ring from above, at its bottom face. Lengths in mm, angles in radians.</summary>
/// <param name="Place">Its place in the layout.</param>
/// <param name="Wood">Its wood.</param>
/// <param name="Middle">Direction of its middle line.</param>
/// <param name="Width">Length of its outer edge.</param>
/// <param name="IsSpacer">Whether its faces are parallel.</param>
/// <param name="Corners">Outer corners, then inner ones, counter-clockwise: from-outer, to-outer, to-inner, from-inner.</param>
public sealed record LaidOutline(int Place, string Wood, double Middle, double Width, bool IsSpacer, ImmutableArray<Vector2D> Corners)
{
    /// <summary>The pieces of a ring counter-clockwise, those that batches and spacers give a size.</summary>
    public static ImmutableArray<LaidOutline> Of(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<LaidSegment> laid = Whole(plan);
        IEnumerable<LaidOutline> wedges = plan.Batches.SelectMany(b => b.Places.Select(place =>
            Between(laid, place, b.Glued.ApexRadius + Math.Max(0, b.Glued.InnerApothem), b.Glued.ApexRadius + b.Glued.OuterApothem, false)));
        IEnumerable<LaidOutline> spacers = plan.Spacers.SelectMany(s => s.Places.Select(place => Between(laid, place, s.Inner, s.Outer, true)));
        return [.. wedges.Concat(spacers).OrderBy(o => o.Place)];
    }

    /// <summary>Whether this piece and the next lie against each other.</summary>
    public bool Touches(LaidOutline next)
    {
        ArgumentNullException.ThrowIfNull(next);
        // Neighbours of different length share a face, not their corners.
        Vector2D along = Corners[1] - Corners[2], apart = next.Corners[0] - Corners[1];
        return Math.Abs(along.Cross(apart)) <= 1e-6 * along.Length;
    }

    // A glued segment's outline is that between its joints, whatever strips it is made of.
    private static ImmutableArray<LaidSegment> Whole(RingPlan plan) => plan.Lamination is null
        ? plan.Layout
        : [.. plan.Layout.DistinctBy(l => l.Within).Select(l => l with { From = l.Within!.Value.From, To = l.Within.Value.To, Wood = Lamination.BoardName })];

    private static LaidOutline Between(ImmutableArray<LaidSegment> layout, int place, double inner, double outer, bool spacer)
    {
        LaidSegment laid = layout[place];
        double middle = (laid.From.Direction + laid.To.Direction) / 2;
        Vector2D At(JointPlane plane, double flat)
        {
            double turn = plane.Direction - middle, offset = plane.Offset / Math.Cos(plane.Tilt);
            double along = (flat + (offset * Math.Sin(turn))) / Math.Cos(turn);
            return Vector2D.Polar(along, plane.Direction) + Vector2D.Polar(offset, plane.Direction + (Math.PI / 2));
        }

        ImmutableArray<Vector2D> corners = [At(laid.From, outer), At(laid.To, outer), At(laid.To, inner), At(laid.From, inner)];
        return new(place, laid.Wood, middle, (corners[1] - corners[0]).Length, spacer, corners);
    }
}
