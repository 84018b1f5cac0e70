using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// The flat board cut through along its axis, wide face up: its rings between the tilted cuts, the slots left white, the
/// middle plain; rounds to draw above, where the cuts come out below.
/// </summary>
public sealed class BoardSectionPicture
{
    private const double Row = 6.5;   // between dimension lines, mm
    private const int MostRounds = 12; // rings whose sizes stand beside the section; of more the table tells

    private readonly BoardGroupPlan _board;
    private readonly MeasureStyle _style;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private BoardSectionPicture(BoardGroupPlan board, MeasureStyle style, DrawingScale scale) =>
        (_board, _style, _place) = (board, style, new(Vector2D.Zero, scale.Ratio));

    private double Top => _place.Point(new(0, _board.Thickness)).Y;

    /// <summary>Height of the dimensions above and below a section, mm: room for a picture is this and the board itself.</summary>
    public static double Dimensions(BoardGroupPlan board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return Row * ((2 * Math.Min(board.Rings.Length, MostRounds)) + board.Tilts.Count() + 2);
    }

    /// <summary>Draws the section at the largest preferred scale that fits.</summary>
    /// <param name="board">The board with its cuts.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    public static ScaledPicture Draw(BoardGroupPlan board, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(style);
        return ScaledPicture.Largest(2 * board.Disc, room, scale => new BoardSectionPicture(board, style, scale).Draw());
    }

    private Drawing Draw()
    {
        double t = _board.Thickness;
        (double wide, double narrow) = _board.Middle;
        _drawing.Stroke(_place.Polygon([new(-narrow, 0), new(narrow, 0), new(wide, t), new(-wide, t)]), Pens.Medium);
        for (int i = 0; i < _board.Rings.Length; i++) Ring(i, t);
        _drawing.Line(new(0, Top - 3), new(0, 3), Pens.Centre);
        Rounds();
        Tilts();
        Vector2D rim = _place.Point(new(_board.Disc, 0));
        _drawing.UprightDimension(rim, new(rim.X, Top), 6, Caliper.Short(_style, t));
        return _drawing;
    }

    private void Ring(int index, double t)
    {
        SawnBoardRing ring = _board.Rings[index];
        foreach (int side in new[] { -1, 1 })
        {
            Outline outline = _place.Polygon([new(side * ring.Narrow.Inner, 0), new(side * ring.Narrow.Outer, 0), new(side * ring.Wide.Outer, t), new(side * ring.Wide.Inner, t)]);
            _drawing.Hatch(outline, SectionHatch.Of(index + ((1 - side) / 2))).Stroke(outline, Pens.Medium);
        }

        const double Disc = 2;
        if (_place.Scale * Math.Min(t, ring.Wide.Wall) < 2 * (Disc + 0.3)) return;
        Vector2D middle = _place.Point(new((ring.Narrow.Inner + ring.Narrow.Outer + ring.Wide.Inner + ring.Wide.Outer) / 4, t / 2));
        TextLine number = Typesetter.Set((index + 1).ToString(CultureInfo.InvariantCulture), TypeScale.Dimension);
        _drawing.Fill(Outline.Circle(middle, Disc), new Colour(255, 255, 255)).Text(number, middle, Anchor.Middle);
    }

    private void Rounds()
    {
        if (_board.Rings.Length > MostRounds) return;
        double[] above = [.. _board.Rings.Select(r => r.Wide.Inner).Reverse(), _board.Disc], below = [.. _board.Rings.Select(r => r.Narrow.Inner).Reverse()];
        for (int i = 0; i < above.Length; i++)
            _drawing.Dimension(new(-_place.Scale * above[i], Top), new(_place.Scale * above[i], Top), 5 + (Row * i), $"Ø {Caliper.Short(_style, 2 * above[i])}");
        for (int i = 0; i < below.Length; i++)
            _drawing.Dimension(new(-_place.Scale * below[i], 0), new(_place.Scale * below[i], 0), -(5 + (Row * i)), $"Ø {Caliper.Short(_style, 2 * below[i])}");
    }

    // Beside the first cut of each tilt, below the board, from upright.
    private void Tilts()
    {
        double low = 5 + (Row * (Math.Min(_board.Rings.Length, MostRounds) - 1)) + 2;
        foreach (SawnBoardRing ring in _board.Rings.Where(r => r.Inside.Tilt > 0).DistinctBy(r => r.Inside.Tilt))
        {
            Vector2D foot = _place.Point(new(ring.Inside.InsideNarrow, 0));
            _drawing.Note(new(foot.X, foot.Y), new(foot.X + 8, low), $"tilt {_style.Print(ring.Inside.Tilt, Quantity.Angle)}");
            low += Row;
        }
    }
}
