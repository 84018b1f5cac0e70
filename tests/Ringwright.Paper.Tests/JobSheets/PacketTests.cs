using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Sheets;
using Ringwright.Paper.Tests.Pictures;
using UglyToad.PdfPig;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>What holds the sheets together: contents, duplex, choice of sheets, cautions and record.</summary>
public class PacketTests
{
    private static readonly PacketOptions Usual = new(MeasureStyle.Millimetres, PaperSize.A4, new(2026, 3, 14));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void The_cover_says_on_which_page_every_part_begins(bool duplex)
    {
        Plan plan = AnyPiece.Stack(9, 200, 20, LengthUnit.Millimetre, "Course");
        Packet packet = JobSheet.Packet(plan, Usual with { Duplex = duplex });
        string[] names = [.. packet.Sheets.Select(s => s.Name)];
        string cover = string.Join('\n', packet.Sheets.Where(s => s.Name == "The whole piece").SelectMany(s => s.Drawing.TextBoxes).Select(t => t.Text));
        foreach (RingPlan ring in plan.Rings)
        {
            int page = Array.FindIndex(names, n => n.StartsWith($"{ring.Ring.Name}: ", StringComparison.Ordinal)) + 1;
            Assert.Contains($"\n{page.ToString(CultureInfo.InvariantCulture)}", cover, StringComparison.Ordinal);
            if (duplex) Assert.Equal(1, page % 2);
        }

        cover = cover.Replace('\n', ' '); // the line of other parts may be broken
        Assert.Contains($"Record, page {Array.IndexOf(names, "Record") + 1}", cover, StringComparison.Ordinal);
        Assert.Contains($"Take care, page {Array.IndexOf(names, "Take care") + 1}", cover, StringComparison.Ordinal);
    }

    [Fact]
    public void On_both_sides_the_margin_for_filing_changes_sides_and_nothing_leaves_the_frame()
    {
        Packet packet = JobSheet.Packet(AnyPiece.Stack(3, 200, 20, LengthUnit.Inch), Usual with { Duplex = true, Paper = PaperSize.Letter, Style = MeasureStyle.InchFractions });
        foreach ((Sheet sheet, int index) in packet.Sheets.Select((s, i) => (s, i)))
        {
            Assert.Equal(index % 2 == 0 ? 20 : 10, sheet.Frame.X, 1e-9);
            LayoutChecks.AssertInside(packet.Pages()[index], sheet.Frame);
            LayoutChecks.AssertClean(packet.Pages()[index], sheet.Frame);
        }
    }

    [Fact]
    public void A_correction_stretches_the_rulers_on_either_side_of_the_paper()
    {
        Plan plan = AnyPiece.Stack(2, 60, 20, LengthUnit.Millimetre);
        using PdfDocument pdf = PdfReader.Document(JobSheet.Packet(plan, Usual with { Duplex = true, Correction = new(1.004, 0.997) }).Pages());
        int found = 0;
        for (int p = 1; p <= pdf.NumberOfPages; p++)
        {
            IReadOnlyList<ReadLine> lines = PdfReader.Lines(pdf.GetPage(p));
            if (!lines.Any(l => l.IsLevel && Math.Abs(l.Length - (101.6 * 1.004)) < 0.01)) continue;
            Assert.Contains(lines, l => l.IsUpright && Math.Abs(l.Length - (101.6 * 0.997)) < 0.01);
            found++;
        }

        Assert.Equal(2, found); // a true-scale sheet for each ring
    }

    // In the shop: a ring of 220 mm is seen from a step away, and no sheet holds a few lines only.
    [Theory]
    [InlineData("feature-bowl")]
    [InlineData("open-vase")]
    public void Each_ring_of_an_example_is_drawn_a_fifth_as_large_or_larger_and_the_orders_of_work_stand_together(string example)
    {
        Plan plan = Planner.Plan(DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", $"{example}.json"))), Shop.Starting);
        Packet packet = JobSheet.Packet(plan, Usual);
        Sheet[] rings = [.. packet.Sheets.Where(s => s.Name.EndsWith(": job sheet", StringComparison.Ordinal))];
        Assert.Equal(plan.Rings.Length, rings.Length);
        Assert.All(rings, s => Assert.Contains(s.Scale, new[] { "1:1", "1:2", "1:5" }));
        string orders = string.Join('\n', packet.Sheets.Where(s => s.Name == "Order of work by ring").SelectMany(s => s.Drawing.TextBoxes).Select(t => t.Text));
        RingPlan[] told = [.. plan.Rings.Where(r => r.Ring is OpenRing || !r.Spacers.IsEmpty)];
        Assert.NotEmpty(told);
        Assert.All(told, r => Assert.Contains($"\n{r.Ring.Name}\n", orders, StringComparison.Ordinal));
        string SheetOf(RingPlan ring) => string.Join(' ', rings.Single(s => s.Name == $"{ring.Ring.Name}: job sheet").Drawing.TextBoxes.Select(t => t.Text));
        Assert.All(told, r => Assert.Contains("in which order: “Order of work by ring”", SheetOf(r), StringComparison.Ordinal));
        Assert.All(plan.Rings, r => Assert.Equal(!r.Findings.IsEmpty, SheetOf(r).Contains("good to know: “For every ring”", StringComparison.Ordinal)));
        Assert.DoesNotContain(packet.Sheets, s => s.Name.EndsWith(": order of work", StringComparison.Ordinal) && s.Name != "At the lathe: order of work");
    }

    [Theory]
    [InlineData("cover", new[] { "The whole piece" })]
    [InlineData("record, cautions", new[] { "Take care", "Record" })]
    [InlineData("Record", new[] { "Record" })]
    public void Only_the_sheets_asked_for_are_printed(string sheets, string[] names)
    {
        Packet packet = JobSheet.Packet(Example.PlanOf(Example.Open), Usual with { Sheets = PacketOptions.ReadSheets(sheets) });
        Assert.Equal(names, packet.Sheets.Select(s => s.Name));
    }

    [Fact]
    public void One_ring_s_sheets_come_by_themselves()
    {
        Packet packet = JobSheet.Packet(AnyPiece.Stack(3, 200, 20, LengthUnit.Millimetre), Usual with { Ring = "Ring 2" });
        Assert.All(packet.Sheets, sheet => Assert.StartsWith("Ring 2: ", sheet.Name, StringComparison.Ordinal));
        Assert.Equal(6, packet.Sheets.Count);
    }

    [Fact]
    public void Of_several_rings_each_has_one_sheet_and_what_holds_for_all_stands_once()
    {
        Plan plan = AnyPiece.Stack(6, 120, 20, LengthUnit.Millimetre);
        Packet packet = JobSheet.Packet(plan, Usual);
        foreach (RingPlan ring in plan.Rings)
            Assert.InRange(packet.Sheets.Count(s => s.Name.StartsWith($"{ring.Ring.Name}: ", StringComparison.Ordinal)), 1, 2);
        string all = Text(JobSheet.Packet(plan, Usual with { Sheets = PacketSheets.Rings }));
        foreach (string once in new[] { "Open at the rim", "Too far", "For every ring, in this order" })
            Assert.Single(packet.Sheets, sheet => sheet.Drawing.TextBoxes.Any(box => box.Text.Contains(once, StringComparison.Ordinal)));
        Assert.All(Cautions.For(plan.Shop.Sled.Kind), caution => Assert.Contains(caution, all, StringComparison.Ordinal));
        Assert.All(plan.Rings.SelectMany(r => r.Findings), f => Assert.Contains(f.Sentence.In(MeasureStyle.Millimetres), all, StringComparison.Ordinal));
    }

    [Fact]
    public void The_long_sheets_of_every_ring_can_be_had()
    {
        Packet packet = JobSheet.Packet(AnyPiece.Stack(3, 200, 20, LengthUnit.Millimetre), Usual with { Sheets = PacketOptions.ReadSheets("detailed") });
        Assert.Equal(18, packet.Sheets.Count);
    }

    [Theory]
    [InlineData("covers")]
    [InlineData("")]
    [InlineData("none")]
    [InlineData("3")]
    [InlineData("cover,,rings")]
    public void Sheets_that_are_not_known_are_refused(string sheets) =>
        Assert.Contains("cover", Assert.Throws<BadInputException>(() => PacketOptions.ReadSheets(sheets)).Right, StringComparison.Ordinal);

    [Fact]
    public void The_cautions_are_all_there()
    {
        Plan plan = AnyPiece.Stack(2, 200, 20, LengthUnit.Millimetre);
        string text = Text(JobSheet.Packet(plan, Usual with { Sheets = PacketSheets.Cautions }));
        Assert.All(Cautions.For(plan), caution => Assert.Contains(caution, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_record_has_a_blank_row_for_every_setting_of_the_fences()
    {
        Plan plan = AnyPiece.Stack(70, 200, 20, LengthUnit.Inch, new string('W', 50));
        Packet packet = JobSheet.Packet(plan, Usual with { Sheets = PacketSheets.Record, Style = MeasureStyle.InchFractions });
        Assert.InRange(packet.Sheets.Count, 9, 12);
        string text = Text(packet);
        foreach (string field in new[] { "wedges sawn", "of them lost", "cuts timed", "faces sanded", "minutes", "last gap", "from boards" })
            Assert.Contains(field, text, StringComparison.Ordinal);
        Assert.Equal(2 * plan.Rings.Sum(r => r.Batches.Length), packet.Sheets.SelectMany(s => s.Drawing.TextBoxes).Count(t => t.Text == "30°"));
        Assert.Contains("At the saw and the sander, continued", text, StringComparison.Ordinal);
        Assert.All(packet.Sheets, sheet => LayoutChecks.AssertClean(sheet.Drawing, sheet.Frame));
        Assert.All(packet.Sheets, sheet => LayoutChecks.AssertInside(sheet.Drawing, sheet.Frame));
    }

    private static string Text(Packet packet) => string.Join(' ', packet.Sheets.SelectMany(s => s.Drawing.TextBoxes).Select(t => t.Text));
}
