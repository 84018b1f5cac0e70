using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Labels;

/// <summary>How stickers lie on a sheet: as many across and down, between equal margins, with gaps. All lengths in mm.</summary>
/// <param name="Columns">Stickers across.</param>
/// <param name="Rows">Stickers down.</param>
/// <param name="MarginAcross">From the paper's left edge to the first sticker, and from the last to the right edge.</param>
/// <param name="MarginDown">The same above and below.</param>
/// <param name="GapAcross">Between stickers beside each other.</param>
/// <param name="GapDown">Between stickers below each other.</param>
public sealed record LabelGrid(int Columns, int Rows, double MarginAcross, double MarginDown, double GapAcross, double GapDown)
{
    /// <summary>Least size of a sticker, mm: smaller, neither words nor code can be read.</summary>
    public const double LeastWidth = 30, LeastHeight = 16;

    /// <summary>A plain grid to cut apart.</summary>
    public static LabelGrid Plain { get; } = new(3, 7, 10, 12, 3, 2);

    /// <summary>Stickers on a sheet.</summary>
    public int Count => Columns * Rows;

    /// <summary>The place of a sticker on its sheet.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="index">Its number from 0, row by row.</param>
    public Box Place(PaperSize paper, int index)
    {
        ArgumentNullException.ThrowIfNull(paper);
        (double width, double height) = Size(paper);
        return new(MarginAcross + (index % Columns * (width + GapAcross)), MarginDown + (index / Columns * (height + GapDown)), width, height);
    }

    /// <summary>Checks that stickers of a sensible size fit the paper.</summary>
    /// <exception cref="BadInputException">They do not.</exception>
    public LabelGrid On(PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        if (Columns is < 1 or > 20 || Rows is < 1 or > 40) throw new BadInputException("label sheet", $"{Columns} × {Rows} stickers cannot be", "1 to 20 across and 1 to 40 down can");
        if (!(MarginAcross >= 0 && MarginDown >= 0 && GapAcross >= 0 && GapDown >= 0)) throw new BadInputException("label sheet", "a margin or gap is negative", "0 or more is needed");
        (double width, double height) = Size(paper);
        return width >= LeastWidth && height >= LeastHeight
            ? this
            : throw new BadInputException("label sheet", string.Create(CultureInfo.InvariantCulture, $"{Columns} × {Rows} on {paper.Name} leaves stickers of {width:0.#} × {height:0.#} mm"), $"at least {LeastWidth} × {LeastHeight} mm is needed: take fewer, or smaller margins and gaps");
    }

    /// <summary>Reads a grid; what is not said is as on the plain one.</summary>
    /// <param name="grid">Stickers across and down, such as <c>3x7</c>.</param>
    /// <param name="margins">Margins left and right, above and below, such as <c>10 mm,12 mm</c>.</param>
    /// <param name="gaps">Gaps between stickers, such as <c>3 mm,2 mm</c>.</param>
    /// <param name="unit">Of lengths without one.</param>
    /// <param name="prefix">What stands before the names of the three where they were typed.</param>
    /// <exception cref="BadInputException">One of them cannot be read.</exception>
    public static LabelGrid Read(string? grid, string? margins, string? gaps, LengthUnit unit, string prefix = "")
    {
        LabelGrid read = Plain;
        if (!string.IsNullOrEmpty(grid))
        {
            string[] both = grid.ToLowerInvariant().Split('x', StringSplitOptions.TrimEntries);
            if (both.Length != 2 || !int.TryParse(both[0], NumberStyles.None, CultureInfo.InvariantCulture, out int columns) || !int.TryParse(both[1], NumberStyles.None, CultureInfo.InvariantCulture, out int rows))
                throw new BadInputException(prefix + "grid", $"“{grid}” is no grid", "stickers across and down are needed, such as 3x7");
            read = read with { Columns = columns, Rows = rows };
        }

        if (!string.IsNullOrEmpty(margins) && Pair(prefix + "margins", margins, unit) is var margin) read = read with { MarginAcross = margin.Across, MarginDown = margin.Down };
        if (!string.IsNullOrEmpty(gaps) && Pair(prefix + "gaps", gaps, unit) is var gap) read = read with { GapAcross = gap.Across, GapDown = gap.Down };
        return read;
    }

    private static (double Across, double Down) Pair(string where, string text, LengthUnit unit)
    {
        const string Right = "two lengths are needed, across and down, such as 10 mm,12 mm";
        string[] both = text.Split(',', StringSplitOptions.TrimEntries);
        if (both.Length != 2) throw new BadInputException(where, $"“{text}” is not two lengths", Right);
        double[] lengths = [.. both.Select(one => Length.TryParse(one, unit, out Length length, out ParseError? error) ? length.Millimetres : throw new BadInputException(where, error.Sentence, Right))];
        return (lengths[0], lengths[1]);
    }

    private (double Width, double Height) Size(PaperSize paper) => (
        (paper.Width - (2 * MarginAcross) - (GapAcross * (Columns - 1))) / Columns,
        (paper.Height - (2 * MarginDown) - (GapDown * (Rows - 1))) / Rows);
}
