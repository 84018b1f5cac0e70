using Ringwright.Core;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests;

public class LayoutTests
{
    private static readonly PacketTitle Title = new("Bowl", "millimetres", new DateOnly(2026, 3, 14), "0.1.0");

    public static TheoryData<bool, bool> PapersAndUnits => new() { { true, true }, { true, false }, { false, true }, { false, false } };

    [Theory]
    [MemberData(nameof(PapersAndUnits))]
    public void The_longest_values_neither_overlap_nor_leave_the_frame(bool letter, bool inches)
    {
        Packet packet = new SamplePacket(
            letter ? PaperSize.Letter : PaperSize.A4,
            inches ? SampleValues.LongestInches : SampleValues.LongestMillimetres).Make();
        Assert.All(packet.Pages().Zip(packet.Sheets), pair => LayoutChecks.AssertClean(pair.First, pair.Second.Frame));
    }

    [Fact]
    public void Key_figures_share_one_size_and_take_more_rows_before_they_become_too_small_to_read()
    {
        KeyFigures figures = new(4, [.. Enumerable.Range(1, 4).Select(i => new KeyFigure("Length", "1234 63/64", "in"))]);
        Drawing drawing = new(80, 200);
        figures.Draw(drawing, new(0, 0, 80, figures.HeightAt(80)));
        Mark.Text[] values = [.. drawing.Marks.OfType<Mark.Text>().Where(t => t.Line.Text.StartsWith("1234", StringComparison.Ordinal))];
        Assert.All(values, value => Assert.True(value.Line.Style.Height >= 5));
        Assert.Single(values.Select(value => value.Line.Style.Height).Distinct());
        Assert.True(values.Select(value => value.At.Y).Distinct().Count() > 1);
        Assert.Throws<LayoutException>(() => figures.HeightAt(20));
    }

    [Fact]
    public void Numbers_of_a_table_stand_with_their_whole_parts_under_each_other()
    {
        Table table = new([new("Part"), new("mm", ColumnKind.Numbers)], [["a", "9.25"], ["b", "110.5"], ["c", "12 3/8"], ["d", "3/8"]]);
        Drawing drawing = new(100, 100);
        table.Draw(drawing, new(0, 0, 100, table.HeightAt(100)));
        double End(string cell, string whole) => drawing.TextBoxes.Single(box => box.Text == cell).Box.X
            + Typesetter.Set(whole, TypeScale.Number).Width;
        Assert.Equal(End("110.5", "110"), End("9.25", "9"), 1e-9);
        Assert.Equal(End("110.5", "110"), End("12 3⁄8", "12"), 1e-9);
        Assert.Equal(End("110.5", "110"), End("3⁄8", ""), 1e-9);
    }

    [Fact]
    public void A_table_that_is_too_wide_for_the_body_size_goes_into_small_print_and_then_says_so()
    {
        Table table = new([new("Length", ColumnKind.Numbers), new("Depth", ColumnKind.Numbers)], [["3149.225 mm", "3149.225 mm"]]);
        Drawing drawing = new(100, 100);
        table.Draw(drawing, new(0, 0, 45, table.HeightAt(45)));
        Assert.All(drawing.Marks.OfType<Mark.Text>(), text => Assert.Equal(1.8, text.Line.Style.Height));
        Assert.Equal("Length | Depth", Assert.Throws<LayoutException>(() => table.HeightAt(30)).Text);
        Assert.Throws<ArgumentException>(() => new Table([new("One")], [["a", "b"]]));
    }

    [Fact]
    public void Blocks_flow_over_as_many_sheets_as_they_need_and_each_is_numbered()
    {
        Packet packet = new(Title, PaperSize.A4);
        packet.Flow("Steps", "–", Enumerable.Range(1, 40).Select(i => new Section($"Step {i}", new Paragraph("Sand, turn, look."))));
        IReadOnlyList<Drawing> pages = packet.Pages();
        Assert.True(pages.Count > 1);
        string[] texts = [.. pages.SelectMany(page => page.TextBoxes.Select(box => box.Text))];
        Assert.All(Enumerable.Range(1, 40), i => Assert.Single(texts, $"Step {i}"));
        Assert.All(Enumerable.Range(1, pages.Count), i => Assert.Single(texts, $"{i} of {pages.Count}"));
        Assert.All(pages.Zip(packet.Sheets), pair => LayoutChecks.AssertClean(pair.First, pair.Second.Frame));
    }

    [Fact]
    public void Long_lists_of_steps_keep_their_numbers_inside_the_column()
    {
        ListBlock steps = new(ListMark.Number, [.. Enumerable.Range(1, 120).Select(_ => "Sand one wedge.")]);
        Drawing drawing = new(200, 2000);
        Box column = new(50, 0, 100, steps.HeightAt(100));
        steps.Draw(drawing, column);
        LayoutChecks.AssertClean(drawing, column);
    }

    [Fact]
    public void What_does_not_fit_is_named_and_never_cut_off()
    {
        Sheet sheet = new Packet(Title, PaperSize.A4).Add("Ring 3");
        Paragraph tall = new(string.Concat(Enumerable.Repeat("Line\n", 200)));
        Assert.False(sheet.Fits(tall));
        Assert.Contains("Ring 3", Assert.Throws<LayoutException>(() => sheet.Add(tall)).Message, StringComparison.Ordinal);
        Assert.Throws<LayoutException>(() => sheet.AddTrueScale(new Drawing(400, 20)));
        Packet packet = new(Title with { Piece = new string('W', 400) }, PaperSize.A4);
        packet.Add("Cover");
        Assert.StartsWith("WWW", Assert.Throws<LayoutException>(packet.Pages).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1.2)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_correction_that_is_no_printers_error_is_refused(double factor)
    {
        Assert.Equal("print correction across", Assert.Throws<BadInputException>(() => new PrintCorrection(factor, 1)).Where);
        Assert.Equal("print correction down", Assert.Throws<BadInputException>(() => new PrintCorrection(1, factor)).Where);
    }

    [Fact]
    public void The_correction_comes_from_what_the_rulers_measured()
    {
        PrintCorrection correction = PrintCorrection.FromMeasured(across: 99.5, down: 100.4);
        Assert.Equal(100, 99.5 * correction.Across, 1e-12);
        Assert.Equal(100, 100.4 * correction.Down, 1e-12);
    }

    [Theory]
    [InlineData(8, 180, "10:1")]
    [InlineData(100, 180, "1:1")]
    [InlineData(180.1, 180, "1:2")]
    [InlineData(1000, 90, "1:20")]
    public void A_picture_takes_the_largest_preferred_scale_that_fits(double size, double room, string scale) =>
        Assert.Equal(scale, DrawingScale.Largest(size, room).ToString());
}
