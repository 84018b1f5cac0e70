using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet at the saw before the first cut: fences, stop, how exact, and what a good test cut looks like.</summary>
internal static class SettingsSheet
{
    private const double FenceShare = 1.6; // of the width, against 1 for the board at the blade
    private const double Tall = 78;        // of the pictures, mm
    private const double CutTall = 46;     // of a test cut, mm
    private static readonly string[] CutNames = ["Too far", "Right", "Not far enough"];

    public static void Add(Packet packet, RingJob job)
    {
        double shared = job.Width - 8, fenceWidth = shared * FenceShare / (1 + FenceShare);
        ScaledPicture fences = FencePicture.Draw(job.Ring, job.Shop.Sled, job.Style, new(fenceWidth, Tall));
        ScaledPicture stop = StopPicture.Draw(job.Ring, job.Style, new(shared - fenceWidth, Tall));
        packet.Flow(job.SheetName("settings"), fences.Scale.ToString(), [
            new Columns(
                (FenceShare, new Section($"{Fences(job)} from above, {fences.Scale}", new Picture(fences.Drawing, Caption(job)))),
                (1, new Section($"Board at the blade, {stop.Scale}", new Picture(stop.Drawing, "heavy: the wedge that falls; the marked face is up")))),
            new Columns(new Section("Set", Settings(job)), new Section("How exact", Accuracy(job))),
            TestCuts(job),
        ]);
    }

    private static string Fences(RingJob job) => job.Shop.Sled.Kind switch
    {
        SledKind.TwoFences => "Both fences",
        SledKind.OneFence => "The fence",
        _ => "The sander's fence",
    };

    private static string Caption(RingJob job) => job.Shop.Sled.Kind switch
    {
        SledKind.TwoFences => "Only the sum of both angles must be right. How far the fences stand apart is not to scale.",
        SledKind.OneFence => "The board is turned over between cuts, so an error of the fence counts twice in every wedge.",
        _ => "The saw's fence is set to the same angle, from the other side of square. Rim edge of the wedge to the fence.",
    };

    private static Table Settings(RingJob job) => Values(job, [
        ("Rip width", "board-width"),
        ("Thickness", "board-thickness"),
        ("Mitre, from square", "mitre"),
        ($"Offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}", "rule-offset"),
        ($"Height under a sine bar of {job.Length(job.Shop.Sled.SineBar.Millimetres)}", "sine-bar-height"),
        ("Stop, along the fence", "stop"),
    ]);

    private static Table Accuracy(RingJob job) => Values(job, [
        ("All wedges together within", "closing-limit"),
        ("Each wedge within", "angle-per-wedge"),
        ("Each face (fence) within", "angle-per-fence"),
        ("Read the rule to within", "rule-accuracy"),
    ]);

    private static Table Values(RingJob job, IEnumerable<(string Label, string Figure)> rows) =>
        new([new(""), new("", ColumnKind.Numbers)], [.. rows.Select(row => new[] { row.Label, job.Print(row.Figure) })]);

    private static Section TestCuts(RingJob job)
    {
        ImmutableArray<TestCut> cuts = TestCutPicture.Of(job.Ring);
        if (cuts.IsEmpty)
            return new Section("The first test cut", new Paragraph("The wedges are too small for a picture of a test cut: judge it under a lens."));
        (DrawingScale scale, ImmutableArray<Drawing> pictures) = TestCutPicture.Draw(cuts, new((job.Width - 16) / 3, CutTall));
        return new Section($"The first test cut, {scale}", new Columns([.. cuts.Select((cut, i) => Cut(job, cut, pictures[i], pictures.Max(p => p.Height)))]));
    }

    private static Column Cut(RingJob job, TestCut cut, Drawing picture, double height)
    {
        Drawing level = new Drawing(picture.Width, height).Place(picture, new(0, height - picture.Height));
        return new Column(
            3,
            new Picture(level),
            new Paragraph(CutNames[(int)cut.Setting], TypeScale.Body with { Weight = FontWeight.SemiBold }),
            new Paragraph(TestCutPicture.InWords(cut).In(job.Style)));
    }
}
