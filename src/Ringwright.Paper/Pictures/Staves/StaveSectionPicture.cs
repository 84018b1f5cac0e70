using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>The ring cut through the middle of a stave: the board with its ends, the wall that is turned out of it dashed, the axis at the left.</summary>
public sealed class StaveSectionPicture
{
    private readonly RingPlan _plan;
    private readonly MeasureStyle _style;
    private readonly StaveGeometry _stave;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private StaveSectionPicture(RingPlan plan, StaveGeometry stave, MeasureStyle style, DrawingScale scale) =>
        (_plan, _stave, _style, _place) = (plan, stave, Caliper.Of(style), new(Vector2D.Zero, scale.Ratio));

    /// <summary>Draws the section at the largest preferred scale that fits.</summary>
    /// <param name="plan">A ring of staves.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    /// <exception cref="InvalidOperationException">It is no ring of staves.</exception>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        StaveGeometry stave = plan.Stave ?? throw new InvalidOperationException($"Ring {plan.Ring.Name} has no staves.");
        return ScaledPicture.Largest(stave.OuterApothem(stave.WideEnd), room, scale => new StaveSectionPicture(plan, stave, style, scale).Draw());
    }

    private Drawing Draw()
    {
        Outline board = _place.Polygon(Corners(_stave.Bottom, _stave.Top, _stave.OuterApothem, _stave.InnerApothem));
        _drawing.Hatch(board, Hatch.All[1]).Stroke(board, Pens.Heavy);
        Wall();
        double height = _plan.Ring.Thickness.Millimetres;
        _drawing.Line(_place.Point(new(0, _stave.Bottom)) + new Vector2D(0, 4), _place.Point(new(0, _stave.Top)) - new Vector2D(0, 4), Pens.Centre);
        double right = _place.Scale * Math.Max(_stave.OuterApothem(_stave.Bottom), _stave.OuterApothem(_stave.Top));
        Vector2D foot = _place.Point(new(_stave.OuterApothem(0), 0)), head = _place.Point(new(_stave.OuterApothem(height), height));
        _drawing.UprightDimension(foot with { X = right }, head with { X = right }, 7, _style.Length(height));
        Across();
        return _drawing;
    }

    private static Vector2D[] Corners(double bottom, double top, Func<double, double> outer, Func<double, double> inner) =>
        [new(outer(bottom), bottom), new(outer(top), top), new(inner(top), top), new(inner(bottom), bottom)];

    // As planned: leaning with the staves, from the diameter outside at the wide end to the diameter inside at the narrow one.
    private void Wall()
    {
        double height = _plan.Ring.Thickness.Millimetres, slope = Math.Tan(_stave.Lean);
        double outside = _plan.Ring.Outside.Millimetres / 2, inside = (((IHollowRing)_plan.Ring).InnerDiameter?.Millimetres ?? 0) / 2;
        double wide = _stave.Lean >= 0 ? height : 0, narrow = height - wide;
        Vector2D[] corners = Corners(0, height, z => outside + ((z - wide) * slope), z => inside + ((z - narrow) * slope));
        Pen dashed = Pens.Medium with { Dashes = Pens.Hidden.Dashes };
        _drawing.Line(_place.Point(corners[0]), _place.Point(corners[1]), dashed).Line(_place.Point(corners[2]), _place.Point(corners[3]), dashed);
    }

    private void Across()
    {
        double height = _plan.Ring.Thickness.Millimetres, wide = _stave.Lean >= 0 ? height : 0, narrow = height - wide;
        double below = _place.Point(new(0, _stave.Bottom)).Y + 7, above = _place.Point(new(0, _stave.Top)).Y - 7;
        double outside = _plan.Ring.Outside.Millimetres / 2, inside = (((IHollowRing)_plan.Ring).InnerDiameter?.Millimetres ?? 0) / 2;
        Radius(outside, wide, wide > narrow ? above : below, $"{_style.Length(outside)} turned");
        Radius(inside, narrow, wide > narrow ? below : above, $"{_style.Length(inside)} turned");
    }

    private void Radius(double radius, double z, double level, string text)
    {
        Vector2D at = _place.Point(new(radius, z)), axis = _place.Point(new(0, z));
        _drawing.Dimension(axis, at, at.Y - level, text);
    }
}
