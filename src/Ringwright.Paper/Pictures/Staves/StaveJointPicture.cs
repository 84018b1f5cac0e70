using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures;

/// <summary>Two neighbours at true scale, cut square across their joint, the outside up: to hold a bevel gauge or a dry pair on.</summary>
public static class StaveJointPicture
{
    private const double LongestArm = 70; // of a face on the paper, mm

    /// <summary>Draws the pair, its outer faces no longer than the room has place for.</summary>
    /// <param name="plan">A ring of staves.</param>
    /// <param name="style">How angles are printed.</param>
    /// <param name="room">Room on the paper.</param>
    /// <exception cref="InvalidOperationException">It is no ring of staves.</exception>
    public static Drawing Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        StaveGeometry stave = plan.Stave ?? throw new InvalidOperationException($"Ring {plan.Ring.Name} has no staves.");
        double tilt = stave.Tilt, arm = Math.Min(Math.Min(LongestArm, (room.Width / 2) - 2), stave.Width(stave.OuterApothem(stave.WideEnd)));
        double deep = Math.Min(stave.Thickness, Math.Max(5, (room.Height / 2) - (arm * Math.Sin(tilt)) - 10));
        var drawing = new Drawing(0, 0);
        foreach (int side in new[] { -1, 1 }) Stave(drawing, side, tilt, arm, deep);
        string words = $"{style.Print(Math.PI - (2 * tilt), Quantity.Angle)} between the outer faces, {style.Print(tilt, Quantity.Angle)} of tilt each";
        return drawing.Text(words, new(0, -5), TypeScale.Note, Anchor.Middle).Cropped();
    }

    // The joint stands upright on the paper; each face falls away from it by the tilt.
    private static void Stave(Drawing drawing, int side, double tilt, double arm, double deep)
    {
        var along = new Vector2D(side * Math.Cos(tilt), Math.Sin(tilt));
        var inward = new Vector2D(-side * Math.Sin(tilt), Math.Cos(tilt));
        var joint = new Vector2D(0, deep / Math.Cos(tilt));
        Vector2D end = arm * along;
        drawing.Stroke(Outline.Polyline([end + (deep * inward), joint, Vector2D.Zero, end]), TrueScalePicture.Line);
        drawing.Line(end, end + (deep * inward), Pens.Hidden);
    }
}
