using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>
/// The one sheet of a ring among others: what to set and to saw in large figures with how exact it must be, the ring, its wedge at
/// true scale, fence, stop and strip, and what to know. What holds for every ring stands once, on the sheets for all.
/// </summary>
internal static class RingSheet
{
    private const double Gap = 5;          // between rows, mm
    private const double Headings = 9;     // heading above a picture, mm
    private const double Caption = 9;      // sizes in words below a picture, mm
    private const double LeastRing = 46, MostRing = 92, LeastFence = 66, MostFence = 72; // heights of the rows, mm
    private const double LeastView = 44, LeastWedge = 27, StopWide = 44; // widths, mm

    /// <summary>Adds the sheet; false, and nothing added, where the ring's sizes leave no room for all of it on one.</summary>
    public static bool TryAdd(Packet packet, RingJob job, bool ownSteps)
    {
        Column head = new(3, new Paragraph(RingDescription.Of(job.Ring.Ring).In(job.Style), TypeScale.Title with { Fractions = true }), new Paragraph(job.Ring.Verdict.In(job.Style), RingJob.Words));
        KeyFigures figures = new(4, [.. Figures(job)]);
        Box rest = packet.FreeArea.Below(head.HeightAt(job.Width) + figures.HeightAt(job.Width) + (2 * Sheet.Gap));
        Room ruled = Sheet.BesideRulers(rest, packet.Correction);
        TrueScale wedge = new(TrueScalePicture.OneWedge(job.Ring, job.Style), packet.Correction);
        // Best everything on one sheet; else, the wedge drawn to scale, its outline on a second.
        foreach (TrueScale? shown in new[] { wedge, null })
        {
            Room room = shown is null ? new(rest.Width, rest.Height) : ruled;
            if (Body(job, shown, room, ownSteps) is not var (scale, body)) continue;
            Sheet sheet = packet.Add(job.SheetName("job sheet"), scale.ToString()).Add(head).Add(figures);
            if (shown is not null)
            {
                sheet.AddBesideRulers(body);
                return true;
            }

            sheet.Add(body);
            (string heading, IBlock[] parts) = Strip(job, job.Width);
            TrueScaleSheet.Add(packet, job, new Section(heading, new Column(3, parts)));
            return true;
        }

        return false;
    }

    // The rows below the figures; null where they have no room.
    private static (DrawingScale Scale, Column Rows)? Body(RingJob job, TrueScale? wedge, Room room, bool ownSteps)
    {
        Paragraph know = new(Know(job, ownSteps), RingJob.Words);
        double left = room.Height - know.HeightAt(room.Width) - (2 * Gap);
        double fence = Math.Clamp(0.45 * left, LeastFence, MostFence);
        double shared = room.Width - Columns.Gutter - (wedge is null ? 0 : StopWide + Columns.Gutter);
        double wide = wedge is null ? shared / 2 : Math.Max(LeastWedge, wedge.Width), view = shared - wide;
        if (view < LeastView) return null;
        try
        {
            double half = (room.Width - Columns.Gutter) / 2, beside = room.Width - Columns.Gutter - StopWide;
            Section fences = Fence(job, new(wedge is null ? beside : half, fence));
            (string heading, IBlock[] parts) = wedge is null ? ("", []) : Strip(job, half);
            Section? stop = wedge is null ? Stop(job, new(StopWide, fence)) : null;
            Columns Lower(WoodLegend legend) => stop is null ? new(fences, new Section(heading, new Column(3, [.. parts, legend]))) : new((beside, fences), (StopWide, stop));
            // The ring gets what the fence, at its scale, has left.
            double ring = Math.Min(left - Lower(new(job.Key)).HeightAt(room.Width), MostRing);
            if (ring < LeastRing || wedge?.HeightAt(wide) > ring - Headings) return null;
            (ScaledPicture seen, string? sizes) = Seen(job, new(view, ring - Headings - (wedge is null ? new WoodLegend(job.Key).HeightAt(view) + 3 : 0)));
            Picture picture = new(seen.Drawing, sizes);
            WoodLegend legend = new(job.Key, RingPicture.IsShaded(job.Ring, seen.Scale.Ratio), RingPicture.ThinWoods(job.Ring, seen.Scale.Ratio));
            Section above = new($"From above, {seen.Scale}", wedge is null ? new Column(3, picture, legend) : picture);
            Columns upper = wedge is null
                ? new((view, above), (wide, Sized(job, new(wide, ring))))
                : new((view, above), (wide, new Section("Wedge, 1:1", wedge)), (StopWide, Stop(job, new(StopWide, ring))));
            Column all = new(Gap, upper, Lower(legend), know);
            return all.HeightAt(room.Width) > room.Height ? null : (seen.Scale, all);
        }
        catch (LayoutException)
        {
            return null; // a number too long or a shape too extreme for its place
        }
    }

    // With dimensions if they leave it as large as it would be with its sizes in words below.
    private static (ScaledPicture Ring, string? Sizes) Seen(RingJob job, Room room)
    {
        ScaledPicture sized = RingPicture.Draw(job.Ring, job.Style, room);
        ScaledPicture? larger = RingPicture.LargerBare(job.Ring, job.Style, room with { Height = room.Height - Caption }, sized.Scale);
        return larger is null ? (sized, null) : (larger, new RingSizes(job.Ring, job.Style).InWords);
    }

    private static Section Sized(RingJob job, Room room)
    {
        ScaledPicture wedge = WedgePicture.Draw(job.Ring, job.Style, room with { Height = room.Height - Headings - 6 });
        return new($"Wedge, {wedge.Scale}", new Picture(wedge.Drawing, "Dashed, in brackets: as sawn."));
    }

    private static Section Stop(RingJob job, Room room)
    {
        ScaledPicture stop = StopPicture.Draw(job.Ring, job.Style, room with { Height = room.Height - Headings });
        return new($"Stop, {stop.Scale}", new Picture(stop.Drawing));
    }

    private static Section Fence(RingJob job, Room room)
    {
        ScaledPicture fence = FencePicture.Draw(job.Ring, job.Shop.Sled, job.Style, room with { Height = room.Height - Headings });
        return new($"{SettingsSheet.Fences(job)}, {fence.Scale}", new Picture(fence.Drawing));
    }

    // Its picture and the order around the ring, for under a heading.
    private static (string Heading, IBlock[] Parts) Strip(RingJob job, double width)
    {
        int wedges = Math.Min((int)job.Ring["wedges-per-board"].Value, job.Ring.Woods.Max(w => w.ToSaw));
        double length = job.Shop.Boards.Length.Millimetres;
        ScaledPicture strip = StripPicture.Draw(job.Ring, job.Style, length, wedges, width);
        return ($"{wedges} from {job.Length(length)}, {strip.Scale}", [new Picture(strip.Drawing), new Paragraph($"Around the ring: {RingWords.Order(job.Ring, job.Key)}")]);
    }

    private static IEnumerable<KeyFigure> Figures(RingJob job)
    {
        KeyFigure Of(string caption, string name, string? note = null) => Reading.Of(caption, job.Ring[name], job.Style, note);
        return
        [
            Of("Rip to a width of", "board-width"),
            Of("Plane to a thickness of", "board-thickness"),
            Of("Stop, from the blade", "stop"),
            Of(job.Shop.Sled.Kind == SledKind.TwoFences ? "Mitre of each fence" : "Mitre of the fence", "mitre", $"within {job.Print("angle-per-fence")}"),
            Of($"Fence offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}", "rule-offset", $"within {job.Print("rule-accuracy")}"),
            .. job.Ring.Ring is OpenRing ? new[] { Of("Gap at the rim", "gap-at-rim"), Of("Gap at the inner end", "gap-at-tip") } : [],
            .. OverviewSheet.Wedges(job),
        ];
    }

    private static string Know(RingJob job, bool ownSteps)
    {
        string exact = $"{SettingsSheet.For(job)}: all wedges together within {job.Print("closing-limit")}, each within {job.Print("angle-per-wedge")}.";
        List<string> elsewhere = [];
        if (job.Wedge is null or 1 && !job.Ring.Findings.IsEmpty) elsewhere.Add($"good to know: “{AllRingsSheet.Name}”");
        if (ownSteps) elsewhere.Add($"in which order: “{OwnStepsSheet.Name}”");
        return elsewhere.Count == 0 ? exact : $"{exact} On other sheets, {string.Join("; ", elsewhere)}.";
    }
}
