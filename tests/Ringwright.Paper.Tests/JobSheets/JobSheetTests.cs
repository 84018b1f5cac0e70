using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests.JobSheets;

public class JobSheetTests
{
    private static readonly DateOnly Date = new(2026, 3, 14);

    public static TheoryData<SledKind> Kinds => new(Enum.GetValues<SledKind>());

    [Fact]
    public void Any_ring_in_any_shop_lays_out_without_overlap_or_overflow() =>
        Gen.Select(AnyPlan.Plans, Gen.Bool).Sample(
            (plan, letter) =>
            {
                Packet packet = JobSheet.Packet(plan, MeasureStyle.For(plan.Piece.Units), letter ? PaperSize.Letter : PaperSize.A4, Date);
                foreach ((Drawing page, Sheet sheet) in packet.Pages().Zip(packet.Sheets))
                {
                    LayoutChecks.AssertClean(page, sheet.Frame);
                    LayoutChecks.AssertInside(page, sheet.Frame);
                }
            },
            iter: 40);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_examples_take_six_sheets_and_two_for_gluing_on_either_paper_and_in_either_unit(SledKind kind)
    {
        foreach (PaperSize paper in new[] { PaperSize.A4, PaperSize.Letter })
        {
            foreach (MeasureStyle style in new[] { MeasureStyle.Millimetres, MeasureStyle.InchFractions, MeasureStyle.InchDecimals })
            {
                Assert.Equal(8, JobSheet.Packet(Example.PlanOf(Example.Disc, kind), style, paper, Date).Sheets.Count);
                Assert.Equal(8, JobSheet.Packet(Example.PlanOf(Example.Open, kind), style, paper, Date).Sheets.Count);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Everything_the_plan_says_at_the_saw_is_on_the_sheets(SledKind kind)
    {
        Plan plan = Example.PlanOf(Example.Disc, kind);
        RingPlan ring = plan.Rings[0];
        string text = Text(JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, Date));
        Assert.All(ring.Steps, step => Assert.Contains(step.In(MeasureStyle.Millimetres), text, StringComparison.Ordinal));
        Assert.All(Cautions.For(kind), caution => Assert.Contains(caution, text, StringComparison.Ordinal));
        Assert.Contains(ring.Verdict.In(MeasureStyle.Millimetres), text, StringComparison.Ordinal);
        string[] figures = ["board-width", "board-thickness", "mitre", "rule-offset", "sine-bar-height", "stop", "angle-per-fence", "rule-accuracy"];
        Assert.All(figures, name => Assert.Contains(MeasureStyle.Millimetres.Print(ring[name].Value, ring[name].Quantity), text, StringComparison.Ordinal));
        Assert.Contains("12 × (A B)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gap_at_the_rim_is_answered_by_its_closed_form()
    {
        // 24 wedges of 9.5 mm apothem: R = 9.5 / cos 7.5°; 0.1 mm / R / 48 faces, in degrees, by hand calculator.
        string text = Text(JobSheet.Packet(Example.PlanOf(Example.Disc), MeasureStyle.Millimetres, PaperSize.A4, Date));
        Assert.Contains("A gap of 0.1 mm at the rim: each fence grows by 0.0125°.", text, StringComparison.Ordinal);
        Assert.Contains("+0.066 mm", text, StringComparison.Ordinal); // 300 mm · 0.000217 / cos² 7.5°
        Assert.Contains("−0.066 mm", text, StringComparison.Ordinal); // wedges to a point: a joint is as long as R
    }

    [Fact]
    public void The_same_plan_makes_the_same_bytes()
    {
        byte[] Once()
        {
            using MemoryStream stream = new();
            JobSheet.WritePdf(Example.PlanOf(Example.Open), MeasureStyle.InchFractions, PaperSize.Letter, Date, stream);
            return stream.ToArray();
        }

        Assert.Equal(Once(), Once());
    }

    [Theory]
    [InlineData(new[] { "oak" }, "12A")]
    [InlineData(new[] { "oak", "ash" }, "6 × (A B)")]
    [InlineData(new[] { "oak", "oak", "ash", "oak" }, "3 × (2A B A)")]
    [InlineData(new[] { "oak", "ash", "oak", "elm", "elm" }, "2 × (A B A 2C), then A B")]
    public void The_order_around_the_ring_draws_runs_and_repeats_together(string[] woods, string order)
    {
        Ring ring = Example.Disc with { Segments = 12, Woods = [.. woods] };
        Assert.Contains(order, Text(JobSheet.Packet(Example.PlanOf(ring), MeasureStyle.Millimetres, PaperSize.A4, Date)), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_ring_of_a_piece_has_its_sheets()
    {
        Plan plan = Planner.Plan(
            new() { Name = "Two", Rings = [Example.Disc, Example.Open] }, Shop.Starting with { Boards = new() { Length = AnyPlan.Mm(3000) } });
        string[] names = [.. JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, Date).Sheets.Select(s => s.Name)];
        Assert.Equal(["The whole piece", "Take care"], names.Distinct().Take(2));
        Assert.Equal("Record", names[^1]);
        string[] ofRings = [.. names.Where(n => plan.Rings.Any(r => n.StartsWith(r.Ring.Name + ": ", StringComparison.Ordinal)))];
        Assert.InRange(ofRings.Length, 2, 6);
        Assert.Equal(ofRings.Length, ofRings.Distinct().Count());
        Assert.Equal(["At the lathe", "At the lathe: order of work", "Time and cost"], names[^4..^1]);
    }

    // The lines of the pages run together, so that broken sentences are whole again.
    private static string Text(Packet packet) =>
        string.Join(' ', packet.Pages().SelectMany(page => page.TextBoxes.Select(box => box.Text)));
}
