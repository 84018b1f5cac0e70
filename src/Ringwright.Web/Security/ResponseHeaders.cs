namespace Ringwright.Web.Security;

/// <summary>Headers that tell the browser to run nothing but this app's own files and to show it in no other page.</summary>
internal static class ResponseHeaders
{
    public static void UseResponseHeaders(this WebApplication app) => app.Use((context, next) =>
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy(context.Request.Host);
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
        return next(context);
    });

    // The host was checked by host filtering; it is named for browsers in which 'self' does not cover WebSockets.
    private static string Policy(HostString host) =>
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; " +
        $"connect-src 'self' ws://{host}; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";
}
