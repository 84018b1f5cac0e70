using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>How the cells of a column stand.</summary>
public enum ColumnKind
{
    /// <summary>Words, from the left, broken into lines where they must.</summary>
    Words,

    /// <summary>Numbers: whole parts end, decimals and fractions begin at one place; never broken.</summary>
    Numbers,
}

/// <summary>A column of a table.</summary>
/// <param name="Header">What stands at its head.</param>
/// <param name="Kind">How its cells stand.</param>
public sealed record TableColumn(string Header, ColumnKind Kind = ColumnKind.Words);

/// <summary>
/// Rows of cells under headers, with a fine line under each. Set in the body size; where that is too wide, in small print. A long
/// one goes on on the next sheet, its headers repeated and its columns as wide.
/// </summary>
public sealed class Table : IDivisible
{
    private const double Above = 2.1; // from a line to the capitals below it
    private const double Below = 1.3; // from the descenders to the line below them
    private const int LeastRows = 3;  // that stand together before and after a division

    private readonly IReadOnlyList<TableColumn> _columns;
    private readonly IReadOnlyList<IReadOnlyList<string>> _rows;
    private readonly Range _shown = Range.All; // the columns are as wide as all rows need, shown here or not

    /// <summary>A table.</summary>
    /// <param name="columns">Its columns from the left.</param>
    /// <param name="rows">Its rows from the top; each has a cell, perhaps empty, for every column.</param>
    /// <exception cref="ArgumentException">A row has more or fewer cells than there are columns.</exception>
    public Table(IReadOnlyList<TableColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        if (rows.Any(row => row.Count != columns.Count))
            throw new ArgumentException($"Every row of the table must have {columns.Count} cells.", nameof(rows));
        (_columns, _rows) = (columns, rows);
    }

    private Table(Table whole, Range shown) => (_columns, _rows, _shown) = (whole._columns, whole._rows, shown);

    /// <inheritdoc/>
    public double HeightAt(double width) => Set(width).Height;

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        Setting setting = Set(box.Width);
        double bottom = box.Y + setting.Header.Max(Wrapping.HeightOf);
        for (int c = 0; c < _columns.Count; c++)
            Header(drawing, setting.Header[c], setting.Columns[c], box.X, bottom);
        double y = bottom + Below;
        Rule(drawing, box, y, Pens.Medium);
        for (int r = 0; r < setting.Rows.Count; r++)
        {
            for (int c = 0; c < _columns.Count; c++)
                setting.Columns[c].Draw(drawing, setting.Rows[r][c], new(box.X, y + Above));
            y += setting.HeightOf(r);
            Rule(drawing, box, y, Pens.Fine);
        }
    }

    /// <inheritdoc/>
    public (IBlock Head, IBlock Tail)? Divide(double width, double height)
    {
        Setting setting = Set(width);
        (int first, int count) = _shown.GetOffsetAndLength(_rows.Count);
        double left = height - setting.HeaderHeight;
        int fits = 0;
        while (fits < count && (left -= setting.HeightOf(fits)) >= 0) fits++;
        fits = Math.Min(fits, count - LeastRows);
        return fits < LeastRows ? null : (new Table(this, first..(first + fits)), new Table(this, (first + fits)..(first + count)));
    }

    private static void Header(Drawing drawing, IReadOnlyList<TextLine> lines, ColumnSetting column, double x, double bottom)
    {
        Vector2D at = new(x + column.X, bottom - Wrapping.HeightOf(lines));
        if (column.Kind == ColumnKind.Numbers)
            drawing.Text(lines, at + new Vector2D(column.NumbersRight, 0), Anchor.TopRight);
        else
            drawing.Text(lines, at, Anchor.TopLeft);
    }

    private static void Rule(Drawing drawing, Box box, double y, Pen pen) =>
        drawing.Line(new(box.X, y), new(box.Right, y), pen);

    private Setting Set(double width)
    {
        foreach (TextStyle style in TypeScale.Down(TypeScale.Number, TypeScale.Note.Height))
        {
            IReadOnlyList<ColumnSetting>? columns = ColumnSetting.Of(_columns, _rows, style, width);
            if (columns is not null)
                return new(columns, _columns, [.. _rows.Take(_shown)]);
        }

        throw new LayoutException(string.Join(" | ", _columns.Select(c => c.Header)), width, null, TypeScale.Note.Height);
    }

    /// <summary>The lines of every cell at one width.</summary>
    private sealed class Setting(
        IReadOnlyList<ColumnSetting> columns, IReadOnlyList<TableColumn> heads, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        public IReadOnlyList<ColumnSetting> Columns => columns;

        public IReadOnlyList<IReadOnlyList<TextLine>> Header { get; } =
            [.. columns.Select((column, c) => Wrapping.Lines(heads[c].Header, ColumnSetting.HeaderStyle, column.Width))];

        public IReadOnlyList<IReadOnlyList<TextLine>[]> Rows { get; } =
            [.. rows.Select(row => columns.Select((column, c) => column.Lines(row[c])).ToArray())];

        public double HeaderHeight => Header.Max(Wrapping.HeightOf) + Below;

        public double Height => HeaderHeight + Enumerable.Range(0, Rows.Count).Sum(HeightOf);

        public double HeightOf(int row) => Rows[row].Max(Wrapping.HeightOf) + Above + Below;
    }
}
