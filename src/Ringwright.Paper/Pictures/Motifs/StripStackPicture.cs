using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>The strips as they are glued, from the side: shifted like stairs, the slab that is sawn out of them between heavy lines.</summary>
public sealed class StripStackPicture
{
    private const int MostStrips = 12;

    private readonly RingPlan _plan;
    private readonly Lamination _board;
    private readonly MeasureStyle _style;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private StripStackPicture(RingPlan plan, Lamination board, MeasureStyle style, DrawingScale scale) =>
        (_plan, _board, _style, _place) = (plan, board, Caliper.Of(style), new(Vector2D.Zero, scale.Ratio));

    /// <summary>Draws the stack at the largest preferred scale that fits.</summary>
    /// <param name="plan">A ring of laminated segments.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    /// <exception cref="InvalidOperationException">Its board is not laminated.</exception>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        Lamination board = plan.Lamination ?? throw new InvalidOperationException($"The board of ring {plan.Ring.Name} is not laminated.");
        return ScaledPicture.Largest(Strips(board) * board.Repeat / board.Strips.Length, room, scale => new StripStackPicture(plan, board, style, scale).Draw());
    }

    private static int Strips(Lamination board) => Math.Clamp(2 * board.Strips.Length, Math.Min(4, 2 * board.Strips.Length), MostStrips);

    private double Trim => (_plan["slab-thickness"].Value - _board.Thickness) / 2;

    private Drawing Draw()
    {
        WoodKey key = WoodKey.Of(_plan.Ring);
        int strips = Strips(_board);
        for (int i = 0; i < strips; i++)
        {
            Outline outline = _place.Polygon(Corners(i));
            _drawing.Hatch(outline, key[_board.StripAt(i).Wood].Hatch).Stroke(outline, Pens.Medium);
        }

        Vector2D[] all = [.. Enumerable.Range(0, strips).SelectMany(Corners)];
        double left = all.Min(p => p.X), right = all.Max(p => p.X);
        foreach (double z in new[] { 0, _board.Thickness }) Across(z, left, right, Pens.Heavy);
        foreach (double z in new[] { -Trim, _board.Thickness + Trim }) Across(z, left, right, Pens.Hidden);
        Vector2D low = _place.Point(new(right, 0)), high = _place.Point(new(right, _board.Thickness));
        _drawing.UprightDimension(low, high, 7, _style.Length(_board.Thickness));
        return _drawing;
    }

    private void Across(double z, double left, double right, Pen pen) => _drawing.Line(_place.Point(new(left, z)), _place.Point(new(right, z)), pen);

    // A strip stands along the glue line; its lower end is where the stairs begin under the slab.
    private Vector2D[] Corners(int index)
    {
        (double sin, double cos) = Math.SinCos(_board.Angle);
        StripNeed kind = _board.Kinds.First(k => string.Equals(k.Wood, _board.StripAt(index).Wood, StringComparison.OrdinalIgnoreCase) && k.Thickness == _board.StripAt(index).Thickness.Millimetres);
        double from = _board.StartOf(index), to = from + kind.Thickness;
        double foot = (Math.Min(from * sin, to * sin) - Trim) / cos;
        Vector2D At(double across, double along) => new((across * cos) + (along * sin), (along * cos) - (across * sin));
        return [At(from, foot), At(to, foot), At(to, foot + kind.Height), At(from, foot + kind.Height)];
    }
}
