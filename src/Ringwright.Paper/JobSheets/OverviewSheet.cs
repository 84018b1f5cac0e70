using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The first sheet: what is made, its picture, one wedge, and the numbers to set, large.</summary>
internal static class OverviewSheet
{
    private const double RingShare = 1.75; // of the width, against 1 for the wedge
    private const double Headings = 14;    // heading above and air below a picture, mm
    private const double LeastPicture = 80, MostPicture = 125;
    private const int MostWoods = 3;

    public static void Add(Packet packet, RingJob job, params IReadOnlyList<IBlock> below)
    {
        Column head = new(3, new Paragraph(RingDescription.Of(job.Ring.Ring).In(job.Style), TypeScale.Title with { Fractions = true }), new Paragraph(job.Ring.Verdict.In(job.Style), RingJob.Words));
        // Inches with a fraction and decimals are long: three beside each other stay large.
        Section figures = new("To set and to saw", new KeyFigures(job.Style.Unit == LengthUnit.Millimetre ? 4 : 3, [.. Figures(job)]));
        double shared = job.Width - Columns.Gutter, ringWidth = shared * RingShare / (1 + RingShare);
        IBlock[] parts = [.. BatchTables.Of(job)];
        double tall = Math.Clamp(job.Beside([head, figures, new WoodLegend(job.Key), .. parts]) - Headings, LeastPicture, MostPicture);
        ScaledPicture ring = RingPicture.Draw(job.Ring, job.Style, new(ringWidth, tall));
        ScaledPicture wedge = WedgePicture.Draw(job.Ring, job.Style, new(shared - ringWidth, tall));
        packet.Flow(job.SheetName("overview"), ring.Scale.ToString(), [
            head,
            new Columns(
                (RingShare, new Section($"From above, {ring.Scale}", new Column(4, new Picture(ring.Drawing), new WoodLegend(job.Key, RingPicture.IsShaded(job.Ring, ring.Scale.Ratio), RingPicture.ThinWoods(job.Ring, ring.Scale.Ratio))))),
                (1, new Section($"{(job.Ring.Batches.Length > 1 ? "Wedge 1" : "One wedge")}, {wedge.Scale}", new Picture(wedge.Drawing, "Heavy: sanded. Dashed, in brackets: as sawn.")))),
            figures,
            .. parts,
            .. below,
        ]);
    }

    private static IEnumerable<KeyFigure> Figures(RingJob job)
    {
        KeyFigure Of(string caption, string name) => Reading.Of(caption, job.Ring[name], job.Style);
        return
        [
            Of("Rip to a width of", "board-width"),
            Of("Plane to a thickness of", "board-thickness"),
            .. job.Ring.Batches.Length == 1 ? Saw(job, Of) : [],
        ];
    }

    private static IEnumerable<KeyFigure> Saw(RingJob job, Func<string, string, KeyFigure> of) =>
        [
            of("Stop, from the blade", "stop"),
            of(job.Shop.Sled.Kind == SledKind.TwoFences ? "Mitre of each fence" : "Mitre of the fence", "mitre"),
            of($"Fence offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}", "rule-offset"),
            .. job.Ring.Ring is OpenRing ? new[] { of("Gap at the rim", "gap-at-rim"), of("Gap at the inner end", "gap-at-tip") } : [],
            .. Wedges(job),
        ];

    /// <summary>How many to saw of each wood, or of all together where there are many.</summary>
    public static IEnumerable<KeyFigure> Wedges(RingJob job, string pieces = "Wedges")
    {
        if (job.Ring.Woods.Length <= MostWoods)
            return job.Ring.Woods.Select(w => Wedges($"{pieces} to saw: {job.Key[w.Wood].Letter} {w.Wood}", w.ToSaw, w.Spares, w.Boards));
        WoodNeed[] woods = [.. job.Ring.Woods];
        return [Wedges($"{pieces} to saw, of {woods.Length} woods", woods.Sum(w => w.ToSaw), woods.Sum(w => w.Spares), woods.Sum(w => w.Boards))];
    }

    private static KeyFigure Wedges(string caption, int toSaw, int spares, int boards) =>
        new(caption, toSaw.ToString(CultureInfo.InvariantCulture), "", $"{spares} of them spare; {boards} {(boards == 1 ? "board" : "boards")}");
}
