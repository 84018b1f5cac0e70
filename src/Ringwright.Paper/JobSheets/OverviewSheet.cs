using Ringwright.Core.Pieces;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The first sheet: what is made, its picture, one wedge, and the numbers to set, large.</summary>
internal static class OverviewSheet
{
    private const double RingShare = 1.35; // of the width, against 1 for the wedge
    private const double LeastPicture = 60, MostPicture = 112;
    private const int MostWoods = 3;

    public static void Add(Packet packet, RingJob job)
    {
        Column head = new(3, new Paragraph(RingWords.Describe(job.Ring.Ring, job.Style), TypeScale.Title), new Paragraph(job.Ring.Verdict.In(job.Style)));
        Section figures = new("To set and to saw", new KeyFigures(3, Figures(job)));
        WoodLegend legend = new(job.Key);
        double shared = job.Width - 8, ringWidth = shared * RingShare / (1 + RingShare);
        double taken = head.HeightAt(job.Width) + figures.HeightAt(job.Width) + legend.HeightAt(ringWidth) + 32;
        double tall = Math.Clamp(job.Height - taken, LeastPicture, MostPicture);
        ScaledPicture ring = RingPicture.Draw(job.Ring, job.Style, new(ringWidth, tall));
        ScaledPicture wedge = WedgePicture.Draw(job.Ring, job.Style, new(shared - ringWidth, tall));
        packet.Flow(job.SheetName("overview"), ring.Scale.ToString(), [
            head,
            new Columns(
                (RingShare, new Section($"From above, {ring.Scale}", new Column(4, new Picture(ring.Drawing), legend))),
                (1, new Section($"One wedge, {wedge.Scale}", new Picture(wedge.Drawing)))),
            figures,
        ]);
    }

    private static IReadOnlyList<KeyFigure> Figures(RingJob job)
    {
        KeyFigure Of(string caption, string name, string? note = null) => Reading.Of(caption, job.Ring[name], job.Style, note);
        string rule = $"Fence offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}";
        return
        [
            Of("Rip to a width of", "board-width"),
            Of("Plane to a thickness of", "board-thickness"),
            Of("Stop, from the blade along the fence", "stop"),
            Of(job.Shop.Sled.Kind == SledKind.TwoFences ? "Mitre of each fence" : "Mitre of the fence", "mitre"),
            Of(rule, "rule-offset"),
            .. Wedges(job),
        ];
    }

    private static IEnumerable<KeyFigure> Wedges(RingJob job)
    {
        if (job.Ring.Woods.Length > MostWoods)
        {
            int all = job.Ring.Woods.Sum(w => w.ToSaw);
            return [new($"Wedges of {job.Ring.Woods.Length} woods to saw", $"{all}", "", $"{all - job.Ring.Ring.Segments} of them spare")];
        }

        return job.Ring.Woods.Select(w => new KeyFigure(
            $"Wedges to saw: {job.Key[w.Wood].Letter} {w.Wood}", $"{w.ToSaw}", "", $"{w.Spares} of them spare; {Boards(w.Boards)}"));
    }

    private static string Boards(int count) => count == 1 ? "1 board" : $"{count} boards";
}
