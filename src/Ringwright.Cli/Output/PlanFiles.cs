using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Data;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Output;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Stock.Schedules;

namespace Ringwright.Cli.Output;

/// <summary>The files of a plan, named after the piece's file.</summary>
internal sealed class PlanFiles(Plan plan, PacketOptions options)
{
    private static readonly Room PictureRoom = new(160, 180);

    private readonly MeasureStyle _style = options.Style;

    /// <summary>Writes all files and returns their paths.</summary>
    public IEnumerable<string> Write(string pieceFile, string folder)
    {
        string stem = Path.Combine(folder, Path.GetFileNameWithoutExtension(pieceFile));
        yield return Written(stem + ".job-sheet.pdf", JobSheets());
        for (int i = 0; i < plan.Rings.Length; i++)
            yield return Written(stem + (plan.Rings.Length == 1 ? ".ring.svg" : $".ring-{i + 1}.svg"), Picture(plan.Rings[i]));
        if (plan.Form is not null || plan.Rings.Length > 1)
            yield return Written(stem + ".piece.svg", SvgWriter.Write(PiecePage.Whole(plan, _style, coloured: true), $"{plan.Piece.Name}: half from outside, half cut through"));
        if (plan.Rings.Length > 1)
            yield return Written(stem + ".unrolled.svg", SvgWriter.Write(PiecePage.Unrolled(plan, _style, coloured: true), UnrolledTitle(plan)));
        yield return Written(stem + ".plan.json", PlanJson.Write(plan, _style));
        yield return Written(stem + ".cut-list.csv", CutListCsv.Write(plan, _style));
        yield return Written(stem + ".figures.xlsx", Workbook());
    }

    /// <summary>What a picture of the outside laid flat is called.</summary>
    public static string UnrolledTitle(Plan plan) => $"{plan.Piece.Name}: the outside laid flat";

    private byte[] JobSheets()
    {
        using var stream = new MemoryStream();
        JobSheet.WritePdf(plan, options with { Schedule = GlueScheduler.Of(GluePlan.Of(plan)) }, stream);
        return stream.ToArray();
    }

    private byte[] Workbook()
    {
        using var stream = new MemoryStream();
        PlanWorkbook.WriteAsync(plan, _style, stream).GetAwaiter().GetResult(); // in memory: nothing is waited for
        return stream.ToArray();
    }

    private string Picture(RingPlan ring) =>
        SvgWriter.Write(RingPicture.Draw(ring, _style, PictureRoom, coloured: true).Drawing, $"{plan.Piece.Name}: {ring.Ring.Name}, from above");

    private static string Written(string path, byte[] bytes)
    {
        SafeFile.Write(path, bytes);
        return path;
    }

    private static string Written(string path, string text)
    {
        SafeFile.Write(path, text);
        return path;
    }
}
