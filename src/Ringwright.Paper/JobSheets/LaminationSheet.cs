using System.Globalization;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet of a laminated board: its strips, how they are glued and recut, and the band that comes of it.</summary>
internal static class LaminationSheet
{
    private const double Band = 50, Stack = 62; // heights of the pictures, mm

    public static void Add(Packet packet, RingJob job, Lamination board)
    {
        ScaledPicture band = BandPicture.Draw(job.Ring, job.Style, new(job.Width, Band)), stack = StripStackPicture.Draw(job.Ring, job.Style, new(job.Width, Stack));
        packet.Flow(job.SheetName("lamination"), stack.Scale.ToString(), [
            new Section($"The turned band unrolled, {band.Scale}", new Picture(band.Drawing, "Heavy: the joints. Between them the strips as they come to lie.")),
            new WoodLegend(job.Key),
            new Section($"The glued strips from the side, {stack.Scale}", new Picture(stack.Drawing, "Heavy: the planed board. Dashed: where the slab is sawn.")),
            new Section("Strips", Strips(job, board)),
            new Section("The board", Board(job)),
        ]);
    }

    private static Table Strips(RingJob job, Lamination board) => new(
        [
            new(""), new("Wood"), new("Thick", ColumnKind.Numbers), new("Crosscut to", ColumnKind.Numbers), new("Shift", ColumnKind.Numbers),
            new("Strips", ColumnKind.Numbers), new("Boards", ColumnKind.Numbers), new("Board in all", ColumnKind.Numbers),
        ],
        [.. board.Kinds.Select(k => new[]
        {
            job.Key[k.Wood].Letter, k.Wood, job.Length(k.Thickness), job.Length(k.Height), job.Length(k.Stagger), Count(k.Count), Count(k.Sticks), job.Length(k.Length),
        })]);

    private static Table Board(RingJob job)
    {
        string[] figures = ["strip-width", "slab-thickness", "lamination-length", "lamination-repeats", "pattern-repeat", "pitch-bare", "pitch-matched", "line-step"];
        return new([new("What"), new("Value", ColumnKind.Numbers)], [.. figures.Select(job.Ring.Find).OfType<Figure>().Select(f => new[] { f.Label, job.Style.Print(f.Value, f.Quantity) })]);
    }

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
