using System.Text;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Paper.JobSheets;
using Ringwright.Web.Bench;
using PaperSize = Ringwright.Paper.Sheets.PaperSize;
using PrintCorrection = Ringwright.Paper.Sheets.PrintCorrection;

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
        app.MapGet(JobSheetPath, Packet);
        app.MapGet("/rings/{name}", RingSheets);
    }

    // All sheets the piece needs, or those that are asked for.
    private static IResult Packet(Workbench bench, string[]? sheets, bool? duplex, string? correction)
    {
        Sheet sheet = bench.Now;
        try
        {
            var options = new PacketOptions(sheet.Style, PaperFor(sheet), DateOnly.FromDateTime(DateTime.Now))
            {
                Sheets = sheets is { Length: > 0 } ? PacketOptions.ReadSheets(string.Join(',', sheets)) : null,
                Duplex = duplex ?? false,
                Correction = string.IsNullOrWhiteSpace(correction) ? PrintCorrection.None : Correction(correction),
            };
            using var pdf = new MemoryStream();
            JobSheet.WritePdf(sheet.Good, options, pdf);
            return Results.File(pdf.ToArray(), "application/pdf");
        }
        catch (Exception e) when (e is BadInputException or Paper.LayoutException)
        {
            return Results.Text(e.Message, statusCode: StatusCodes.Status400BadRequest);
        }
    }

    private static PrintCorrection Correction(string text)
    {
        double[] measured = [.. text.Split(',', StringSplitOptions.TrimEntries).Select(t => DeskTexts.Length("check rulers", t, LengthUnit.Millimetre).Millimetres)];
        return measured is [> 0, > 0] ? PrintCorrection.FromMeasured(measured[0], measured[1])
            : throw new BadInputException("check rulers", $"“{text}” is not two lengths", "what both measure is needed, across first: 99.7 mm,100.2 mm");
    }

    /// <summary>Where the code on a label leads: the sheets of one ring.</summary>
    public static IResult RingSheets(string name, Workbench bench)
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
