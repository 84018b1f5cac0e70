using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Sheets;

namespace Ringwright.Bench;

/// <summary>The job packet of a bowl of nine rings: layout and PDF together, and how large the file is.</summary>
internal sealed class PacketBench : IBench
{
    private const double MostMegabytes = 5;

    public string Name => "packet";

    public string Title => "the job packet of a bowl of nine rings, laid out and written as PDF with its fonts";

    public void Run(TextWriter output)
    {
        Plan plan = Bowl(9);
        PacketOptions options = new(MeasureStyle.Millimetres, PaperSize.A4, new(2026, 3, 14)) { Duplex = true };
        Packet packet = JobSheet.Packet(plan, options);
        Contest.Write(output,
        [
            Way.Of("layout alone", () => JobSheet.Packet(plan, options).Pages()),
            Way.Of("layout and PDF", () => Write(plan, options)) with { MostMs = 2000 },
        ]);
        double megabytes = Write(plan, options) / 1e6;
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{packet.Sheets.Count} pages, {megabytes:0.00} MB; mark: under {MostMegabytes} MB, {Way.Verdict(megabytes < MostMegabytes)}."));
        output.WriteLine();
        Growth.Write(output, "rings", [6, 12, 24], rings =>
        {
            Plan larger = Bowl(rings);
            return () => Write(larger, options);
        });
    }

    private static long Write(Plan plan, PacketOptions options)
    {
        using MemoryStream stream = new();
        JobSheet.WritePdf(plan, options, stream);
        return stream.Length;
    }

    private static Plan Bowl(int rings)
    {
        Shape shape = StartingShapes.Of(PieceKind.Bowl, Length.FromMillimetres(240), Length.FromMillimetres(10 * rings));
        double floor = ((Wall)shape.Inside!).Floor?.Millimetres ?? 0;
        Ring Of(int i) => 10 * i < floor
            ? new WedgeDisc { Name = $"Foot {i + 1}", Segments = 24, Thickness = Length.FromMillimetres(10), Woods = ["walnut", "maple"] }
            : new SegmentRing { Name = $"Wall {i}", Segments = 24, Thickness = Length.FromMillimetres(10), Shift = i % 2 / 2.0, Woods = ["walnut", "maple", "cherry"] };
        var piece = new Piece { Name = "Bowl", Kind = PieceKind.Bowl, Shape = shape, Rings = [.. Enumerable.Range(0, rings).Select(Of)] };
        return Planner.Plan(piece, Shop.Starting with { Boards = new() { Length = Length.FromMillimetres(3000) } });
    }
}
