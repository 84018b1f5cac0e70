using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Pictures.Gluing;
using Ringwright.Paper.Sheets;
using Ringwright.Paper.Tests.Pictures;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>The sheets for milling, gluing and stacking.</summary>
public class GlueSheetTests
{
    private static readonly DateOnly Date = new(2026, 3, 14);

    [Fact]
    public void Sixty_rings_of_the_longest_values_lay_out()
    {
        Plan plan = AnyPiece.Stack(60, 1234.5678, 23.4567, LengthUnit.Inch, new('W', 50));
        foreach (MeasureStyle style in new[] { MeasureStyle.Millimetres, MeasureStyle.InchFractions, MeasureStyle.InchDecimals })
            foreach (PaperSize paper in new[] { PaperSize.A4, PaperSize.Letter }) Checked(plan, style, paper);
    }

    [Theory]
    [InlineData(PieceKind.PenBarrel, 13, 57, 5)]
    [InlineData(PieceKind.Platter, 700, 90, 3)]
    [InlineData(PieceKind.Vase, 120, 320, 16)]
    public void Every_kind_lays_out_on_either_paper_and_in_either_unit(PieceKind kind, double diameter, double height, int rings)
    {
        foreach (LengthUnit unit in Enum.GetValues<LengthUnit>())
            foreach (PaperSize paper in new[] { PaperSize.A4, PaperSize.Letter }) Checked(AnyPiece.Of(kind, diameter, height, rings, 12, 9, unit, true)!, MeasureStyle.For(unit), paper);
    }

    [Fact]
    public void Any_ring_lays_out() => AnyPlan.Plans.Sample(plan => Checked(plan, MeasureStyle.For(plan.Piece.Units), PaperSize.A4), iter: 25);

    // Found by the fuzz: its pictures took thousands of sheets.
    [Fact]
    public void Thousands_of_glue_ups_are_told_in_a_sentence()
    {
        LaminatedRing thin = new()
        {
            Name = "Band",
            Segments = 8,
            Diameter = AnyPlan.Mm(282.3),
            InnerDiameter = AnyPlan.Mm(27.8),
            Thickness = AnyPlan.Mm(60),
            Strips = [new("holly", AnyPlan.Mm(0.3))],
            Recut = Angle.FromDegrees(37.77),
            Mirrored = true,
        };
        var schedule = GlueSchedule.Quick(GluePlan.Of(Planner.Plan(new() { Name = "Band", Rings = [thin] }, Shop.Starting with { Adhesive = Shop.Starting.Adhesive with { OpenTime = Duration.Parse("3 min") } })));
        Assert.True(schedule.Tasks.Length > 1000, $"only {schedule.Tasks.Length} tasks");
        Packet packet = new(new("Piece", RingWords.Units(MeasureStyle.Millimetres), Date, "1"), PaperSize.A4);
        GlueSheet.Add(packet, schedule, MeasureStyle.Millimetres);
        Assert.InRange(packet.Sheets.Count, 2, 4);
        Assert.Contains(packet.Sheets.SelectMany(s => s.Drawing.TextBoxes), t => t.Text.StartsWith($"{schedule.Tasks.Length} glue-ups", StringComparison.Ordinal));
        Assert.Contains(SchedulePage.Of(schedule, MeasureStyle.Millimetres).TextBoxes, t => t.Text.StartsWith($"{schedule.Tasks.Length} glue-ups", StringComparison.Ordinal));
    }

    [Fact]
    public void Days_in_the_shop_lay_out()
    {
        Plan plan = AnyPiece.Stack(12, 120, 20, LengthUnit.Millimetre);
        Checked(plan with { Shop = plan.Shop with { Gluing = plan.Shop.Gluing with { Session = Duration.Parse("1 h") } } }, MeasureStyle.Millimetres, PaperSize.A4);
    }

    [Fact]
    public void The_packet_has_milling_before_the_rings_and_gluing_behind_them()
    {
        Plan plan = AnyPiece.Of(PieceKind.Bowl, 180, 80, 5, 24, 2, LengthUnit.Millimetre, false)!;
        string[] names = [.. JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, Date).Sheets.Select(s => s.Name).Distinct()];
        Assert.Equal(["The whole piece", "Take care", "Milling"], names[..3]);
        Assert.Equal(["Gluing", "Gluing times", "Stacking"], names.SkipWhile(n => n != "Gluing").Take(3));
    }

    [Fact]
    public void The_stacking_chart_says_every_joint()
    {
        Plan plan = AnyPiece.Of(PieceKind.Bowl, 180, 80, 5, 24, 2, LengthUnit.Millimetre, false)!;
        var glue = GluePlan.Of(plan);
        string text = string.Join(' ', JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, Date).Sheets.Where(s => s.Name == "Stacking").SelectMany(s => s.Drawing.TextBoxes).Select(t => t.Text));
        Assert.All(glue.Stack.Where(s => s.Turn is not null), s => Assert.Contains(MeasureStyle.Millimetres.Print(s.Turn!.Value, Quantity.Angle), text, StringComparison.Ordinal));
        Assert.All(glue.Stack.Where(s => s.Circle > 0), s => Assert.Contains(MeasureStyle.Millimetres.Length(s.Circle), text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_picture_of_the_schedule_stands_by_itself()
    {
        var schedule = GlueSchedule.Quick(GluePlan.Of(AnyPiece.Stack(5, 120, 20, LengthUnit.Millimetre)));
        Drawing page = SchedulePage.Of(schedule, MeasureStyle.Millimetres);
        LayoutChecks.AssertClean(page, new(0, 0, page.Width, page.Height));
        LayoutChecks.AssertInside(page, new(0, 0, page.Width, page.Height));
    }

    private static void Checked(Plan plan, MeasureStyle style, PaperSize paper)
    {
        Packet packet = new(new("Piece", RingWords.Units(style), Date, "1"), paper);
        var milling = MillingPlan.Of(plan);
        if (MillingSheet.IsFor(milling)) MillingSheet.Add(packet, milling, style);
        var glue = GluePlan.Of(plan);
        if (glue.HasWork) GlueSheet.Add(packet, GlueSchedule.Quick(glue), style);
        if (!glue.Stack.IsEmpty) StackingSheet.Add(packet, glue, style);
        foreach (Sheet sheet in packet.Sheets)
        {
            LayoutChecks.AssertClean(sheet.Drawing, sheet.Frame);
            LayoutChecks.AssertInside(sheet.Drawing, sheet.Frame);
        }
    }
}
