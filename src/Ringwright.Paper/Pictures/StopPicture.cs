using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// The board at the blade from above, in true geometry: its far corner at the stop, the wedge about to fall, the kerf, and
/// the stop's distance along the fence.
/// </summary>
public static class StopPicture
{
    private const double Thick = 4;  // of the fence, mm on the paper
    private const double Block = 6, BlockTall = 9; // breadth and height of the stop, mm on the paper
    private const double Shown = 24; // of the board left of the blade, mm on the paper
    private const double WordReach = 8; // of the blade's word to the right of the blade, with air, mm

    /// <summary>Draws the board at the blade at the largest preferred scale that fits.</summary>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return ScaledPicture.Largest(plan.Strip.Wedge.RimEdge, room, scale => Draw(plan, style, scale));
    }

    private static Drawing Draw(RingPlan plan, MeasureStyle style, DrawingScale scale)
    {
        WedgeGeometry wedge = plan.Strip.Wedge;
        double k = scale.Ratio, lean = Math.Tan(wedge.HalfAngle), far = wedge.Depth;
        double stop = wedge.RimEdge, kerf = plan.Strip.KerfAlong;
        // Along the fence to the right and across the board, mm in the workshop; the fence rises to the right by the mitre.
        Placement place = new(Vector2D.Zero, k, wedge.HalfAngle);
        Drawing drawing = new(0, 0);
        Outline falls = place.Polygon([new(0, 0), new(stop, 0), new(stop - (far * lean), far), new(far * lean, far)]);
        // Open at the left, where the board goes on.
        Outline body = Outline.Polyline(place.Points(
            [new(-Shown / k, 0), new(-kerf, 0), new((far * lean) - kerf, far), new(-Shown / k, far)]));
        double reach = stop + ((Block + 5) / k);
        Outline fence = place.Polygon([new(-Shown / k, 0), new(reach, 0), new(reach, -Thick / k), new(-Shown / k, -Thick / k)]);
        Outline block = place.Polygon(
            [new(stop, 0), new(stop + (Block / k), 0), new(stop + (Block / k), BlockTall / k), new(stop, BlockTall / k)]);
        drawing.Hatch(fence, Hatch.All[1]).Stroke(fence, Pens.Medium).Stroke(body, Pens.Medium).Stroke(falls, Pens.Heavy)
            .Hatch(block, Hatch.All[6]).Stroke(block, Pens.Medium);
        // Its word stands clear of the block too, where that is near and rises above the board.
        Vector2D corner = place.Point(new(stop, BlockTall / k));
        double above = place.Point(new(far * lean, far)).Y;
        if (corner.X < WordReach) above = Math.Min(above, corner.Y);
        Blade(drawing, above - 4, place.Point(new(0, -Thick / k)).Y + 5);
        drawing.Dimension(place.Point(Vector2D.Zero), place.Point(new(stop, 0)), -Thick - 7, "stop");
        // The value stands below by itself: beside a short dimension line it would need the width of the sheet.
        double foot = place.Point(new(-Shown / k, -(Thick + 7) / k)).Y;
        return drawing.Text($"stop {style.Length(stop)}", new(0, foot + 4), TypeScale.Dimension, Anchor.TopCentre);
    }

    private static void Blade(Drawing drawing, double top, double bottom) =>
        drawing.Line(new(0, top), new(0, bottom), Pens.Centre).Text("blade", new(0, top - 2), TypeScale.Dimension, Anchor.Centre);
}
