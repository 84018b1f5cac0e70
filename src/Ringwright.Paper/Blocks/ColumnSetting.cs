using System.Text.RegularExpressions;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>A column of a table at one size: where it lies and how its cells are set.</summary>
internal sealed partial class ColumnSetting
{
    /// <summary>How headers are set.</summary>
    public static readonly TextStyle HeaderStyle = TypeScale.Caption with { Weight = FontWeight.SemiBold };

    private const double Gap = 5;         // between columns
    private const double LeastWords = 14; // narrower, words fall apart
    private const double LongWord = 22;   // a word no longer than this stays whole

    private readonly TextStyle _style;
    private readonly double _wholes;

    private ColumnSetting(TableColumn column, IReadOnlyList<string> cells, TextStyle style)
    {
        (Kind, _style) = (column.Kind, style with { Tabular = column.Kind == ColumnKind.Numbers });
        double header = LongestWord(column.Header);
        if (Kind == ColumnKind.Numbers)
        {
            _wholes = Widest(cells.Select(Whole));
            double parts = cells.Select(cell => WidthOf(cell) - WidthOf(Whole(cell))).DefaultIfEmpty(0).Max();
            NumbersRight = Math.Max(header, _wholes + parts);
            _wholes = NumbersRight - parts;
            Width = Least = NumbersRight;
        }
        else
        {
            Width = Math.Max(header, Widest(cells));
            double whole = cells.SelectMany(cell => cell.Split(' ')).Select(WidthOf).Where(width => width <= LongWord).DefaultIfEmpty(0).Max();
            Least = Math.Min(Width, Math.Max(LeastWords, Math.Max(header, whole)));
        }
    }

    /// <summary>How its cells stand.</summary>
    public ColumnKind Kind { get; }

    /// <summary>Left edge from the left of the table, mm.</summary>
    public double X { get; private set; }

    /// <summary>Width, mm.</summary>
    public double Width { get; private set; }

    /// <summary>Where numbers and their header end, from the left edge, mm.</summary>
    public double NumbersRight { get; }

    private double Least { get; }

    /// <summary>The columns laid out over a width, or null where they are too wide in this style.</summary>
    public static IReadOnlyList<ColumnSetting>? Of(
        IReadOnlyList<TableColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows, TextStyle style, double width)
    {
        ColumnSetting[] all = [.. columns.Select((column, c) => new ColumnSetting(column, [.. rows.Select(r => r[c])], style))];
        double room = width - (Gap * (all.Length - 1));
        if (all.Sum(c => c.Least) > room)
            return null;
        Narrow(all, room);
        Spread(all, width);
        return all;
    }

    /// <summary>The lines of a cell.</summary>
    public IReadOnlyList<TextLine> Lines(string cell) =>
        Kind == ColumnKind.Numbers ? [Typesetter.Set(cell, _style)] : Wrapping.Lines(cell, _style, Width);

    /// <summary>Draws a cell whose row begins at <paramref name="at"/>, the table's left edge.</summary>
    public void Draw(Drawing drawing, IReadOnlyList<TextLine> lines, Vector2D at)
    {
        double x = at.X + X;
        if (Kind == ColumnKind.Numbers)
            x += _wholes - WidthOf(Whole(lines[0].Text));
        drawing.Text(lines, new(x, at.Y), Anchor.TopLeft);
    }

    // Takes what is too much from the columns of words, from the widest first, so that the widest are equal.
    private static void Narrow(ColumnSetting[] all, double room)
    {
        double cap = all.Max(c => c.Width);
        while (all.Sum(c => Capped(c, cap)) > room)
            cap -= 0.5;
        foreach (ColumnSetting column in all)
            column.Width = Capped(column, cap);
    }

    private static double Capped(ColumnSetting column, double cap) => Math.Max(column.Least, Math.Min(column.Width, cap));

    // What is left goes between the columns, so that the table always fills its width.
    private static void Spread(ColumnSetting[] all, double width)
    {
        double gap = all.Length < 2 ? 0 : (width - all.Sum(c => c.Width)) / (all.Length - 1);
        double x = 0;
        foreach (ColumnSetting column in all)
        {
            column.X = x;
            x += column.Width + gap;
        }
    }

    private static double LongestWord(string text) =>
        text.Split(' ').Max(word => Typesetter.WidthOf(word, HeaderStyle));

    private static string Whole(string cell) => WholePart().Match(cell).Value;

    private double Widest(IEnumerable<string> texts) => texts.Select(WidthOf).DefaultIfEmpty(0).Max();

    private double WidthOf(string text) => Typesetter.WidthOf(text, _style);

    // The digits, a nearly sign with them, before a decimal point, a fraction or a unit; nothing where the cell is a bare fraction or words.
    [GeneratedRegex(@"^(≈ )?[+\-−±]?\d+(?![\d/⁄])")]
    private static partial Regex WholePart();
}
