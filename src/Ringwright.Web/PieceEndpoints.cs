using System.Text;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Paper.JobSheets;
using Ringwright.Web.Bench;
using PaperSize = Ringwright.Paper.Sheets.PaperSize;

namespace Ringwright.Web;

/// <summary>The files that can be had of the piece on the bench.</summary>
internal static class PieceEndpoints
{
    public const string CopyPath = "/pieces/current.json";
    public const string JobSheetPath = "/pieces/current/job-sheet.pdf";

    public static void MapPieces(this WebApplication app)
    {
        app.MapGet(CopyPath, (Workbench bench) =>
        {
            Sheet sheet = bench.Now;
            return Results.File(Encoding.UTF8.GetBytes(DocumentJson.Write(sheet.Good.Piece)), "application/json", FileName(sheet, ".json"));
        });
        app.MapGet(JobSheetPath, (Workbench bench) =>
        {
            Sheet sheet = bench.Now;
            using var pdf = new MemoryStream();
            JobSheet.WritePdf(sheet.Good, sheet.Style, PaperFor(sheet), DateOnly.FromDateTime(DateTime.Now), pdf);
            return Results.File(pdf.ToArray(), "application/pdf");
        });
        app.MapGet("/rings/{name}", RingSheets);
    }

    // Where the code on a label leads: the sheets of one ring.
    private static IResult RingSheets(string name, Workbench bench)
    {
        Sheet sheet = bench.Now;
        if (!sheet.Good.Rings.Any(r => r.Ring.Name == name)) return Results.Text($"There is no ring “{name}” in the piece on the bench, {sheet.Good.Piece.Name}.", statusCode: StatusCodes.Status404NotFound);
        var options = new PacketOptions(sheet.Style, PaperFor(sheet), DateOnly.FromDateTime(DateTime.Now)) { Ring = name };
        using var pdf = new MemoryStream();
        JobSheet.WritePdf(sheet.Good, options, pdf);
        return Results.File(pdf.ToArray(), "application/pdf");
    }

    private static PaperSize PaperFor(Sheet sheet) => sheet.Style.Unit == LengthUnit.Inch ? PaperSize.Letter : PaperSize.A4;

    /// <summary>The piece's name as a file name: letters and digits, the rest as dashes.</summary>
    public static string FileName(Sheet sheet, string ending)
    {
        string name = string.Concat(sheet.Good.Piece.Name.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        string joined = string.Join('-', name.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return (joined.Length == 0 ? "piece" : joined) + ending;
    }
}
