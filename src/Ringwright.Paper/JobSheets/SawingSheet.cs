using System.Globalization;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet at the saw: how a strip is sawn up, in which order, how much of each wood, and the order around the ring.</summary>
internal static class SawingSheet
{
    private const int RowsTogether = 15; // of a long wood table; it may be divided after each

    public static void Add(Packet packet, RingJob job)
    {
        int perBoard = (int)job.Ring["wedges-per-board"].Value;
        WoodNeed first = job.Ring.Woods.MaxBy(w => w.ToSaw)!;
        int wedges = Math.Min(perBoard, first.ToSaw);
        double length = job.Shop.Boards.Length.Millimetres;
        ScaledPicture strip = StripPicture.Draw(job.Ring, job.Style, length, wedges, job.Width);
        string hold = $"Hatched: end trim and first offcut. Grey: kerf. Numbers: wedges in the order of sawing, at their rim edge. The rest stays at least {job.Length(job.Shop.Saw.HoldingLength.Millimetres)} long to hold.";
        packet.Flow(job.SheetName("sawing"), strip.Scale.ToString(), [
            new Section($"A board of {job.Length(length)} gives {wedges} {(wedges == 1 ? "wedge" : "wedges")}, {strip.Scale}", new Picture(strip.Drawing, hold)),
            new Section("In this order", new ListBlock(ListMark.Number, [.. job.Ring.Steps.Select(s => s.In(job.Style))])),
            .. Woods(job),
            new Section("Around the ring, counter-clockwise", new Paragraph(RingWords.Order(job.Ring.Ring, job.Key))),
        ]);
    }

    private static IEnumerable<IBlock> Woods(RingJob job)
    {
        Table[] tables = [.. job.Ring.Woods.Chunk(RowsTogether).Select(woods => Table(job, woods))];
        return tables.Select((table, i) => i == 0 ? new Section("Woods", table) : (IBlock)table);
    }

    private static Table Table(RingJob job, WoodNeed[] woods) => new(
        [
            new(""), new("Wood"), new("Needed", ColumnKind.Numbers), new("Spare", ColumnKind.Numbers), new("To saw", ColumnKind.Numbers),
            new("Boards", ColumnKind.Numbers), new("Strip in all", ColumnKind.Numbers), new("Left of the last", ColumnKind.Numbers),
        ],
        [.. woods.Select(w => new[]
        {
            job.Key[w.Wood].Letter, w.Wood, Count(w.Needed), Count(w.Spares), Count(w.ToSaw), Count(w.Boards), job.Length(w.Length), job.Length(w.LeftOver),
        })]);

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
