using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Ringwright.Paper.Tests;

public class PdfWriterTests
{
    private const double Tolerance = 0.01; // mm, finer than any printer

    public static TheoryData<string> Papers => ["A4", "Letter"];

    [Fact]
    public void A_polygon_keeps_its_size()
    {
        Vector2D[] corners = [.. Enumerable.Range(0, 24).Select(i => new Vector2D(100, 120) + Vector2D.Polar(80, Math.PI * i / 12))];
        using PdfDocument pdf = PdfReader.Document(new Drawing(210, 297).Stroke(Outline.Polygon(corners), Pens.Heavy));
        IReadOnlyList<ReadLine> sides = PdfReader.Lines(pdf.GetPage(1));
        Assert.Equal(24, sides.Count);
        // Side of a regular polygon from its circumradius: 2 R sin(180°/N), any handbook of mathematics.
        Assert.All(sides, side => Assert.Equal(2 * 80 * Math.Sin(Math.PI / 24), side.Length, Tolerance));
        Assert.Equal(160, sides.Max(s => s.From.X) - sides.Min(s => s.From.X), Tolerance);
        Assert.Equal(160, sides.Max(s => s.From.Y) - sides.Min(s => s.From.Y), Tolerance);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Both_rulers_of_a_true_scale_sheet_are_100_mm_and_4_in(string name)
    {
        IReadOnlyList<ReadLine> lines = TrueScaleLines(name, PrintCorrection.None);
        Assert.Equal([100, 101.6], RulerLengths(lines, line => line.IsUpright, p => p.X), Close);
        Assert.Equal([100, 101.6], RulerLengths(lines, line => line.IsLevel, p => p.Y), Close);
    }

    [Fact]
    public void The_correction_stretches_rulers_and_drawing_alike_and_each_direction_by_its_own()
    {
        IReadOnlyList<ReadLine> lines = TrueScaleLines("A4", new PrintCorrection(1.012, 0.987));
        Assert.Equal([101.2, 102.8192], RulerLengths(lines, line => line.IsUpright, p => p.X), Close);
        Assert.Equal([98.7, 100.2792], RulerLengths(lines, line => line.IsLevel, p => p.Y), Close);
        // The flats of the sample's wedge, 24 segments, apothems 100 and 55 mm: the only heavy level lines but the frame.
        ReadLine[] flats = [.. lines.Where(line => line.IsLevel && line.Width > 0.6 && line.Length < 100).OrderBy(line => line.Length)];
        Assert.Equal([1.012 * 110 * Math.Tan(Math.PI / 24), 1.012 * 200 * Math.Tan(Math.PI / 24)], flats.Select(flat => flat.Length), Close);
        Assert.Equal(0.987 * 45, flats[1].From.Y - flats[0].From.Y, Tolerance);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void The_stated_page_size_is_the_paper_to_a_600th_of_an_inch_and_lengths_are_exact(string name)
    {
        PaperSize paper = Paper(name);
        using PdfDocument pdf = PdfReader.Document(
            new Drawing(paper.Width, paper.Height).Line(new(0, 0), new(paper.Width, paper.Height), Pens.Fine));
        Page page = pdf.GetPage(1);
        Assert.Equal(paper.Width * 72 / 25.4, page.Width, 0.5 * 72 / 600);
        Assert.Equal(paper.Height * 72 / 25.4, page.Height, 0.5 * 72 / 600);
        Assert.Equal(double.Hypot(paper.Width, paper.Height), PdfReader.Lines(page).Single().Length, Tolerance);
    }

    [Fact]
    public void A_landscape_page_has_its_long_side_level()
    {
        Packet packet = new(new("Bowl", "mm", new DateOnly(2026, 3, 14), "1"), PaperSize.A4.Landscape());
        packet.Add("Profile");
        using PdfDocument pdf = PdfReader.Document(packet.Pages());
        Assert.Equal(297, pdf.GetPage(1).Width * 25.4 / 72, 0.05);
        Assert.Equal(210, pdf.GetPage(1).Height * 25.4 / 72, 0.05);
    }

    [Fact]
    public void Every_font_is_embedded_and_text_is_read_back_intact()
    {
        byte[] bytes = PdfReader.Bytes(new SamplePacket(PaperSize.A4, SampleValues.Usual).Make().Pages());
        string raw = System.Text.Encoding.Latin1.GetString(bytes);
        Assert.Equal(2, Count(raw, "/FontFile2"));
        Assert.Equal(Count(raw, "/FontDescriptor "), Count(raw, "/FontFile2"));
        using PdfDocument pdf = PdfDocument.Open(bytes);
        Assert.All(pdf.GetPage(1).Letters, letter => Assert.Contains("Inter-", letter.FontName, StringComparison.Ordinal));
        string first = pdf.GetPage(1).Text, second = pdf.GetPage(2).Text;
        Assert.All(
            ["1 3⁄8", "14 5⁄16", "7.5°", "Read the manual of your saw first.", "Pen disc", "2026-03-14", "1 of 2"],
            text => Assert.Contains(text, first, StringComparison.Ordinal));
        Assert.All(["it must be exactly 100 mm.", "100 mm", "4 in", "15°"], text => Assert.Contains(text, second, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_drawing_makes_the_same_bytes()
    {
        byte[] Once() => PdfReader.Bytes(new SamplePacket(PaperSize.A4, SampleValues.Usual).Make().Pages());
        Assert.Equal(Once(), Once());
    }

    [Fact]
    public void The_document_says_its_title_and_date()
    {
        using PdfDocument pdf = PdfReader.Document(new Drawing(50, 50));
        Assert.Equal("Sample", pdf.Information.Title);
        Assert.Equal("Ringwright", pdf.Information.Creator);
        Assert.StartsWith("D:20260314", pdf.Information.CreationDate, StringComparison.Ordinal);
    }

    [Fact]
    public void Letters_have_the_height_they_are_asked_for()
    {
        using PdfDocument pdf = PdfReader.Document(new Drawing(50, 50).Text("H", new(10, 30), TypeScale.Figure));
        Assert.Equal(10, pdf.GetPage(1).Letters[0].BoundingBox.Height * 25.4 / 72, 0.05);
    }

    private static bool Close(double expected, double actual) => Math.Abs(expected - actual) < Tolerance;

    private static PaperSize Paper(string name) => name == "A4" ? PaperSize.A4 : PaperSize.Letter;

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    private static IReadOnlyList<ReadLine> TrueScaleLines(string paper, PrintCorrection correction)
    {
        using PdfDocument pdf = PdfReader.Document(
            new SamplePacket(Paper(paper), SampleValues.Usual, correction).Make().Pages());
        return PdfReader.Lines(pdf.GetPage(2));
    }

    // The ends of a ruler are the four ticks drawn with the medium pen; those to one side belong to millimetres, those to
    // the other to inches. Nothing else on the sheet is that short and that thick.
    private static double[] RulerLengths(IReadOnlyList<ReadLine> lines, Func<ReadLine, bool> across, Func<Vector2D, double> along)
    {
        double[] ends = [.. lines.Where(l => across(l) && l.Length is > 2.7 and < 2.9 && l.Width > 0.3).Select(l => along(l.From))];
        Assert.Equal(4, ends.Length);
        double zero = ends.Min();
        return [.. ends.Select(end => end - zero).Where(d => d > 1).Order()];
    }
}
