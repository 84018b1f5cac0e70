using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Http.HttpResults;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Floor;

/// <summary>The page for the tablet at the saw, the sheets it keeps, and where it sends its marks.</summary>
internal static class FloorEndpoints
{
    private const int MostMarks = 20_000, LongestName = 400;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    /// <summary>Address of the tablet's page of a ring.</summary>
    public static string Page(string ring) => "/saw/" + Uri.EscapeDataString(ring);

    /// <summary>Address of the job sheet that this page keeps.</summary>
    public static string Sheet(string ring) => $"/saw/{Uri.EscapeDataString(ring)}/sheet.pdf";

    public static void MapFloor(this WebApplication app)
    {
        app.MapGet("/saw/{name}", (string name, Workbench bench) => AtTheSaw(name, bench));
        app.MapGet("/saw/{name}/sheet.pdf", PieceEndpoints.RingSheets);
        app.MapPost("/saw/marks", Take);
    }

    /// <summary>What the tablet's page works with.</summary>
    public static string JobOf(Sheet sheet, RingPlan ring) => JsonSerializer.Serialize(new Job(
        sheet.Good.Piece.Name,
        ring.Ring.Name,
        Sheet(ring.Ring.Name),
        [.. SawCut.Of(ring, sheet.Good.Shop).Select(c => new JobCut(c.Key, c.Need.Needed, c.Need.ToSaw, c.PerBoard, c.Hows(sheet.Good.Shop.Sled.Kind)))]), Options);

    private static IResult AtTheSaw(string name, Workbench bench)
    {
        Sheet sheet = bench.Now;
        RingPlan? ring = sheet.Good.Rings.FirstOrDefault(r => r.Ring.Name == name);
        if (ring is null) return Results.Text($"There is no ring “{name}” in the piece on the bench, {sheet.Good.Piece.Name}.", statusCode: StatusCodes.Status404NotFound);
        if (SawCut.Of(ring, sheet.Good.Shop).IsEmpty) return Results.Text($"No wedges are sawn for {name} alone; the steps at the bench say what to do.", statusCode: StatusCodes.Status404NotFound);
        return new RazorComponentResult<SawPage>(new { Sheet = sheet, Ring = ring });
    }

    // Answers with all marks of the ring, so that two tablets come to know of each other.
    private static async Task<IResult> Take(HttpRequest request, ShopFloor floor)
    {
        Sent? sent;
        try
        {
            sent = await JsonSerializer.DeserializeAsync<Sent>(request.Body, Options, request.HttpContext.RequestAborted);
        }
        catch (JsonException)
        {
            sent = null;
        }

        if (sent is null || sent.Marks.IsDefault || sent.Marks.Length > MostMarks || Names(sent).Any(n => n is { Length: > LongestName }))
            return Results.Text("Marks are sent as piece, ring and a list of marks.", statusCode: StatusCodes.Status400BadRequest);
        if (!sent.Marks.IsEmpty) floor.Change(s => s.Add(sent.Piece, sent.Ring, sent.Marks));
        return Results.Json(floor.Now.MarksOf(sent.Piece, sent.Ring), Options);
    }

    private static IEnumerable<string?> Names(Sent sent) => sent.Marks.SelectMany(m => new[] { m.Id, m.Cut, m.Of }).Append(sent.Piece).Append(sent.Ring);

    private sealed record Sent(string Piece, string Ring, ImmutableArray<Mark> Marks);

    private sealed record Job(string Piece, string Ring, string Sheet, ImmutableArray<JobCut> Cuts);

    private sealed record JobCut(string Key, int Needed, int ToSaw, int PerBoard, ImmutableArray<string> Hows);
}
