using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// The rings of one board stacked as they stand in the piece, cut through along the axis. Layers between them that come from
/// elsewhere are dashed.
/// </summary>
public sealed class StackPicture
{
    private readonly BoardGroupPlan _board;
    private readonly MeasureStyle _style;
    private readonly Placement _place;
    private readonly IReadOnlyList<(Ring Ring, double Bottom)> _layers;
    private readonly Drawing _drawing = new(0, 0);

    private StackPicture(BoardGroupPlan board, IReadOnlyList<(Ring Ring, double Bottom)> layers, MeasureStyle style, DrawingScale scale) =>
        (_board, _layers, _style, _place) = (board, layers, style, new(Vector2D.Zero, scale.Ratio));

    private double Height => _layers[^1].Bottom + _layers[^1].Ring.Thickness.Millimetres;

    /// <summary>Draws the stack at the largest preferred scale that fits.</summary>
    /// <param name="plan">The plan of the whole piece.</param>
    /// <param name="board">The board.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    public static ScaledPicture Draw(Plan plan, BoardGroupPlan board, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(style);
        (Ring Ring, double Bottom)[] layers = [.. Layers(plan, board)];
        return ScaledPicture.Largest(2 * board.Disc, room, scale => new StackPicture(board, layers, style, scale).Draw());
    }

    // From the lowest ring of the board to its highest.
    private static IEnumerable<(Ring Ring, double Bottom)> Layers(Plan plan, BoardGroupPlan board)
    {
        Ring[] rings = [.. plan.Rings.Select(r => r.Ring)];
        int[] own = [.. Enumerable.Range(0, rings.Length).Where(i => ReferenceEquals(plan.Rings[i].Board, board))];
        double bottom = 0;
        foreach (Ring ring in rings[own[0]..(own[^1] + 1)])
        {
            yield return (ring, bottom);
            bottom += ring.Thickness.Millimetres;
        }
    }

    private Drawing Draw()
    {
        foreach ((Ring ring, double bottom) in _layers)
        {
            int number = _board.Rings.Select(r => r.Ring.Name).ToList().IndexOf(ring.Name);
            if (number < 0) Foreign(ring, bottom);
            else Sawn(_board.Rings[number], number, bottom);
        }

        _drawing.Line(_place.Point(new(0, -4 / _place.Scale)), _place.Point(new(0, Height + (4 / _place.Scale))), Pens.Centre);
        Sizes();
        return _drawing;
    }

    private void Sawn(SawnBoardRing ring, int number, double bottom)
    {
        FaceRadii low = ring.Face(up: false), high = ring.Face(up: true);
        double top = bottom + _board.Thickness;
        foreach (int side in new[] { -1, 1 })
        {
            Outline outline = _place.Polygon([new(side * low.Inner, bottom), new(side * low.Outer, bottom), new(side * high.Outer, top), new(side * high.Inner, top)]);
            _drawing.Hatch(outline, SectionHatch.Of(number + ((1 - side) / 2))).Stroke(outline, Pens.Medium);
            Turned(ring, side, bottom, top);
        }

        const double Disc = 1.7;
        if (_place.Scale * Math.Min(_board.Thickness, ring.Wide.Wall) < 2 * (Disc + 0.4)) return;
        Vector2D middle = _place.Point(new((low.Inner + low.Outer + high.Inner + high.Outer) / 4, (bottom + top) / 2));
        TextLine text = Typesetter.Set((number + 1).ToString(CultureInfo.InvariantCulture), TypeScale.Note);
        _drawing.Fill(Outline.Circle(middle, Disc), new Colour(255, 255, 255)).Text(text, middle, Anchor.Middle);
    }

    // The widest outside and the narrowest inside to be turned, where each is known.
    private void Turned(SawnBoardRing ring, int side, double bottom, double top)
    {
        double outer = side * ring.Ring.Outside.Millimetres / 2, inner = side * (ring.Ring.InnerDiameter?.Millimetres ?? 0) / 2;
        (double wide, double narrow) = ring.WideUp ? (top, bottom) : (bottom, top);
        foreach (Vector2D at in new[] { new Vector2D(outer, wide), new Vector2D(inner, narrow) })
            _drawing.Fill(Outline.Circle(_place.Point(at), 0.8), Colour.Black);
    }

    private void Foreign(Ring ring, double bottom)
    {
        double outer = ring.Outside.Millimetres / 2, top = bottom + ring.Thickness.Millimetres;
        _drawing.Stroke(_place.Polygon([new(-outer, bottom), new(outer, bottom), new(outer, top), new(-outer, top)]), Pens.Hidden);
    }

    private void Sizes()
    {
        double reach = _layers.Max(l => l.Ring is BoardRing ? _board.Rings[0].Wide.Outer : l.Ring.Outside.Millimetres / 2);
        Vector2D foot = _place.Point(new(reach, 0)), head = _place.Point(new(reach, Height));
        _drawing.UprightDimension(foot, head, 6, Caliper.Short(_style, Height));
        _drawing.Dimension(_place.Point(new(-_board.Disc, Height)), _place.Point(new(_board.Disc, Height)), 7, $"Ø {Caliper.Short(_style, 2 * _board.Disc)}");
    }
}
