using Ringwright.Web.Sharing;

namespace Ringwright.Web.Security;

/// <summary>
/// Refuses requests that another site's page makes: anything with a foreign Origin or that the browser says comes from another
/// site, and WebSockets and changes without an Origin. Together with <see cref="KnownHosts"/> this keeps a page in the same browser
/// from reaching the app.
/// </summary>
internal static class OwnOriginOnly
{
    // Sent only to this machine's own address: browsers leave it away where there is no encryption.
    private const string FetchSite = "Sec-Fetch-Site";

    public static void UseOwnOriginOnly(this WebApplication app) => app.Use((context, next) =>
        IsOwn(context) ? next(context) : ShareGate.Say(context, StatusCodes.Status403Forbidden, "This address answers only to Ringwright’s own page."));

    private static bool IsOwn(HttpContext context)
    {
        HttpRequest request = context.Request;
        if (request.Headers[FetchSite].ToString() is not ("" or "same-origin" or "none")) return false;
        string origin = request.Headers.Origin.ToString();
        if (origin.Length == 0) return IsRead(request.Method) && !context.WebSockets.IsWebSocketRequest;
        return string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }

    private static bool IsRead(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method);
}
