using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using SpreadCheetah;
using SpreadCheetah.Styling;
using SpreadCheetah.Worksheets;

namespace Ringwright.Paper.Data;

/// <summary>A plan as a workbook for a spreadsheet (Office Open XML): cut list, rings and figures, numbers as numbers.</summary>
public static class PlanWorkbook
{
    private const double Narrow = 12, Wide = 28; // of columns, in the format's characters

    /// <summary>Writes the workbook.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">The unit of lengths; they are decimals whatever the style prints.</param>
    /// <param name="output">Where to; left open.</param>
    public static async Task WriteAsync(Plan plan, MeasureStyle style, Stream output)
    {
        Spreadsheet book = await Spreadsheet.CreateNewAsync(output).ConfigureAwait(false);
        await using (book.ConfigureAwait(false))
        {
            StyleId bold = book.AddStyle(new Style { Font = { Bold = true } });
            foreach (PlanTable table in new[] { PlanTable.CutList(plan, style), PlanTable.Rings(plan, style), PlanTable.Figures(plan, style) })
                await AddAsync(book, table, bold).ConfigureAwait(false);
            await book.FinishAsync().ConfigureAwait(false);
        }
    }

    private static async Task AddAsync(Spreadsheet book, PlanTable table, StyleId bold)
    {
        WorksheetOptions options = new() { FrozenRows = 1 };
        for (int c = 0; c < table.Headings.Length; c++)
            options.Column(c + 1).Width = table.Rows.Any(row => row[c].Text?.Length > Narrow) ? Wide : Narrow;
        await book.StartWorksheetAsync(table.Name, options).ConfigureAwait(false);
        await book.AddRowAsync((IList<Cell>)[.. table.Headings.Select(heading => new Cell(heading, bold))]).ConfigureAwait(false);
        foreach (IReadOnlyList<PlanCell> row in table.Rows)
            await book.AddRowAsync((IList<DataCell>)[.. row.Select(Cell)]).ConfigureAwait(false);
    }

    private static DataCell Cell(PlanCell cell) => cell.Number is double number ? new(number) : new(cell.Text);
}
