using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests.JobSheets;

public class StaveAndBandSheetTests
{
    private static readonly DateOnly Date = new(2026, 3, 14);

    private static readonly Gen<Ring> Staves =
        from n in Gen.Int[12, 60]
        from lean in Gen.OneOf(Gen.Const(0.0), Gen.Double[-60, 60])
        from height in Gen.Double[20, 200]
        from narrow in Gen.Double[60, 400]
        from wall in Gen.Double[2, 40]
        let cone = 2 * height * Math.Tan(double.DegreesToRadians(Math.Abs(lean)))
        select (Ring)new StaveRing
        {
            Name = "Staves",
            Segments = n,
            Lean = Angle.FromDegrees(lean),
            Thickness = AnyPlan.Mm(height),
            Diameter = AnyPlan.Mm(narrow + (2 * wall) + cone),
            InnerDiameter = AnyPlan.Mm(narrow),
            Woods = ["oak", "ash", "elm"],
        };

    private static readonly Gen<Ring> Bands =
        from n in Gen.Int[3, 60]
        from diameter in Gen.Double[40, 500]
        from recut in Gen.Double[-60, 60]
        from strips in Gen.Double[1, 30].Array[1, 12]
        from mirrored in Gen.Bool
        select (Ring)new LaminatedRing
        {
            Name = "Band",
            Segments = n,
            Diameter = AnyPlan.Mm(diameter),
            InnerDiameter = AnyPlan.Mm(0.7 * diameter),
            Thickness = AnyPlan.Mm(20),
            Recut = Angle.FromDegrees(recut),
            Mirrored = mirrored,
            Strips = [.. strips.Select((t, i) => new Strip($"wood {i % 5}", AnyPlan.Mm(t)))],
        };

    public static TheoryData<string> Pieces => ["stave-ring.json", "zigzag-band.json"];

    [Fact]
    public void Any_staves_and_any_band_lay_out_without_overlap_or_overflow() =>
        Gen.Select(Gen.OneOf(Staves, Bands), Gen.Bool, Gen.Enum<LengthUnit>()).Sample(
            (ring, letter, unit) => AssertLaidOut(Example.PlanOf(ring), MeasureStyle.For(unit), letter ? PaperSize.Letter : PaperSize.A4),
            iter: 30);

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_examples_are_planned_and_laid_out(string file)
    {
        Piece piece = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", file)));
        AssertLaidOut(Planner.Plan(piece, Shop.Starting), MeasureStyle.Millimetres, PaperSize.A4);
    }

    [Fact]
    public void Everything_the_plan_says_about_staves_is_on_the_sheets()
    {
        Plan plan = Planner.Plan(DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples/stave-ring.json"))), Shop.Starting);
        RingPlan ring = plan.Rings[0];
        string text = string.Join(' ', JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, Date).Pages().SelectMany(page => page.TextBoxes.Select(box => box.Text)));
        string[] figures = ["board-thickness", "stave-length", "blade-tilt", "mitre", "rule-offset", "stop", "end-tilt", "face-angle", "tilt-within", "angle-per-fence"];
        Assert.All(figures, name => Assert.Contains(MeasureStyle.Millimetres.Print(ring[name].Value, ring[name].Quantity), text, StringComparison.Ordinal));
        Assert.All(ring.Steps, step => Assert.Contains(step.In(MeasureStyle.Millimetres), text, StringComparison.Ordinal));
    }

    private static void AssertLaidOut(Plan plan, MeasureStyle style, PaperSize paper)
    {
        Packet packet = JobSheet.Packet(plan, style, paper, Date);
        foreach ((Drawings.Drawing page, Sheet sheet) in packet.Pages().Zip(packet.Sheets))
        {
            LayoutChecks.AssertClean(page, sheet.Frame);
            LayoutChecks.AssertInside(page, sheet.Frame);
        }
    }
}
