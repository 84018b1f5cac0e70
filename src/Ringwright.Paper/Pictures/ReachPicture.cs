using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// The reach map: segments across, diameters down. A free cell can be made; any other has the hatch and the letter of the
/// first thing that stops it. A heavy line runs around what can be made.
/// </summary>
public sealed class ReachPicture
{
    /// <summary>The most columns, and the most rows, that are drawn.</summary>
    public const int Most = 120;

    private const double Wanted = 230;                 // of the map across and down, mm, where cells allow
    private const double LeastCell = 4.4, MostCell = 16; // side of a cell, mm: a letter must be read in it
    private const double LeastWidth = 150;             // of the page, mm
    private const double Gap = 1.6;                    // between the map and the numbers at its edges, mm

    private readonly ReachMap _map;
    private readonly MeasureStyle _style;
    private readonly double _cell;
    private readonly Drawing _drawing = new(0, 0);

    private ReachPicture(ReachMap map, MeasureStyle style)
    {
        (_map, _style) = (map, style);
        _cell = Math.Clamp(Wanted / Math.Max(map.Segments.Length, map.Diameters.Length), LeastCell, MostCell);
    }

    private int Columns => _map.Segments.Length;

    private int Rows => _map.Diameters.Length;

    /// <summary>Draws the map with its legend.</summary>
    /// <param name="map">The map.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <exception cref="BadInputException">More columns or rows than are drawn.</exception>
    public static Drawing Draw(ReachMap map, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(style);
        if (map.Segments.Length > Most || map.Diameters.Length > Most)
            throw new BadInputException("picture of the reach", $"{map.Segments.Length} by {map.Diameters.Length} sizes are too many to be read", $"at most {Most} by {Most} are drawn");
        Drawing grid = new ReachPicture(map, style).Draw();
        double width = Math.Max(LeastWidth, grid.Width);
        return PicturePage.Of(
            width,
            new Paragraph($"How small one can go: {map.Shop.Name}", TypeScale.Title),
            new Picture(grid),
            new Section("What stops a size first", new Column(3, [Free(), .. Stops(map).Select(c => Stopped(c, map, style))])));
    }

    // In the order in which the work meets them; of each the first on the map, for a sentence with numbers.
    private static IEnumerable<ReachCell> Stops(ReachMap map) =>
        map.Cells.Where(c => c.Stop != ReachStop.None).DistinctBy(c => c.Stop).OrderBy(c => c.Stop);

    private static LegendEntry Free() => new(Hatch.Plain, "", "It can be made, inside the heavy line. Where there is room, the length of its rim edge stands in the cell.");

    private static LegendEntry Stopped(ReachCell cell, ReachMap map, MeasureStyle style)
    {
        var mark = ReachMark.Of(cell.Stop);
        return new(mark.Hatch, mark.Letter, string.Create(CultureInfo.InvariantCulture, $"{mark.Name}. For {cell.Segments} at {style.Length(cell.Diameter)}: {ReachMap.Say(cell, map.Shop).In(style)}"));
    }

    private Drawing Draw()
    {
        for (int row = 0; row < Rows; row++)
            for (int column = 0; column < Columns; column++) Cell(column, row);
        Grid();
        Contour();
        Edges();
        return _drawing.Cropped();
    }

    private void Cell(int column, int row)
    {
        ReachCell cell = _map[column, row];
        Box box = new(column * _cell, row * _cell, _cell, _cell);
        if (cell.Stop == ReachStop.None)
        {
            TextLine edge = Typesetter.Set(Bare(cell.RimEdge), TypeScale.Note);
            if (edge.Width <= _cell - 1.5) _drawing.Text(edge, box.Centre, Anchor.Middle);
            return;
        }

        var mark = ReachMark.Of(cell.Stop);
        _drawing.Hatch(Outline.Rectangle(box), mark.Hatch).LetterOn(mark.Letter, box.Centre, Math.Min(2.3, _cell / 2.2));
    }

    private void Grid()
    {
        Pen pen = Pens.Fine with { Colour = Colour.Grey(150) };
        for (int column = 0; column <= Columns; column++) _drawing.Line(Corner(column, 0), Corner(column, Rows), pen);
        for (int row = 0; row <= Rows; row++) _drawing.Line(Corner(0, row), Corner(Columns, row), pen);
    }

    // Between every cell that can be made and a neighbour that cannot; the map's own edge is no limit of the shop's.
    private void Contour()
    {
        for (int row = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++)
            {
                if (column + 1 < Columns && CanBe(column, row) != CanBe(column + 1, row)) _drawing.Line(Corner(column + 1, row), Corner(column + 1, row + 1), Pens.Heavy);
                if (row + 1 < Rows && CanBe(column, row) != CanBe(column, row + 1)) _drawing.Line(Corner(column, row + 1), Corner(column + 1, row + 1), Pens.Heavy);
            }
        }
    }

    private void Edges()
    {
        TextLine[] heads = [.. _map.Segments.Select(n => Typesetter.Set(n.ToString(CultureInfo.InvariantCulture), TypeScale.Body))];
        int every = Every(heads.Max(h => h.Width) + Gap);
        for (int column = 0; column < Columns; column += every)
            _drawing.Text(heads[column], new((column + 0.5) * _cell, -Gap), Anchor.Centre);
        TextLine[] sides = [.. _map.Diameters.Select(d => Typesetter.Set(_style.Length(d), TypeScale.Dimension))];
        int down = Every(TypeScale.Body.Height + Gap);
        for (int row = 0; row < Rows; row += down)
            _drawing.Text(sides[row], new(-Gap, (row + 0.5) * _cell), Anchor.MiddleRight);
        _drawing.Text("segments", new(0, -Gap - 5), TypeScale.Body with { Weight = FontWeight.SemiBold })
            .Text("across flats", new(-Gap, -Gap), TypeScale.Body with { Weight = FontWeight.SemiBold }, Anchor.Right);
    }

    private int Every(double room) => Math.Max(1, (int)Math.Ceiling(room / _cell));

    private bool CanBe(int column, int row) => _map[column, row].Stop == ReachStop.None;

    private Vector2D Corner(int column, int row) => new(column * _cell, row * _cell);

    // Without its unit, which the sizes at the side have; fractions of an inch would not fit.
    private string Bare(double millimetres) => _style.Unit == LengthUnit.Inch
        ? (millimetres / MeasureStyle.MillimetresPerInch).ToString("0.000", CultureInfo.InvariantCulture)
        : millimetres.ToString("0.0", CultureInfo.InvariantCulture);
}
