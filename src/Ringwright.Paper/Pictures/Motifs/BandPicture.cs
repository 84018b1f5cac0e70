using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// The turned outside of a motif band unrolled: some segments from one joint on, every strip in its place, the joints heavy. Heights
/// and lengths around are to scale.
/// </summary>
public sealed class BandPicture
{
    private const int Shown = 4; // segments: two peaks of a zigzag

    private readonly RingPlan _plan;
    private readonly MeasureStyle _style;
    private readonly double _scale;
    private readonly WoodKey _key;
    private readonly double _radius;
    private readonly Drawing _drawing = new(0, 0);

    private BandPicture(RingPlan plan, MeasureStyle style, DrawingScale scale)
    {
        (_plan, _style, _scale) = (plan, Caliper.Of(style), scale.Ratio);
        _key = WoodKey.Of(plan.Ring);
        _radius = plan.Ring.Outside.Millimetres / 2;
    }

    /// <summary>Draws the band at the largest preferred scale that fits.</summary>
    /// <param name="plan">A ring of laminated segments.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        double around = Segments(plan) * 2 * plan.Glued.HalfAngle * plan.Ring.Outside.Millimetres / 2;
        return ScaledPicture.Largest(around, room, scale => new BandPicture(plan, style, scale).Draw());
    }

    private static int Segments(RingPlan plan) => Math.Min(Shown, plan.Ring.Around);

    private double Arc => _scale * _radius * 2 * _plan.Glued.HalfAngle;

    private double Tall => _scale * _plan.Ring.Thickness.Millimetres;

    private Drawing Draw()
    {
        int segment = 0;
        foreach (IGrouping<SegmentJoints?, LaidSegment> pieces in _plan.Layout.GroupBy(l => l.Within).Take(Segments(_plan)))
        {
            foreach (LaidSegment piece in pieces) Piece(piece, segment);
            segment++;
        }

        for (int i = 0; i <= segment; i++) _drawing.Line(new(i * Arc, 0), new(i * Arc, Tall), Pens.Heavy);
        _drawing.Line(new(0, 0), new(segment * Arc, 0), Pens.Medium).Line(new(0, Tall), new(segment * Arc, Tall), Pens.Medium);
        _drawing.Dimension(new(0, 0), new(Arc, 0), 7, _style.Length(Arc / _scale));
        _drawing.UprightDimension(new(segment * Arc, 0), new(segment * Arc, Tall), 7, _style.Length(_plan.Ring.Thickness.Millimetres));
        return _drawing;
    }

    private void Piece(LaidSegment piece, int segment)
    {
        Vector2D[] flat = [.. OnOutside(piece).Vertices.Select(p => On(p, segment))];
        if (flat.Length == 0) return;
        WoodEntry wood = _key[piece.Wood];
        Outline outline = Outline.Polygon(flat);
        _drawing.Hatch(outline, wood.Hatch).Stroke(outline, Pens.Fine);
    }

    // Seen square to the segment, glue lines on the round are straight: only their place around is an arc.
    private ConvexPolygon OnOutside(LaidSegment piece)
    {
        double half = _radius * Math.Sin(_plan.Glued.HalfAngle);
        var face = ConvexPolygon.Rectangle(-half, 0, 2 * half, _plan.Ring.Thickness.Millimetres);
        return face.Clip(Before(piece.From).Complement).Clip(Before(piece.To));
    }

    private static HalfPlane Before(JointPlane plane) => new(new(Math.Cos(plane.Tilt), -Math.Sin(plane.Tilt)), plane.Offset);

    private Vector2D On(Vector2D face, int segment) =>
        new(((segment + 0.5) * Arc) + (_scale * _radius * Math.Asin(face.X / _radius)), Tall - (_scale * face.Y));
}
