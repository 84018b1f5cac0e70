using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A ring as glued, cut along the axis through the middle of its segments: the flats, where the least wood is.</summary>
internal static class RingBlank
{
    /// <summary>Its corners on one side of the axis: radius (X) and height (Y), mm; inside below, outside below, outside above, inside above.</summary>
    public static ImmutableArray<Vector2D> Of(StackedRing ring)
    {
        BlankRadii low = ring.BlankAt(ring.Bottom), high = ring.BlankAt(ring.Top);
        return [new(low.InnerFlat, ring.Bottom), new(low.OuterFlat, ring.Bottom), new(high.OuterFlat, ring.Top), new(high.InnerFlat, ring.Top)];
    }
}
