namespace Ringwright.Web.Security;

/// <summary>
/// Headers that tell the browser to run nothing but this app's own files, to show it in no other page and to keep no copy of the
/// work. They are put on as an answer starts, so that refusals and faults carry them as well.
/// </summary>
internal static class ResponseHeaders
{
    public static void UseResponseHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        context.Response.OnStarting(Set, context);
        return next(context);
    });

    private static Task Set(object state)
    {
        var context = (HttpContext)state;
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy(context);
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        headers.TryAdd("Referrer-Policy", "no-referrer");
        // The user's work: whoever has the device next must not find it in the browser's store. The app's own files say otherwise.
        headers.TryAdd("Cache-Control", "no-store");
        return Task.CompletedTask;
    }

    // The host is named for browsers in which 'self' does not cover WebSockets; one that was not checked is not repeated.
    private static string Policy(HttpContext context) =>
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; " +
        $"connect-src 'self'{(context.HasKnownHost() ? $" ws://{context.Request.Host}" : "")}; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
}
