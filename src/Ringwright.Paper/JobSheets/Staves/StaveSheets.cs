using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheets of a ring of staves.</summary>
internal static class StaveSheets
{
    private const double Headings = 28; // heading above and caption below a picture, mm
    private const double LeastPicture = 70, MostPicture = 120;

    public static void Add(Packet packet, RingJob job)
    {
        Overview(packet, job);
        Settings(packet, job);
        Cutting(packet, job);
        StepsSheet.Add(packet, job);
        TrueScale(packet, job);
        StaveFitSheet.Add(packet, job);
    }

    private static void Overview(Packet packet, RingJob job)
    {
        Column head = new(3, new Paragraph(RingDescription.Of(job.Ring.Ring).In(job.Style), TypeScale.Title with { Fractions = true }), new Paragraph(job.Ring.Verdict.In(job.Style), RingJob.Words));
        Section figures = new("To set and to saw", new KeyFigures(job.Style.Unit == LengthUnit.Millimetre ? 4 : 3, [.. Figures(job)]));
        double half = (job.Width - Columns.Gutter) / 2;
        double tall = Math.Clamp(job.Beside(head, figures, new WoodLegend(job.Key)) - Headings, LeastPicture, MostPicture);
        ScaledPicture ring = RingPicture.Draw(job.Ring, job.Style, new(half, tall)), section = StaveSectionPicture.Draw(job.Ring, job.Style, new(half, tall));
        packet.Flow(job.SheetName("overview"), ring.Scale.ToString(), [
            head,
            new Columns(
                new Section($"From above, {ring.Scale}", new Column(4, new Picture(ring.Drawing), new WoodLegend(job.Key, RingPicture.IsShaded(job.Ring, ring.Scale.Ratio)))),
                new Section($"Cut through a stave, {section.Scale}", new Picture(section.Drawing, "Heavy: the stave, before its ends are flattened. Dashed: the turned wall, taken to lean with it."))),
            figures,
        ]);
    }

    private static IEnumerable<KeyFigure> Figures(RingJob job)
    {
        (string Caption, string Name)[] all =
        [
            ("Plane to a thickness of", "board-thickness"), ("Stave along the grain", "stave-length"), ("Tilt of the blade", "blade-tilt"),
            ("Mitre of the fence", "mitre"), ($"Fence offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}", "rule-offset"),
            (job.Ring.Stave is { IsUpright: true } ? "Rip fence, from the blade" : "Stop, from the blade", "stop"), ("Tilt for the ends", "end-tilt"),
        ];
        return [.. all.Where(f => job.Ring.Find(f.Name) is not null).Select(f => Reading.Of(f.Caption, job.Ring[f.Name], job.Style)), .. OverviewSheet.Wedges(job, "Staves")];
    }

    private static void Settings(Packet packet, RingJob job)
    {
        Columns tables = new(new Section("Set", Known(job, "Setting", "Value", Set(job))), new Section("How exact", Known(job, $"For a joint gap of at most {job.Fine(job.Shop.Wanted.JointGap.Millimetres)}", "Within", HowExact)));
        Section findings = new("Know before you saw", new ListBlock(ListMark.Dot, [.. SettingsSheet.Findings(job)], RingJob.Words));
        double half = (job.Width - Columns.Gutter) / 2, tall = Math.Clamp(job.Beside(tables, findings) - Headings, LeastPicture, MostPicture);
        ScaledPicture face = StaveFacePicture.Draw(job.Ring, job.Style, new(half, tall));
        Section stave = new($"One stave as sawn, {face.Scale}", new Picture(face.Drawing, "Heavy: its outside, the grain running down, and its wider end. Dashed: edges of its inside."));
        packet.Flow(job.SheetName("settings"), face.Scale.ToString(), [Beside(job, stave, new(half, tall)), tables, findings]);
    }

    // Leaning staves need a fence at its mitre; upright ones are ripped.
    private static IBlock Beside(RingJob job, Section stave, Room room)
    {
        if (job.Ring.Find("mitre") is null) return stave;
        ScaledPicture fence = FencePicture.Draw(job.Ring, job.Shop.Sled with { Kind = SledKind.OneFence }, job.Style, room);
        return new Columns(
            new Section($"The fence from above, {fence.Scale}", new Picture(fence.Drawing, "The rule reads the offset from the square line, measured from the pivot. The blade is tilted; the panel is turned over end for end between cuts.")),
            stave);
    }

    private static (string, string)[] Set(RingJob job) =>
    [
        ("Thickness", "board-thickness"), ("Stave, along the grain", "stave-length"), ("Tilt of the blade, from square", "blade-tilt"),
        ($"Height under a sine bar of {job.Length(job.Shop.Sled.SineBar.Millimetres)}, for the tilt", "tilt-height"),
        ("Mitre, from square", "mitre"), ($"Offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}", "rule-offset"), ("Height under the sine bar, for the mitre", "sine-bar-height"),
        ("Tilt for the ends of the panels", "end-tilt"), (job.Ring.Stave is { IsUpright: true } ? "Rip fence, on the upper face" : "Stop, on the upper face", "stop"), ("Between outer faces", "face-angle"),
    ];

    private static readonly (string, string)[] HowExact =
    [
        ("All staves together", "closing-limit"), ("Tilt of the blade", "tilt-within"), ("Mitre of the fence", "angle-per-fence"), ("Reading of the rule", "rule-accuracy"),
    ];

    private static Table Known(RingJob job, string what, string value, (string Label, string Figure)[] rows) =>
        SettingsSheet.Values(job, what, value, rows.Where(r => job.Ring.Find(r.Figure) is not null));

    private static void Cutting(Packet packet, RingJob job)
    {
        bool upright = job.Ring.Stave is { IsUpright: true };
        double width = job.Ring["staves-across"].Why.Inputs.Single(i => i.Symbol == "Wb").Value;
        int across = (int)job.Ring["staves-across"].Value, staves = Math.Min(across, job.Ring.Woods.Max(w => w.ToSaw));
        ScaledPicture strip = StripPicture.Draw(job.Ring, job.Style, width, staves, job.Width);
        string seen = upright ? "The board seen from its end: outside up and down in turn." : "A panel half way through its thickness, the grain upright: staves lie head to tail, their outside up and down in turn.";
        string heading = string.Create(CultureInfo.InvariantCulture, $"{staves} {(staves == 1 ? "stave" : "staves")} across a board of {job.Length(width)}, {strip.Scale}");
        packet.Flow(job.SheetName("board and cuts"), strip.Scale.ToString(), [
            new Section(heading, new Picture(strip.Drawing, $"{seen} Hatched: edge and first offcut. Grey: kerf.")),
            new Section("Along the board", new Paragraph($"{job.Print("rows-per-board")} {(upright ? "staves from each strip" : "panels from each board")} of {job.Length(job.Shop.Boards.Length.Millimetres)}, {job.Print("row-length")} for each, saw cut included.")),
            CuttingSheet.Woods(job),
            new Section("Around the ring, counter-clockwise", new Paragraph(RingWords.Order(job.Ring, job.Key))),
        ]);
    }

    private static void TrueScale(Packet packet, RingJob job)
    {
        Sheet sheet = packet.Add(job.SheetName("true scale"), "1:1").Add(new Paragraph(
            "Two neighbours cut square across their joint, the outside up. Set the bevel gauge on the outer faces, and hold the first dry pair on the lines: the joint must stay shut."));
        sheet.AddTrueScale(StaveJointPicture.Draw(job.Ring, job.Style, sheet.TrueScaleRoom));
    }
}
