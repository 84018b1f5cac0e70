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
            PaperSize paper = sheet.Style.Unit == LengthUnit.Inch ? PaperSize.Letter : PaperSize.A4;
            using var pdf = new MemoryStream();
            JobSheet.WritePdf(sheet.Good, sheet.Style, paper, DateOnly.FromDateTime(DateTime.Now), pdf);
            return Results.File(pdf.ToArray(), "application/pdf");
        });
    }

    /// <summary>The piece's name as a file name: letters and digits, the rest as dashes.</summary>
    public static string FileName(Sheet sheet, string ending)
    {
        string name = string.Concat(sheet.Good.Piece.Name.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        string joined = string.Join('-', name.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return (joined.Length == 0 ? "piece" : joined) + ending;
    }
}
