using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet of the board: what a good first cut looks like, how a strip is sawn up, how much of each wood, the order around the ring.</summary>
internal static class CuttingSheet
{
    private const double LeastCut = 30, MostCut = 75; // height of a test cut, mm
    private const double CutWords = 52;               // heading above and words below it, mm

    public static void Add(Packet packet, RingJob job)
    {
        (Section strip, DrawingScale scale) = Strip(job);
        Section around = new("Around the ring, counter-clockwise", new Paragraph(RingWords.Order(job.Ring, job.Key)));
        IBlock woods = Woods(job);
        double tall = Math.Clamp(job.Beside(strip, around, woods) - CutWords, LeastCut, MostCut);
        IBlock[] order = job.Wedge is null ? [around] : []; // of several batches it stands on the overview
        packet.Flow(job.SheetName("board and cuts"), scale.ToString(), [TestCuts(job, tall), strip, woods, .. order]);
    }

    private static Section TestCuts(RingJob job, double tall)
    {
        ImmutableArray<TestCut> cuts = TestCutPicture.Of(job.Ring);
        if (cuts.IsEmpty)
            return new Section("The first test cut", new Paragraph("These wedges are too small for a picture of the test cut: judge it under a lens."));
        (DrawingScale scale, Columns three) = TestCutTriptych.Of(cuts, job.Style, job.Width, tall);
        return new Section($"The first test cut, {scale}", three);
    }

    private static (Section Block, DrawingScale Scale) Strip(RingJob job)
    {
        int wedges = Math.Min((int)job.Ring["wedges-per-board"].Value, job.Ring.Woods.Max(w => w.ToSaw));
        double length = job.Shop.Boards.Length.Millimetres;
        ScaledPicture strip = StripPicture.Draw(job.Ring, job.Style, length, wedges, job.Width);
        string words = $"Hatched: end trim and first offcut. Grey: kerf{(job.Ring.Strip.Slip > 0 ? " and what is left out for the pattern" : "")}. Numbers: order of sawing, at the rim edge. Keep at least {job.Length(job.Shop.Saw.HoldingLength.Millimetres)} to hold.";
        string heading = $"{wedges} {(wedges == 1 ? "wedge" : "wedges")} from a board of {job.Length(length)}, {strip.Scale}";
        return (new(heading, new Picture(strip.Drawing, words)), strip.Scale);
    }

    public static Section Woods(RingJob job) => new("Woods", new Table(
        [
            new(""), new("Wood"), new("Needed", ColumnKind.Numbers), new("Spare", ColumnKind.Numbers), new("Saw", ColumnKind.Numbers),
            new("Boards", ColumnKind.Numbers), new("Strip in all", ColumnKind.Numbers), new("Left over", ColumnKind.Numbers),
        ],
        [.. job.Ring.Woods.Select(w => new[]
        {
            job.Key[w.Wood].Letter, w.Wood, Count(w.Needed), Count(w.Spares), Count(w.ToSaw), Count(w.Boards), job.Length(w.Length), job.Length(w.LeftOver),
        })]));

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
