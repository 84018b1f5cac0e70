using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Viewing;

/// <summary>A board in plan with the wedge that was pointed at: 1000 units long, to scale, as SVG points.</summary>
/// <param name="Height">Its width.</param>
/// <param name="Own">The wedge.</param>
/// <param name="Others">All else that is not dust.</param>
internal sealed record SegmentInStrip(double Height, string Own, ImmutableArray<string> Others)
{
    private const double LongSide = 1000;

    /// <summary>The board of <paramref name="picked"/>; null for what is not sawn as a wedge from a plain strip.</summary>
    public static SegmentInStrip? Of(PickedSegment picked)
    {
        RingPlan ring = picked.Ring;
        if (picked.Batch is not int batch || ring.Stave is not null || ring.Board is not null || ring.Lamination is not null) return null;
        StripLayout strip = ring.Batches[batch].Strip;
        LaidSegment own = picked.Laid;
        int wedges = 1 + ring.Layout.Where(l => l.Board == own.Board && string.Equals(l.Wood, own.Wood, StringComparison.OrdinalIgnoreCase)).Max(l => l.Cut);
        double length = strip.LengthFor(wedges), scale = LongSide / length;
        StripPlan sawn = strip.Saw(length, wedges);
        return new(
            strip.Wedge.Depth * scale, Svg.Points(sawn.Wedges[own.Cut], scale),
            [Svg.Points(sawn.Trim, scale), Svg.Points(sawn.Offcut, scale), Svg.Points(sawn.Rest, scale), .. sawn.Wedges.Where((_, i) => i != own.Cut).Select(w => Svg.Points(w, scale))]);
    }
}
