using System.Globalization;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures;

/// <summary>A fence before and after a correction: its angle is true, the movement is drawn larger by a stated factor.</summary>
public static class CorrectionPicture
{
    private const double LargestMove = 15; // on the paper, mm

    /// <summary>Draws the correction into a room, the pivot at the right.</summary>
    public static Drawing Draw(FenceCorrection correction, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(correction);
        ArgumentNullException.ThrowIfNull(style);
        TextLine moved = Typesetter.Set(style.Print(Math.Abs(correction.RuleChange), Quantity.FineLength), TypeScale.Dimension);
        double left = moved.Width + 4, right = 4;
        double tall = room.Height - LargestMove - 28; // for the fence before
        double paper = Math.Min(room.Width - left - right - 3, tall / Math.Max(Math.Tan(correction.FenceAngleNow), 0.05));
        double scale = paper / correction.RuleDistance;
        double factor = Exaggeration(scale * Math.Abs(correction.RuleChange));
        Vector2D from = new(-paper, scale * correction.RuleDistance * Math.Tan(correction.FenceAngleNow));
        Vector2D to = from + new Vector2D(0, factor * scale * correction.RuleChange);
        string distance = style.Length(correction.RuleDistance);
        string note = string.Create(CultureInfo.InvariantCulture, $"Read at {distance} from the pivot. Dashed: before. Heavy: after. The movement is drawn {factor:0} times too large.");
        return new Drawing(0, 0)
            .Line(new(-paper - 4, 0), new(right, 0), Pens.Centre)
            .Line(Vector2D.Zero, 1.04 * from, Pens.Hidden).Line(Vector2D.Zero, 1.04 * to, Pens.Heavy)
            .Fill(Outline.Circle(Vector2D.Zero, 0.8), Colour.Black)
            .Line(new(-paper, -2), new(-paper, Math.Min(from.Y, to.Y) - 1), Pens.Fine)
            .Text(moved, (0.5 * (from + to)) - new Vector2D(3, 0), Anchor.MiddleRight)
            .Place(Arrow(from, to), Vector2D.Zero)
            .Text(Wrapping.Lines(note, TypeScale.Caption, room.Width - 2), new(-paper - left, Math.Max(from.Y, to.Y) + 5), Anchor.TopLeft)
            .Cropped();
    }

    private static Drawing Arrow(Vector2D from, Vector2D to)
    {
        Drawing arrow = new(0, 0);
        if (from == to) return arrow;
        arrow.Line(from, to, Pens.Medium);
        Arrows.Head(arrow, to, new(0, Math.Sign(to.Y - from.Y)));
        return arrow;
    }

    // The largest of 1, 2, 5, 10, 20, 50 … at which the movement still fits.
    private static double Exaggeration(double move)
    {
        double room = LargestMove / Math.Max(move, 1e-9);
        if (room < 1) return 1;
        double power = Math.Pow(10, Math.Floor(Math.Log10(room)));
        return power * (room >= 5 * power ? 5 : room >= 2 * power ? 2 : 1);
    }
}
