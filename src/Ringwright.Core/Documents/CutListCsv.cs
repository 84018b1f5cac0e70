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
        ArgumentNullException.ThrowIfNull(style);
        bool inch = style.Unit == LengthUnit.Inch;
        string u = inch ? "in" : "mm";
        var text = new StringBuilder();
        Row(text, "ring", "wood", "wedges needed", "wedges to saw", "boards", $"strip length [{u}]", $"width [{u}]", $"thickness [{u}]",
            $"rim edge as sawn [{u}]", $"tip as sawn [{u}]", "mitre [deg]", $"stop [{u}]", "part");
        foreach (RingPlan ring in plan.Rings)
        {
            string Length(double millimetres) => Number(inch ? millimetres / MeasureStyle.MillimetresPerInch : millimetres, inch ? 4 : 3);
            for (int b = 0; b < Math.Max(1, ring.Batches.Length); b++)
            {
                RingPlan batch = ring.Batches.IsEmpty ? ring : ring.Alone(b);
                string Size(string figure) => batch.Find(figure) is Figure size ? Length(size.Value) : "";
                string mitre = batch.Find("mitre") is Figure angle ? Number(double.RadiansToDegrees(angle.Value), 4) : "";
                string part = ring.Batches.IsEmpty ? "layer" : ring.Stave is not null ? "stave" : ring.Batches.Length == 1 ? "wedge" : $"wedge {b + 1}";
                foreach (WoodNeed wood in batch.Woods)
                    Row(text, ring.Ring.Name, wood.Wood, Number(wood.Needed, 0), Number(wood.ToSaw, 0), Number(wood.Boards, 0), Length(wood.Length),
                        Size("board-width"), Size("board-thickness"), Size("sawn-rim-edge"), Size("sawn-tip"), mitre, Size("stop"), part);
            }

            // A spacer is cut square: its thickness is that of its strip, the stop its length.
            foreach (SpacerBatch s in ring.Spacers)
                Row(text, ring.Ring.Name, s.Wood, Number(s.Need.Needed, 0), Number(s.Need.ToSaw, 0), Number(s.Need.Boards, 0), Length(s.Need.Length),
                    Length(s.Height), Length(s.Thickness), "", "", "0", Length(s.Length), "spacer");

            // So is a strip of a laminated board.
            foreach (StripNeed strip in ring.Lamination?.Kinds ?? [])
                Row(text, ring.Ring.Name, strip.Wood, Number(strip.Count, 0), Number(strip.Count, 0), Number(strip.Sticks, 0), Length(strip.Length),
                    ring.Find("strip-width") is Figure width ? Length(width.Value) : "", Length(strip.Thickness), "", "", "0", Length(strip.Height), "strip");
        }

        return text.ToString();
    }

    private static void Row(StringBuilder text, params ReadOnlySpan<string> cells)
    {
        for (int i = 0; i < cells.Length; i++)
        {
            if (i > 0) text.Append(',');
            text.Append(Cell(cells[i]));
        }

        text.Append("\r\n");
    }

    // A name that starts like a formula must not become one in a spreadsheet.
    private static string Cell(string value)
    {
        if (value.Length > 0 && value[0] is '=' or '@' or '+' or '\t') value = "'" + value;
        return value.AsSpan().IndexOfAny(",\"\r\n") < 0 ? value : '"' + value.Replace("\"", "\"\"", StringComparison.Ordinal) + '"';
    }

    private static string Number(double value, int decimals) => Math.Round(value, decimals).ToString("R", CultureInfo.InvariantCulture);
}
