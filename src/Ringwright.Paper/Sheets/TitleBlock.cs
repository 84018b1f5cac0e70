using System.Globalization;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Sheets;

/// <summary>The strip at the foot of a sheet that says what it is (fields after ISO 7200).</summary>
internal static class TitleBlock
{
    /// <summary>Height of the strip, mm.</summary>
    public const double Height = UpperRow + LowerRow;

    private const double UpperRow = 12;
    private const double LowerRow = 10;
    private const double PageWidth = 30;
    private const double Padding = 2;
    private const double CaptionRoom = 5; // from the top of a cell to the top of its value

    /// <summary>Draws the strip into a box of <see cref="Height"/>.</summary>
    public static void Draw(Drawing drawing, Box box, PacketTitle packet, SheetTitle sheet)
    {
        drawing.Line(box.TopLeft, new(box.Right, box.Y), Pens.Medium);
        Box fields = box with { Width = box.Width - PageWidth };
        Row(drawing, fields.Top(UpperRow), TypeScale.Heading, (0.5, "Piece", packet.Piece), (0.5, "Sheet", sheet.Name));
        drawing.Line(new(fields.X, fields.Y + UpperRow), new(fields.Right, fields.Y + UpperRow), Pens.Fine);
        Row(
            drawing,
            fields.Below(UpperRow),
            TypeScale.Body,
            (0.14, "Scale", sheet.Scale),
            (0.38, "Numbers in", packet.Units),
            (0.2, "Date", packet.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            (0.28, "Drawn by", $"Ringwright {packet.Version}"));
        Page(drawing, box.After(fields.Width), sheet);
    }

    private static void Row(Drawing drawing, Box row, TextStyle style, params (double Share, string Caption, string Value)[] cells)
    {
        double x = row.X;
        foreach ((double share, string caption, string value) in cells)
        {
            Box cell = row with { X = x, Width = share * row.Width };
            Cell(drawing, cell, caption, value, style);
            x = cell.Right;
            drawing.Line(new(x, cell.Y), new(x, cell.Bottom), Pens.Fine);
        }
    }

    private static void Cell(Drawing drawing, Box cell, string caption, string value, TextStyle style)
    {
        drawing.Text(caption, new(cell.X + Padding, cell.Y + 1.6), TypeScale.Caption, Anchor.TopLeft);
        double room = cell.Height - CaptionRoom - 0.6;
        IReadOnlyList<TextLine> lines =
            Wrapping.InBox(value, style, cell.Width - (2 * Padding), room, TypeScale.Note.Height);
        drawing.Text(lines, new(cell.X + Padding, cell.Y + CaptionRoom), Anchor.TopLeft);
    }

    private static void Page(Drawing drawing, Box cell, SheetTitle sheet)
    {
        drawing.Text("Page", new(cell.X + Padding, cell.Y + 1.6), TypeScale.Caption, Anchor.TopLeft);
        TextLine number = Wrapping.OneLine(
            $"{sheet.Number} of {sheet.Count}", TypeScale.Title, cell.Width - (2 * Padding), TypeScale.Note.Height);
        drawing.Text(number, new(cell.Centre.X, cell.Centre.Y + 1), Anchor.Middle);
    }
}
