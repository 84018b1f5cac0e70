using Microsoft.AspNetCore.Http.HttpResults;
using Ringwright.Core;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Sharing;

/// <summary>The page on which a device is let in. It needs no script, so that an old phone can show it.</summary>
internal static class PairingEndpoints
{
    public const string Path = "/pair";

    /// <summary>The largest form that is read, bytes.</summary>
    public const int LargestForm = 4096;

    private const int LongestGoal = 1024;

    /// <summary>The page's address for a device that wants to go on to <paramref name="goal"/>.</summary>
    public static string LinkTo(string goal) => goal is "/" || !IsHere(goal) ? Path : $"{Path}?to={Uri.EscapeDataString(goal)}";

    /// <summary>The page's address that lets a device in once.</summary>
    public static string OnceLink(Uri address, string secret) => $"{address.GetLeftPart(UriPartial.Authority)}{Path}?link={secret}";

    public static void MapPairing(this WebApplication app)
    {
        app.MapGet(Path, (HttpContext context, string? to, string? link) =>
            Knows(context) ? Results.LocalRedirect(Goal(to)) : Page(context, StatusCodes.Status200OK, null, link, to, ""));
        app.MapPost(Path, LetIn);
    }

    private static async Task<IResult> LetIn(HttpContext context, LocalSharing sharing)
    {
        if (Knows(context)) return Results.LocalRedirect("/");
        IFormCollection form;
        try
        {
            form = await Form(context);
        }
        catch (BadInputException e)
        {
            return Page(context, StatusCodes.Status400BadRequest, e.Message, null, null, "");
        }

        string? code = form["code"], link = form["link"], to = form["to"];
        string name = form["name"].ToString();
        try
        {
            string key = sharing.LetIn(code, string.IsNullOrEmpty(link) ? null : link, name, context.Connection.RemoteIpAddress!.Plain());
            context.Response.Cookies.Append(Visitor.Cookie, key, new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/" });
            return Results.LocalRedirect(Goal(to));
        }
        catch (BadInputException e)
        {
            return Page(context, StatusCodes.Status403Forbidden, e.Message, null, to, name);
        }
    }

    // Read by hand: the framework's own binding answers a bad body with an empty page.
    private static async Task<IFormCollection> Form(HttpContext context)
    {
        const string Right = "the form of this page is needed";
        if (!context.Request.HasFormContentType) throw new BadInputException("form", "the request holds none", Right);
        try
        {
            return await context.Request.ReadFormAsync(new() { ValueCountLimit = 8, KeyLengthLimit = 32, ValueLengthLimit = LargestForm, MultipartBodyLengthLimit = LargestForm }, context.RequestAborted);
        }
        catch (Exception e) when (e is InvalidDataException or IOException or BadHttpRequestException)
        {
            throw new BadInputException("form", "it cannot be read or is too large", Right);
        }
    }

    private static RazorComponentResult<PairingPage> Page(HttpContext context, int status, string? wrong, string? link, string? to, string name)
    {
        context.Response.Headers.CacheControl = "no-store";
        // With no referrer at all a browser would hide where its own form comes from.
        context.Response.Headers["Referrer-Policy"] = "same-origin";
        return new(new { Wrong = wrong is null ? null : FieldProblem.Capital(wrong), Link = link, To = Goal(to), Called = name }) { StatusCode = status };
    }

    private static bool Knows(HttpContext context) => context.User.IsOwn() || context.Device() is not null;

    private static string Goal(string? to) => to is not null && IsHere(to) ? to : "/";

    // A path of this app and of nothing else: browsers take // and /\ for another host.
    private static bool IsHere(string goal) =>
        goal.Length <= LongestGoal && goal.StartsWith('/') && !goal.StartsWith("//", StringComparison.Ordinal) && !goal.Contains('\\', StringComparison.Ordinal) && !goal.Any(char.IsControl);
}
