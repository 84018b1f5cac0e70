using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A ring as glued, cut along the axis through the middle of its segments: the flats, where the least wood is.</summary>
internal static class RingBlank
{
    /// <summary>Its corners on one side of the axis: radius (X) and height (Y), mm; inside below, outside below, outside above, inside above.</summary>
    public static ImmutableArray<Vector2D> Of(PieceRing ring)
    {
        ((double inner, double outer), (double innerTop, double outerTop)) = Radii(ring.Plan);
        return [new(inner, ring.Bottom), new(outer, ring.Bottom), new(outerTop, ring.Top), new(innerTop, ring.Top)];
    }

    private static ((double Inner, double Outer) Low, (double Inner, double Outer) High) Radii(RingPlan plan)
    {
        if (plan.Board?[plan.Ring.Name] is SawnBoardRing sawn)
            return ((sawn.Face(up: false).Inner, sawn.Face(up: false).Outer), (sawn.Face(up: true).Inner, sawn.Face(up: true).Outer));
        if (plan.Stave is StaveGeometry stave) return (Faces(stave, 0), Faces(stave, plan.Ring.Thickness.Millimetres));
        (double Inner, double Outer) flats = plan.Batches.IsEmpty ? (0, Round(plan) / 2) : Flats(plan);
        return (flats, flats);
    }

    private static double Round(RingPlan plan) => plan.Find("round")?.Value ?? plan.Ring.Outside.Millimetres;

    private static (double Inner, double Outer) Flats(RingPlan plan) => (
        plan.Batches.Max(b => b.Glued.ApexRadius + Math.Max(0, b.Glued.InnerApothem)),
        plan.Batches.Min(b => b.Glued.ApexRadius + b.Glued.OuterApothem));

    private static (double Inner, double Outer) Faces(StaveGeometry stave, double z) => (stave.InnerApothem(z), stave.OuterApothem(z));
}
