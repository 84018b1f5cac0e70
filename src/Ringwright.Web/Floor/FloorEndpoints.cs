using System.Text.Json;
using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Http.HttpResults;
using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Store;
using Ringwright.Web.Bench;
using Ringwright.Web.Printing;
using Ringwright.Web.Sharing;

namespace Ringwright.Web.Floor;

/// <summary>The page for the tablet at the saw, the sheets it keeps, and where it sends its marks.</summary>
internal static class FloorEndpoints
{
    private const int MostMarks = 20_000, LongestName = 400, MostCuts = 1000;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    /// <summary>Address of the tablet's page of a ring, where the code of its label leads too.</summary>
    /// <param name="piece">The piece's number.</param>
    /// <param name="ring">The ring's mark.</param>
    public static string Page(string piece, string ring) => $"/saw/{piece}/{ring}";

    /// <summary>Address of the job sheet that this page keeps.</summary>
    public static string SheetOf(string piece, string ring) => Page(piece, ring) + "/sheet.pdf";

    public static void MapFloor(this WebApplication app)
    {
        RouteGroupBuilder saw = app.MapGroup("/saw").AddEndpointFilter(InOneSentence);
        saw.MapGet("/{piece}/{ring}", AtTheSaw);
        saw.MapGet("/{piece}/{ring}/sheet.pdf", RingSheets);
        // As addresses were once, with the ring's name.
        saw.MapGet("/{name}", ByName);
        saw.MapPost("/marks", Take);
    }

    /// <summary>What the tablet's page works with.</summary>
    public static string JobOf(Sheet sheet, RingPlan ring, string piece) => JsonSerializer.Serialize(new Job(
        piece,
        sheet.MarkOf(ring),
        sheet.Good.Piece.Name,
        ring.Ring.Name,
        SheetOf(piece, sheet.MarkOf(ring)),
        [.. SawCut.Of(ring, sheet.Good.Shop).Select(c => new JobCut(c.Key, c.Need.Needed, c.Need.ToSaw, c.PerBoard, c.Hows(sheet.Good.Shop.Sled.Kind), CutBasis.Of(c)))]), Options);

    private static IResult AtTheSaw(string piece, string ring, FloorNumbers numbers, Workbench bench)
    {
        (Sheet sheet, RingPlan plan) = Find(piece, ring, numbers);
        string number = ReferenceEquals(sheet, bench.Now) ? numbers.Own() : piece;
        if (number != piece) return Results.LocalRedirect(Page(number, ring));
        if (SawCut.Of(plan, sheet.Good.Shop).IsEmpty) return Results.Text($"No wedges are sawn for {plan.Ring.Name} alone; the steps at the bench say what to do.", statusCode: StatusCodes.Status404NotFound);
        string? other = numbers.Of(bench.Now) == piece ? null : bench.Now.Good.Piece.Name;
        return new RazorComponentResult<SawPage>(new { Sheet = sheet, Ring = plan, Piece = piece, OnBench = other });
    }

    private static IResult ByName(string name, FloorNumbers numbers, Workbench bench)
    {
        Sheet sheet = bench.Now;
        // A slash in a name stays escaped on its way here.
        RingPlan? ring = sheet.Good.Rings.FirstOrDefault(r => r.Ring.Name == name) ?? sheet.Good.Rings.FirstOrDefault(r => r.Ring.Name == Uri.UnescapeDataString(name));
        return ring is null
            ? Results.Text($"There is no ring “{name}” in the piece on the bench, {sheet.Good.Piece.Name}.", statusCode: StatusCodes.Status404NotFound)
            : Results.LocalRedirect(Page(numbers.Own(), sheet.MarkOf(ring)));
    }

    private static IResult RingSheets(string piece, string ring, FloorNumbers numbers, PrintChoices choices)
    {
        (Sheet sheet, RingPlan plan) = Find(piece, ring, numbers);
        return PieceEndpoints.SheetsOf(sheet, plan.Ring.Name, choices);
    }

    private static (Sheet Sheet, RingPlan Plan) Find(string piece, string ring, FloorNumbers numbers)
    {
        Sheet sheet = numbers.SheetOf(piece);
        int at = sheet.RingMarks.IndexOf(ring);
        return at >= 0 ? (sheet, sheet.Good.Rings[at]) : throw new BadInputException(sheet.Good.Piece.Name, "the ring that was asked for is not in it any more", "choose one of its rings at the bench, or print its labels anew");
    }

    private static async ValueTask<object?> InOneSentence(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        try
        {
            return await PieceEndpoints.InOneSentence(context, next);
        }
        catch (StoreException e)
        {
            return Results.Text(e.Message, statusCode: StatusCodes.Status503ServiceUnavailable);
        }
    }

    // Answers with all marks of the ring, so that two tablets come to know of each other.
    private static async Task<IResult> Take(HttpContext context, ShopFloor floor, FloorNumbers numbers, Workbench bench)
    {
        Sent? sent;
        try
        {
            sent = await JsonSerializer.DeserializeAsync<Sent>(context.Request.Body, Options, context.RequestAborted);
        }
        catch (JsonException)
        {
            sent = null;
        }

        if (sent is null || sent.Marks.IsDefault || sent.Marks.Length > MostMarks || sent.Marks.Any(m => m is null || m.Cuts is < 0 || m.Lost is < 0) || Names(sent).Any(n => n is { Length: > LongestName }) || sent.Basis is { IsDefault: false, Length: > MostCuts })
            return Results.Text("Marks are sent as piece, ring and a list of marks.", statusCode: StatusCodes.Status400BadRequest);
        if (Account(sent, numbers, bench.Now) is not { } account)
            return Results.Text("This piece is not on this machine any more; the taps are kept on the tablet.", statusCode: StatusCodes.Status404NotFound);
        string job = FloorNames.Job(account.Piece, account.Ring);
        CutBasis[]? basis = sent.Basis is { IsDefault: false } told ? [.. told] : null;
        if (!sent.Marks.IsEmpty) floor.Change(s => s.Add(job, sent.Marks, basis), $"{Words(sent.Marks, floor.Now.MarksOf(job))}: {account.Name}", context.Device()?.Name ?? "");
        return Results.Json(new Answer(floor.Now.MarksOf(job), Told(bench.Now, account, job, basis, floor.Now, numbers)), Options);
    }

    // By the piece's number and the ring's mark, or, from a page that is older than those, by their names.
    private static (string Piece, string Ring, string Name)? Account(Sent sent, FloorNumbers numbers, Sheet sheet)
    {
        if (numbers.Knows(sent.Piece))
            return (sent.Piece, sent.Ring, numbers.Of(sheet) == sent.Piece && sheet.RingMarks.IndexOf(sent.Ring) is int at and >= 0 ? sheet.Good.Rings[at].Ring.Name : "another piece’s ring");
        RingPlan? named = sheet.Good.Piece.Name == sent.Piece ? sheet.Good.Rings.FirstOrDefault(r => r.Ring.Name == sent.Ring) : null;
        return named is null ? null : (numbers.Own(), sheet.MarkOf(named), named.Ring.Name);
    }

    // What the one at the saw should know about the plan.
    private static string? Told(Sheet sheet, (string Piece, string Ring, string Name) account, string job, CutBasis[]? basis, FloorState floor, FloorNumbers numbers)
    {
        if (numbers.Of(sheet) != account.Piece) return null;
        int at = sheet.RingMarks.IndexOf(account.Ring);
        if (at < 0) return "This ring is not in the piece any more; what you tap is kept.";
        var now = RingAccount.Of(job, sheet.Good.Rings[at], sheet.Good.Shop);
        if (basis is not null && !basis.SequenceEqual(now.Now)) return "The ring was planned anew: load this page again before the next cut.";
        return now.Doubt(floor, sheet.Style) is string doubt ? $"{doubt} Keep or clear it at the bench, under Saw." : null;
    }

    private static string Words(ImmutableArray<Mark> marks, ImmutableArray<Mark> known)
    {
        string[] kinds = [.. marks.ExceptBy(known.Select(m => m.Id), m => m.Id).GroupBy(m => m.Kind).Select(g => $"{(g.Count() > 1 ? $"{g.Count()} × " : "")}{Word(g.Key)}")];
        return kinds.Length == 0 ? "nothing new" : string.Join(", ", kinds);
    }

    private static string Word(MarkKind kind) => kind switch
    {
        MarkKind.Sawn => "sawn",
        MarkKind.Lost => "lost",
        MarkKind.Bad => "found bad",
        MarkKind.Board => "new board",
        MarkKind.Undone => "last mark taken back",
        MarkKind.Recorded => "recorded",
        _ => "cleared",
    };

    private static IEnumerable<string?> Names(Sent sent) => sent.Marks.SelectMany(m => new[] { m.Id, m.Cut, m.Of }).Append(sent.Piece).Append(sent.Ring);

    private sealed record Sent(string Piece, string Ring, ImmutableArray<Mark> Marks)
    {
        public ImmutableArray<CutBasis>? Basis { get; init; }
    }

    private sealed record Answer(ImmutableArray<Mark> Marks, string? Told);

    private sealed record Job(string Piece, string Ring, string Name, string RingName, string Sheet, ImmutableArray<JobCut> Cuts);

    private sealed record JobCut(string Key, int Needed, int ToSaw, int PerBoard, ImmutableArray<string> Hows, CutBasis Basis);
}
