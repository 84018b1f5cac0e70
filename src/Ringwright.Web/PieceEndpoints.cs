using System.Text;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Paper;
using Ringwright.Web.Bench;
using Ringwright.Web.Floor;
using Ringwright.Web.Printing;
using Ringwright.Web.Sharing;
using Ringwright.Web.Stations;

namespace Ringwright.Web;

/// <summary>Papers and files that can be had of the piece on the bench.</summary>
internal static class PieceEndpoints
{
    public const string CopyPath = "/pieces/current.json";
    public const string JobSheetPath = Files + "/job-sheet.pdf";

    /// <summary>Where they all are.</summary>
    public const string Files = "/pieces/current";

    private const string Pdf = "application/pdf", Zip = "application/zip";

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    public static void MapPieces(this WebApplication app)
    {
        app.MapGet(CopyPath, (Workbench bench) => Results.File(Encoding.UTF8.GetBytes(DocumentJson.Write(bench.Now.Good.Piece)), "application/json", FileName(bench.Now, ".json")));
        RouteGroupBuilder files = app.MapGroup(Files).AddEndpointFilter(InOneSentence);
        files.MapGet("/job-sheet.pdf", (Workbench bench, GlueDesk orders, [AsParameters] PrintQuery query) => Results.File(PiecePaper.JobPacket(bench.Now, query, Today, orders.For(bench.Now.Good)?.Schedule), Pdf));
        files.MapGet("/templates.pdf", (Workbench bench, [AsParameters] PrintQuery query) => Results.File(PiecePaper.Templates(bench.Now, query, Today), Pdf));
        files.MapGet("/labels.pdf", (Workbench bench, LocalSharing sharing, FloorNumbers numbers, [AsParameters] PrintQuery query) =>
        {
            // A code outlives the bench, so it needs a number that holds.
            string piece = sharing.IsOn ? numbers.Own() : numbers.Of(bench.Now);
            return Results.File(PiecePaper.Stickers(bench.Now, query, Today, sharing.Address, piece), Pdf);
        });
        files.MapGet("/views/{name}", (string name, int? wedge, Workbench bench, [AsParameters] PrintQuery query) => Results.File(PiecePaper.View(bench.Now, name, query, wedge ?? 1, Today), PictureType(name)));
        foreach (string ending in (string[])[".svg", ".dxf"])
            files.MapGet($"/templates{ending}.zip", (Workbench bench, [AsParameters] PrintQuery query) => Results.File(PieceFiles.Templates(bench.Now, query, ending), Zip, FileName(bench.Now, $".templates{ending}.zip")));
        foreach (string ending in (string[])[".stl", ".3mf"])
            files.MapGet($"/gauges{ending}.zip", (Workbench bench, [AsParameters] PrintQuery query) => Results.File(PieceFiles.Gauges(bench.Now, query, ending), Zip, FileName(bench.Now, $".gauges{ending}.zip")));
        foreach ((string ending, string type) in ((string, string)[])[(".glb", "model/gltf-binary"), (".stl", "model/stl"), (".3mf", "model/3mf")])
            files.MapGet($"/solid{ending}", (Workbench bench) => Results.File(PieceFiles.Solid(bench.Now, ending), type, FileName(bench.Now, ending)));
        files.MapGet("/figures.xlsx", async (Workbench bench) => Results.File(await PieceFiles.Figures(bench.Now), "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", FileName(bench.Now, ".figures.xlsx")));
        files.MapGet("/cut-list.csv", (Workbench bench) => Results.File(Encoding.UTF8.GetBytes(CutListCsv.Write(bench.Now.Good, bench.Now.Style)), "text/csv", FileName(bench.Now, ".cut-list.csv")));
        files.MapGet("/plan.json", (Workbench bench) => Results.File(Encoding.UTF8.GetBytes(PlanJson.Write(bench.Now.Good, bench.Now.Style)), "application/json", FileName(bench.Now, ".plan.json")));
        // Where the code on a label leads that was printed from the shell: the sheets of one ring.
        app.MapGet("/rings/{name}/job-sheet.pdf", RingSheets).AddEndpointFilter(InOneSentence);
    }

    /// <summary>The piece's name as a file name: letters and digits, the rest as dashes.</summary>
    public static string FileName(Sheet sheet, string ending)
    {
        string name = string.Concat(sheet.Good.Piece.Name.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        string joined = string.Join('-', name.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return (joined.Length == 0 ? "piece" : joined) + ending;
    }

    /// <summary>The sheets of one ring.</summary>
    public static IResult RingSheets(string name, Workbench bench, PrintChoices choices)
    {
        Sheet sheet = bench.Now;
        // A slash in a name stays escaped on its way here.
        string ring = sheet.Good.Rings.Any(r => r.Ring.Name == name) ? name : Uri.UnescapeDataString(name);
        return SheetsOf(sheet, ring, choices);
    }

    /// <summary>The sheets of one ring of a sheet, as they were last printed.</summary>
    public static IResult SheetsOf(Sheet sheet, string ring, PrintChoices choices) =>
        Results.File(PiecePaper.JobPacket(sheet, choices.Query with { Ring = ring, Sheets = null }, Today, null), Pdf);

    /// <summary>Answers what cannot be made with the sentence that says why.</summary>
    public static async ValueTask<object?> InOneSentence(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        try
        {
            return await next(context);
        }
        catch (Exception e) when (e is BadInputException or LayoutException)
        {
            return Results.Text(e.Message, statusCode: StatusCodes.Status422UnprocessableEntity);
        }
    }

    private static string PictureType(string name) => Path.GetExtension(name) switch
    {
        ".svg" => "image/svg+xml",
        ".png" => "image/png",
        _ => Pdf,
    };
}
