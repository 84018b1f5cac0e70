using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// One stave as sawn: its outside, the wider end up, the grain along it, the edges of its inside dashed; below it the wider end
/// seen along the grain, with the tilt of both edges.
/// </summary>
public sealed class StaveFacePicture
{
    private const double Apart = 15; // between face and end, mm

    private readonly StaveGeometry _sawn;
    private readonly MeasureStyle _style;
    private readonly double _scale;
    private readonly Drawing _drawing = new(0, 0);

    private StaveFacePicture(RingPlan plan, MeasureStyle style, DrawingScale scale)
    {
        StaveGeometry glued = plan.Stave ?? throw new InvalidOperationException($"Ring {plan.Ring.Name} has no staves.");
        double sanded = (plan["sawn-rim-edge"].Value - plan["rim-edge"].Value) / 2 * Math.Cos(glued.HalfAngle);
        (_sawn, _style, _scale) = (glued.BeforeSanding(sanded), Caliper.Of(style), scale.Ratio);
    }

    /// <summary>Draws the stave at the largest preferred scale that fits.</summary>
    /// <param name="plan">A ring of staves.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    /// <exception cref="InvalidOperationException">It is no ring of staves.</exception>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return ScaledPicture.Largest(plan["sawn-rim-edge"].Value, room, scale => new StaveFacePicture(plan, style, scale).Draw());
    }

    private double Half(double apothem) => _scale * _sawn.Width(apothem) / 2;

    private Drawing Draw()
    {
        double far = _scale * _sawn.Length;
        double wide = Half(_sawn.OuterApothem(_sawn.WideEnd)), narrow = Half(_sawn.OuterApothem(_sawn.NarrowEnd));
        Outline face = Outline.Polygon([new(-wide, 0), new(wide, 0), new(narrow, far), new(-narrow, far)]);
        _drawing.Hatch(face, Hatch.Plain).Stroke(face, Pens.Heavy);
        Inside(far);
        _drawing.Dimension(new(-wide, 0), new(wide, 0), 7, _style.Length(_sawn.Width(_sawn.OuterApothem(_sawn.WideEnd))));
        if (!_sawn.IsUpright) _drawing.Dimension(new(-narrow, far), new(narrow, far), -7, _style.Length(_sawn.Width(_sawn.OuterApothem(_sawn.NarrowEnd))));
        _drawing.UprightDimension(new(-wide, far), new(-wide, 0), -6, _style.Length(_sawn.Length));
        End(far + Apart + (_sawn.IsUpright ? 0 : 6));
        return _drawing;
    }

    // On the inside the same plane cuts narrower; its ends lie shifted along the stave, which the picture leaves out.
    private void Inside(double far)
    {
        double wide = Half(_sawn.InnerApothem(_sawn.WideEnd)), narrow = Half(_sawn.InnerApothem(_sawn.NarrowEnd));
        _drawing.Line(new(-wide, 0), new(-narrow, far), Pens.Hidden).Line(new(wide, 0), new(narrow, far), Pens.Hidden);
    }

    // Seen along the grain, not along the edge, so the slant shows as tan(tilt) / cos(mitre).
    private void End(double top)
    {
        double outer = Half(_sawn.OuterApothem(_sawn.WideEnd)), deep = _scale * _sawn.Thickness;
        double inner = outer - (deep * Math.Tan(_sawn.Tilt) / Math.Cos(_sawn.Mitre));
        if (inner <= 0) return;
        Outline end = Outline.Polygon([new(-outer, top), new(outer, top), new(inner, top + deep), new(-inner, top + deep)]);
        _drawing.Stroke(end, Pens.Heavy);
        _drawing.UprightDimension(new(-outer, top + deep), new(-outer, top), -6, _style.Length(_sawn.Thickness));
        Vector2D foot = new(inner, top + deep);
        _drawing.Line(foot, foot with { Y = top }, Pens.Hidden).Note(new(inner + ((outer - inner) / 4), top + (deep / 4)), new(outer + 3, top + deep + 5), $"tilt {_style.Print(_sawn.Tilt, Quantity.Angle)}", LeaderEnd.Arrow);
    }
}
