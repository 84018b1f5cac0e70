using System.Globalization;
using System.Text;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Documents;

/// <summary>The cut list as comma-separated values (RFC 4180), a row for each ring, batch of wedges and wood, for each kind of spacer, and for each kind of strip in a laminated board, unit in each column's name.</summary>
public static class CutListCsv
{
    /// <summary>The list as text; lines end with CR LF as RFC 4180 says. Lengths are decimals in the unit of <paramref name="style"/>.</summary>
    public static string Write(Plan plan, MeasureStyle style)
    {
        var table = PlanTable.CutList(plan, style);
        var text = new StringBuilder();
        Row(text, table.Headings);
        foreach (IReadOnlyList<PlanCell> row in table.Rows) Row(text, row.Select(Text));
        return text.ToString();
    }

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Cell)).Append("\r\n");

    private static string Text(PlanCell cell) => cell.Number is double number ? number.ToString("R", CultureInfo.InvariantCulture) : Plain(cell.Text ?? "");

    // A name that starts like a formula must not become one in a spreadsheet: it may come from somebody else's file.
    private static string Plain(string text) => text.Length > 0 && text[0] is '=' or '@' or '+' or '-' or '\t' or '\r' ? "'" + text : text;

    private static string Cell(string value) => value.AsSpan().IndexOfAny(",\"\r\n") < 0 ? value : '"' + value.Replace("\"", "\"\"", StringComparison.Ordinal) + '"';
}
