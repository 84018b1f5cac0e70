using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.Templates;

/// <summary>One page's part of a template that is larger than the paper.</summary>
/// <param name="Column">Its column, from 0 at the left.</param>
/// <param name="Row">Its row, from 0 at the top.</param>
/// <param name="Box">What of the template it shows, mm.</param>
internal readonly record struct Tile(int Column, int Row, Box Box)
{
    /// <summary>Letter of the column and number of the row: A1 is at the top left.</summary>
    public string Name => NameOf(Column, Row);

    /// <summary>The name of the tile in a column and row.</summary>
    public static string NameOf(int column, int row) => (column < 26 ? "" : ((char)('A' + (column / 26) - 1)).ToString()) + (char)('A' + (column % 26)) + (row + 1).ToString(CultureInfo.InvariantCulture);
}

/// <summary>How a template is divided over pages: pages overlap, and the same crosses stand on both pages of a seam.</summary>
internal sealed class TilePlan
{
    /// <summary>What two neighbouring pages both show, mm.</summary>
    public const double Overlap = 14;

    /// <summary>Most pages of one template; more are no help in a shop.</summary>
    public const int Most = 600;

    private readonly double _stepX, _stepY;
    private readonly Box _all;

    private TilePlan(Drawing whole, Room room)
    {
        (Columns, _stepX) = Divide(whole.Width, room.Width);
        (Rows, _stepY) = Divide(whole.Height, room.Height);
        double width = ((Columns - 1) * _stepX) + room.Width, height = ((Rows - 1) * _stepY) + room.Height;
        // What is left over is shared between both ends.
        _all = IsOne ? new(0, 0, whole.Width, whole.Height) : new((whole.Width - width) / 2, (whole.Height - height) / 2, width, height);
        if ((long)Columns * Rows > Most)
            throw new BadInputException("template", string.Create(CultureInfo.InvariantCulture, $"at true scale it would take {(long)Columns * Rows} pages"), $"at most {Most} are printed; take its SVG or DXF file");
        IEnumerable<Tile> tiles = from row in Enumerable.Range(0, Rows) from column in Enumerable.Range(0, Columns) select new Tile(column, row, BoxOf(column, row, room));
        Tiles = IsOne ? [.. tiles] : [.. tiles.Where(tile => HasLines(whole, Vector2D.Zero, tile.Box))];
    }

    /// <summary>Pages beside each other.</summary>
    public int Columns { get; }

    /// <summary>Pages below each other.</summary>
    public int Rows { get; }

    /// <summary>Whether one page holds all of it.</summary>
    public bool IsOne => Columns == 1 && Rows == 1;

    /// <summary>The pages that show something, row by row.</summary>
    public IReadOnlyList<Tile> Tiles { get; }

    /// <summary>Divides a drawing.</summary>
    /// <param name="whole">The drawing.</param>
    /// <param name="room">Room on a page, mm of the drawing.</param>
    /// <exception cref="BadInputException">It would need too many pages.</exception>
    public static TilePlan Of(Drawing whole, Room room) => new(whole, room);

    /// <summary>Places of the crosses on a tile, in the axes of the whole, each with the name of the page on the other side.</summary>
    public IEnumerable<(Vector2D At, string Beyond)> Crosses(Tile tile)
    {
        foreach ((int dx, int dy) in new[] { (-1, 0), (1, 0), (0, -1), (0, 1) })
        {
            int column = tile.Column + dx, row = tile.Row + dy;
            if (!Tiles.Any(t => t.Column == column && t.Row == row)) continue;
            Vector2D seam = Seam(tile, dx, dy), along = dx != 0 ? new(0, tile.Box.Height / 4) : new(tile.Box.Width / 4, 0);
            yield return (seam - along, Tile.NameOf(column, row));
            yield return (seam + along, Tile.NameOf(column, row));
        }
    }

    /// <summary>The lines in the middle of what a tile shares with its neighbours, where one page is cut and laid on the other.</summary>
    public IEnumerable<(Vector2D From, Vector2D To)> Seams(Tile tile)
    {
        foreach ((int dx, int dy) in new[] { (-1, 0), (1, 0), (0, -1), (0, 1) })
        {
            if (!Tiles.Any(t => t.Column == tile.Column + dx && t.Row == tile.Row + dy)) continue;
            Vector2D seam = Seam(tile, dx, dy), along = dx != 0 ? new(0, tile.Box.Height / 2) : new(tile.Box.Width / 2, 0);
            yield return (seam - along, seam + along);
        }
    }

    /// <summary>What of a tile lies clear of all that it shares with its neighbours, in axes moved by <paramref name="shift"/> the other way.</summary>
    public Box ClearOfSeams(Tile tile, Vector2D shift)
    {
        double Beside(int dx, int dy) => Tiles.Any(t => t.Column == tile.Column + dx && t.Row == tile.Row + dy) ? Overlap : 0;
        double left = Beside(-1, 0), top = Beside(0, -1);
        return new(left - shift.X, top - shift.Y, tile.Box.Width - left - Beside(1, 0), tile.Box.Height - top - Beside(0, 1));
    }

    private static Vector2D Seam(Tile tile, int dx, int dy) =>
        tile.Box.Centre + new Vector2D(dx * (tile.Box.Width - Overlap) / 2, dy * (tile.Box.Height - Overlap) / 2);

    private static (int Count, double Step) Divide(double size, double room) => size <= room + 1e-9
        ? (1, room)
        : ((int)Math.Ceiling((size - Overlap) / (room - Overlap) - 1e-9), room - Overlap);

    private Box BoxOf(int column, int row, Room room) => IsOne ? _all : new(_all.X + (column * _stepX), _all.Y + (row * _stepY), room.Width, room.Height);

    private static bool HasLines(Drawing drawing, Vector2D at, Box box) => drawing.Marks.Any(mark => mark switch
    {
        Mark.Stroke stroke => stroke.Outline.Within(box with { X = box.X - at.X, Y = box.Y - at.Y }) is not null,
        Mark.Placed placed => HasLines(placed.Child, at + placed.At, box),
        _ => false,
    });
}
