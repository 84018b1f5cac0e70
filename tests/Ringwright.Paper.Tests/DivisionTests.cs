using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests;

/// <summary>Blocks that are longer than a sheet.</summary>
public class DivisionTests
{
    private static readonly string[] Items = [.. Enumerable.Range(1, 90).Select(i => string.Create(CultureInfo.InvariantCulture, $"item number {i} of a list that goes on"))];

    [Fact]
    public void A_long_table_goes_on_with_its_headers_in_columns_as_wide()
    {
        Table table = new([new("Name"), new("Value", ColumnKind.Numbers)], [.. Items.Select((item, i) => new[] { i == 5 ? item + " and on and on" : item, $"{i}.5 mm" })]);
        Packet packet = Flowed(new Section("Values", table));
        Assert.InRange(packet.Sheets.Count, 3, 4);
        Assert.Equal(packet.Sheets.Count, Texts(packet).Count(t => t == "Name"));
        Assert.Equal(packet.Sheets.Count - 1, Texts(packet).Count(t => t == "Values, continued"));
        Assert.Equal(Items.Length, Texts(packet).Count(t => t.EndsWith(" mm", StringComparison.Ordinal)));
        // Decimal points stand under each other from sheet to sheet.
        Assert.Single(packet.Sheets.Select(s => Math.Round(s.Drawing.TextBoxes.Last(t => t.Text.EndsWith(" mm", StringComparison.Ordinal) && t.Text.Length == 7).Box.X, 6)).Distinct());
    }

    [Fact]
    public void A_long_list_goes_on_with_its_numbers()
    {
        Packet packet = Flowed(new Paragraph("Before"), new Section("In this order", new ListBlock(ListMark.Number, Items)));
        Assert.True(packet.Sheets.Count > 1);
        Assert.All(Enumerable.Range(1, Items.Length), n => Assert.Single(Texts(packet), t => t == n.ToString(CultureInfo.InvariantCulture)));
        Assert.All(Items, item => Assert.Single(Texts(packet), t => t == item));
    }

    [Fact]
    public void A_list_under_a_picture_sized_block_moves_whole_when_it_fits_a_sheet()
    {
        // Less than a quarter of a sheet, after a block that grows until it fits no more.
        Packet packet = Enumerable.Range(12, 20).Select(n => Flowed(new BlankFields(1, [.. Items[..n]]), new Section("Short", new ListBlock(ListMark.Dot, Items[..6])))).First(p => p.Sheets.Count == 2);
        Assert.DoesNotContain(Texts(packet), t => t.Contains("continued", StringComparison.Ordinal));
    }

    [Fact]
    public void Columns_of_blocks_are_divided_between_and_inside_them()
    {
        Packet packet = Flowed(new Section("All", new Column(4, new Paragraph("First"), new ListBlock(ListMark.Tick, Items), new Paragraph("Last"))));
        Assert.Single(Texts(packet), t => t == "First");
        Assert.Single(Texts(packet), t => t == "Last");
        Assert.All(Items, item => Assert.Single(Texts(packet), t => t == item));
    }

    [Fact]
    public void What_cannot_be_divided_and_fits_nowhere_is_refused() =>
        Assert.Throws<LayoutException>(() => Flowed(new Picture(new(100, 400))));

    private static IEnumerable<string> Texts(Packet packet) => packet.Sheets.SelectMany(s => s.Drawing.TextBoxes).Select(t => t.Text);

    private static Packet Flowed(params IBlock[] blocks)
    {
        Packet packet = new(new("Piece", RingWords.Units(MeasureStyle.Millimetres), new(2026, 3, 14), "1"), PaperSize.A4);
        packet.Flow("Long", "–", blocks);
        foreach (Sheet sheet in packet.Sheets)
        {
            LayoutChecks.AssertClean(sheet.Drawing, sheet.Frame);
            LayoutChecks.AssertInside(sheet.Drawing, sheet.Frame);
        }

        return packet;
    }
}
