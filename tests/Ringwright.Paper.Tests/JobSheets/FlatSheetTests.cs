using CsCheck;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Output;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>Plain layers and rings out of a board.</summary>
public class FlatSheetTests
{
    private static readonly Gen<Plan?> Plans =
        from rings in Gen.Int[1, 7]
        from height in Gen.Double[4, 60]
        from foot in Gen.Double[30, 500]
        from slope in Gen.Double[0.1, 1]
        from wall in Gen.Double[2, 12]
        from segments in Gen.Int[3, 200]
        from thin in Gen.Double[0.2, 6]
        from width in Gen.Double[30, 300]
        from inch in Gen.Bool
        from turned in Gen.Double[0, 1]
        select PlanOf(rings, height, foot, slope * height, wall, segments, thin, width, inch, turned);

    [Fact]
    public void Any_layer_and_any_board_lay_out_without_overlap_or_overflow() =>
        Plans.Sample(
            plan =>
            {
                if (plan is null) return;
                Packet packet = JobSheet.Packet(plan, MeasureStyle.For(plan.Piece.Units), PaperSize.A4, new(2026, 3, 14));
                foreach ((Drawing page, Sheet sheet) in packet.Pages().Zip(packet.Sheets))
                {
                    LayoutChecks.AssertClean(page, sheet.Frame);
                    LayoutChecks.AssertInside(page, sheet.Frame);
                }
            },
            iter: 40);

    [Fact]
    public void Enough_of_the_random_boards_can_be_made()
    {
        int made = 0;
        Plans.Sample(plan => { made += plan is null ? 0 : 1; }, iter: 40);
        Assert.InRange(made, 15, 40);
    }

    [Fact]
    public void A_layer_takes_two_sheets_and_a_board_two_beside_those_of_its_wedges()
    {
        Plan plan = PlanOf(3, 20, 40, 16, 10, 12, 0.6, 200, false, 0.1)!;
        Packet packet = JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, new(2026, 3, 14));
        Assert.Equal(2, packet.Sheets.Count(s => s.Name.StartsWith("Foot:", StringComparison.Ordinal)));
        Assert.Equal(1, packet.Sheets.Count(s => s.Name == "Ring 2: cuts and stack"));
        Assert.DoesNotContain(packet.Sheets, s => s.Name.StartsWith("Ring 0:", StringComparison.Ordinal));
        string text = string.Join('\n', packet.Sheets.SelectMany(s => s.Drawing.TextBoxes).Select(t => t.Text));
        Assert.All(Cautions.ForVeneer.Take(1), c => Assert.Contains(c[..40], text, StringComparison.Ordinal));
        Assert.Contains(MeasureStyle.Millimetres.Print(plan.Rings[^1]["tilt"].Value, Quantity.Angle), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_ring_has_its_picture_from_above() =>
        Assert.All(PlanOf(3, 20, 40, 16, 10, 12, 6, 50, false, 0.1)!.Rings, ring =>
            Assert.NotEmpty(SvgWriter.Write(RingPicture.Draw(ring, MeasureStyle.Millimetres, new(160, 180), coloured: true).Drawing, "from above")));

    private static Plan? PlanOf(int rings, double height, double foot, double step, double wall, int segments, double thin, double width, bool inch, double turned)
    {
        IEnumerable<Ring> bowl = Enumerable.Range(0, rings).Select(i => new BoardRing
        {
            Name = $"Ring {i}",
            Segments = segments,
            Diameter = AnyPlan.Mm(2 * (foot + ((i + 1) * step))),
            InnerDiameter = AnyPlan.Mm(2 * (foot + (i * step) - wall)),
            Thickness = AnyPlan.Mm(height),
            Shift = i % 2 / 2.0,
            Woods = ["maple", "padauk"],
            Board = "Board A",
        });
        SolidLayer layer = new() { Name = "Foot", Diameter = AnyPlan.Mm(2 * foot), Thickness = AnyPlan.Mm(thin), Shift = turned, Wood = "oak" };
        Shop shop = Shop.Starting with { Boards = new() { Length = AnyPlan.Mm(4000), Width = AnyPlan.Mm(width) } };
        try
        {
            return Planner.Plan(new() { Name = "Bowl", Units = inch ? LengthUnit.Inch : LengthUnit.Millimetre, Rings = [layer, .. bowl] }, shop);
        }
        catch (BadInputException)
        {
            return null;
        }
    }
}
