using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Sheets;
using Ringwright.Paper.Tests.Pictures;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>The first sheets of a piece: the whole.</summary>
public class PieceSheetTests
{
    private const string Name = "The whole piece";

    [Fact]
    public void Sixty_rings_of_the_longest_values_take_several_sheets_that_lay_out()
    {
        Plan plan = AnyPiece.Stack(60, 1234.5678, 23.4567, LengthUnit.Inch, new('W', 50));
        foreach (MeasureStyle style in new[] { MeasureStyle.Millimetres, MeasureStyle.InchFractions, MeasureStyle.InchDecimals })
            foreach (PaperSize paper in new[] { PaperSize.A4, PaperSize.Letter })
                Assert.InRange(Checked(plan, style, paper), 3, 5);
    }

    [Theory]
    [InlineData(PieceKind.PenBarrel, 13, 57, 5)]
    [InlineData(PieceKind.Platter, 700, 90, 3)]
    [InlineData(PieceKind.Vase, 120, 220, 11)]
    [InlineData(PieceKind.Disc, 40, 12, 1)]
    public void Every_kind_lays_out_on_either_paper_and_in_either_unit(PieceKind kind, double diameter, double height, int rings)
    {
        foreach (LengthUnit unit in Enum.GetValues<LengthUnit>())
            foreach (PaperSize paper in new[] { PaperSize.A4, PaperSize.Letter })
                Assert.InRange(Checked(AnyPiece.Of(kind, diameter, height, rings, 12, 9, unit, true)!, MeasureStyle.For(unit), paper), 1, 3);
    }

    [Fact]
    public void Any_piece_lays_out() => AnyPiece.Plans.Sample(
        plan =>
        {
            if (plan is not null) Checked(plan, MeasureStyle.For(plan.Piece.Units), PaperSize.A4);
        },
        iter: 25);

    [Fact]
    public void It_says_what_the_plan_says()
    {
        Plan plan = AnyPiece.Of(PieceKind.Bowl, 180, 80, 5, 24, 2, LengthUnit.Millimetre, false)!;
        Packet packet = JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, new(2026, 3, 14));
        Assert.Equal(Name, packet.Sheets[0].Name);
        string text = string.Join(' ', packet.Sheets.Where(s => s.Name == Name).SelectMany(s => s.Drawing.TextBoxes).Select(t => t.Text));
        Assert.Contains($"Bowl of {plan.Rings.Length} rings, {plan.Rings.Sum(r => r.Layout.Length)} pieces of wood", text, StringComparison.Ordinal);
        Assert.All(plan.Figures, figure => Assert.Contains(figure.Label, text, StringComparison.Ordinal));
        Assert.All(plan.Rings, ring => Assert.Contains(MeasureStyle.Millimetres.Length(ring["board-width"].Value), text, StringComparison.Ordinal));
        Assert.All(plan.Rings.SelectMany(r => r.Layout).CountBy(s => s.Wood), wood => Assert.Contains($"{wood.Key}, {wood.Value} pieces", text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_single_ring_without_a_shape_has_none() =>
        Assert.DoesNotContain(JobSheet.Packet(Example.PlanOf(Example.Disc), MeasureStyle.Millimetres, PaperSize.A4, new(2026, 3, 14)).Sheets, s => s.Name == Name);

    // The number of sheets, each checked.
    private static int Checked(Plan plan, MeasureStyle style, PaperSize paper)
    {
        Packet packet = new(new("Piece", RingWords.Units(style), new(2026, 3, 14), "1"), paper);
        PieceSheet.Keep(packet, plan, style, Contents.None);
        foreach (Sheet sheet in packet.Sheets)
        {
            LayoutChecks.AssertClean(sheet.Drawing, sheet.Frame);
            LayoutChecks.AssertInside(sheet.Drawing, sheet.Frame);
        }

        return packet.Sheets.Count;
    }
}
