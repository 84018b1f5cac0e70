using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures.Lathe;

/// <summary>
/// The work on the lathe cut through along its axis: the left half when it is roughed, the right half when it is finished, the
/// glued blank around both, the first hole and what the chuck holds; where each wall is thinnest.
/// </summary>
public sealed class LathePicture
{
    private const double Beyond = 4;    // from the blank to the notes, mm
    private const double AxisOver = 4;  // of the axis beyond the work, mm
    private const double NoteClear = 6; // of a note from the level line above or below it, mm
    private const double NoteApart = 7; // between the upright lines of two sizes, mm

    private readonly LathePlan _lathe;
    private readonly Plan _plan;
    private readonly MeasureStyle _style;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private LathePicture(Plan plan, LathePlan lathe, MeasureStyle style, DrawingScale scale) =>
        (_plan, _lathe, _style, _place) = (plan, lathe, style, new(Vector2D.Zero, scale.Ratio));

    private double Reach => ReachOf(_lathe);

    private double Foot => Math.Min(_lathe.Rings[0].Ring.Bottom, _lathe.Rings[0].Ring.Section!.Levels[0].Z - Tenon);

    private double Tenon => _plan.Piece.Shape?.Holding is { Kind: HoldingKind.Tenon } tenon ? tenon.Length.Millimetres : 0;

    private double Head => _lathe.Rings[^1].Ring.Top;

    /// <summary>Draws the work at the largest preferred scale that fits.</summary>
    /// <param name="plan">The piece.</param>
    /// <param name="lathe">Its work at the lathe, with at least one ring.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its sizes.</param>
    /// <exception cref="LayoutException">There is no room for it at any scale.</exception>
    public static ScaledPicture Draw(Plan plan, LathePlan lathe, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(lathe);
        ArgumentNullException.ThrowIfNull(style);
        double wide = 2 * ReachOf(lathe), tall = lathe.Rings[^1].Ring.Top;
        return ScaledPicture.Largest(Math.Max(wide, tall * room.Width / room.Height), room, scale => new LathePicture(plan, lathe, style, scale).Draw(), DrawingScale.WithBetween);
    }

    private Drawing Draw()
    {
        foreach ((RingPasses ring, int i) in _lathe.Rings.Select((r, i) => (r, i)))
        {
            _drawing.Hatch(_place.Polygon(Wood(ring, LathePass.InsideRoughed, -1)), SectionHatch.Of(i));
            _drawing.Hatch(_place.Polygon(Wood(ring, LathePass.Finished, 1)), SectionHatch.Of(i));
            foreach (int side in new[] { -1, 1 }) _drawing.Stroke(_place.Polygon([.. RingBlank.Of(ring.Ring).Select(c => new Vector2D(side * c.X, c.Y))]), Pens.Hidden);
            _drawing.Stroke(_place.Polygon(Wood(ring, LathePass.InsideRoughed, -1)), Pens.Fine).Stroke(_place.Polygon(Wood(ring, LathePass.Finished, 1)), Pens.Medium);
        }

        if (_plan.Piece.Shape?.Holding is Holding holding) Held(holding);
        Hole();
        _drawing.Line(_place.Point(new(0, Foot)) + new Vector2D(0, AxisOver), _place.Point(new(0, Head)) - new Vector2D(0, AxisOver), Pens.Centre);
        Thinnest(LathePass.InsideRoughed, -1, "roughed");
        Thinnest(LathePass.Finished, 1, "finished");
        Heights();
        return _drawing;
    }

    private static IEnumerable<Vector2D> Wood(RingPasses ring, LathePass pass, int side)
    {
        ImmutableArray<WallReading> walls = ring.Walls[(int)pass];
        return walls.Select(w => new Vector2D(side * w.Outer, w.Height)).Concat(walls.Reverse().Select(w => new Vector2D(side * Math.Min(w.Inner, w.Outer), w.Height)));
    }

    // Staves lean, so either end may be the wider one.
    private static double ReachOf(LathePlan lathe) => lathe.Rings.SelectMany(r => RingBlank.Of(r.Ring)).Max(c => c.X);

    private void Held(Holding holding)
    {
        double radius = holding.Diameter.Millimetres / 2, from = _lathe.Rings[0].Ring.Section!.Levels[0].Z;
        double to = from + ((holding.Kind == HoldingKind.Tenon ? -1 : 1) * holding.Length.Millimetres);
        _drawing.Stroke(Outline.Polyline(_place.Points([new(-radius, from), new(-radius, to), new(radius, to), new(radius, from)])), Pens.Medium);
        string what = holding.Kind == HoldingKind.Tenon ? "tenon" : "recess";
        double low = _place.Point(new(0, Math.Min(from, to))).Y;
        Vector2D left = _place.Point(new(-radius, to)), right = _place.Point(new(radius, to));
        _drawing.Dimension(left, right, left.Y - low - 9, $"{what} Ø {Caliper.Short(_style, 2 * radius)}");
    }

    // The first hole with the point of its drill, on the roughed side's axis.
    private void Hole()
    {
        if (_lathe.Find("bore-depth") is not Figure depth || _lathe.Find("bore-drill") is not Figure drill || _lathe.Find("bore-point") is not Figure point) return;
        double radius = drill.Value / 2, shoulder = Head - depth.Value;
        _drawing.Stroke(Outline.Polyline(_place.Points([new(-radius, Head), new(-radius, shoulder), new(0, shoulder - point.Value), new(radius, shoulder), new(radius, Head)])), Pens.Hidden);
    }

    private void Thinnest(LathePass pass, int side, string word)
    {
        RingPasses? thin = _lathe.Rings.Where(r => r[pass].Inner > 0).MinBy(r => r[pass].Thickness);
        if (thin is null) return;
        WallReading at = thin[pass];
        Vector2D target = _place.Point(new(side * (at.Outer + at.Inner) / 2, at.Height));
        // Clear of the lines of the heights, which run out from foot and head.
        double head = _place.Point(new(0, Head)).Y + NoteClear, foot = _place.Point(new(0, _lathe.Rings[0].Ring.Bottom)).Y - NoteClear;
        Vector2D knee = new(side * ((_place.Scale * Reach) + Beyond), head < foot ? Math.Clamp(target.Y, head, foot) : (head + foot) / 2);
        _drawing.Note(target, knee, $"{word}\n{Caliper.Short(_style, at.Thickness)}", LeaderEnd.Dot);
    }

    private void Heights()
    {
        double right = _drawing.TextBoxes.Select(t => t.Box.Right).DefaultIfEmpty(_place.Scale * Reach).Max() + Beyond;
        double foot = _place.Point(new(0, _lathe.Rings[0].Ring.Bottom)).Y, head = _place.Point(new(0, Head)).Y;
        Level(foot, head, right, "stack " + Caliper.Short(_style, Head - _lathe.Rings[0].Ring.Bottom));
        if (_lathe.Find("bore-depth") is not Figure depth) return;
        right = Math.Max(right + NoteApart, _drawing.TextBoxes.Max(t => t.Box.Right) + Beyond);
        Level(_place.Point(new(0, Head - depth.Value)).Y, head, right, "drill " + Caliper.Short(_style, depth.Value));
    }

    private void Level(double low, double high, double x, string words)
    {
        foreach (double y in new[] { low, high }) _drawing.Line(new((_place.Scale * Reach) + 1.5, y), new(x + 2, y), Pens.Fine);
        bool fits = low - high >= Typesetter.WidthOf(words, TypeScale.Dimension) + 2;
        if (fits) _drawing.Dimension(new(x, low), new(x, high), -0.5, words);
        else _drawing.UprightDimension(new(x, high), new(x, low), 0.5, words);
    }
}
