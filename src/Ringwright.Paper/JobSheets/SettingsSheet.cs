using Ringwright.Core.Pieces;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet for setting up: fences, stop, how exact they must be, and what the plan found.</summary>
internal static class SettingsSheet
{
    private const double FenceShare = 1.6; // of the width, against 1 for the board at the blade
    private const double Headings = 28;    // heading above and caption below a picture, mm
    private const double LeastPicture = 66, MostPicture = 130;

    public static void Add(Packet packet, RingJob job)
    {
        Columns tables = new(new Section("Set", Settings(job)), new Section("How exact", Accuracy(job)));
        IBlock[] findings = job.Wedge > 1 ? [] : [new Section("Know before you saw", new ListBlock(ListMark.Dot, [.. Findings(job)], RingJob.Words))];
        double shared = job.Width - Columns.Gutter, fenceWidth = shared * FenceShare / (1 + FenceShare);
        double tall = Math.Clamp(job.Beside([tables, .. findings]) - Headings, LeastPicture, MostPicture);
        ScaledPicture fences = FencePicture.Draw(job.Ring, job.Shop.Sled, job.Style, new(fenceWidth, tall));
        ScaledPicture stop = StopPicture.Draw(job.Ring, job.Style, new(shared - fenceWidth, tall));
        packet.Flow(job.SheetName("settings"), fences.Scale.ToString(), [
            new Columns(
                (FenceShare, new Section($"{Fences(job)} from above, {fences.Scale}", new Picture(fences.Drawing, Caption(job)))),
                (1, new Section($"Board at the blade, {stop.Scale}", new Picture(stop.Drawing, "heavy: the wedge that falls")))),
            tables,
            .. findings,
        ]);
    }

    public static string Fences(RingJob job) => job.Shop.Sled.Kind switch
    {
        SledKind.TwoFences => "Both fences",
        SledKind.OneFence => "The fence",
        _ => "The sander's fence",
    };

    private static string Caption(RingJob job) => job.Shop.Sled.Kind switch
    {
        SledKind.TwoFences => "The rule reads the offset from the square line, measured from the pivot. Only the sum of both angles must be right. Their distance from each other is not to scale.",
        SledKind.OneFence => "The rule reads the offset from the square line, measured from the pivot. The board is turned over between cuts, so an error of the fence counts twice in every wedge.",
        _ => "The rule reads the offset from the square line, measured from the pivot. The rim edge lies at the fence. The saw's fence is set to the same angle, to the other side of square.",
    };

    private static Table Settings(RingJob job) => Values(job, "Setting", "Value", [
        ("Rip width", "board-width"),
        ("Thickness", "board-thickness"),
        ("Mitre, from square", "mitre"),
        ($"Offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}", "rule-offset"),
        ($"Height under a sine bar of {job.Length(job.Shop.Sled.SineBar.Millimetres)}", "sine-bar-height"),
        ("Stop, along the fence", "stop"),
    ]);

    private static Table Accuracy(RingJob job) => Values(job, For(job), "Within", [
        ("All wedges together", "closing-limit"),
        ("Each wedge", "angle-per-wedge"),
        ("Each fence", "angle-per-fence"),
        ("Reading of the rule", "rule-accuracy"),
    ]);

    public static string For(RingJob job) => job.Ring.Ring is OpenRing
        ? $"For gaps that differ by at most {job.Print("gap-difference")} at the rim"
        : $"For a joint gap of at most {job.Fine(job.Shop.Wanted.JointGap.Millimetres)}";

    public static Table Values(RingJob job, string what, string value, IEnumerable<(string Label, string Figure)> rows) =>
        new([new(what), new(value, ColumnKind.Numbers)], [.. rows.Select(row => new[] { row.Label, job.Print(row.Figure) })]);

    public static IEnumerable<string> Findings(RingJob job) => job.Ring.Findings.Select(f => f.Sentence.In(job.Style));
}
