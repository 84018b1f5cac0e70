namespace Ringwright.Web.Security;

/// <summary>
/// Refuses requests that another site's page makes: anything with a foreign Origin, and WebSockets without one. Together
/// with host filtering this keeps a page in the same browser from reaching the app.
/// </summary>
internal static class OwnOriginOnly
{
    public static void UseOwnOriginOnly(this WebApplication app) => app.Use((context, next) =>
    {
        if (IsOwn(context)) return next(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return context.Response.WriteAsync("This address answers only to Ringwright’s own page.");
    });

    private static bool IsOwn(HttpContext context)
    {
        HttpRequest request = context.Request;
        string origin = request.Headers.Origin.ToString();
        if (origin.Length == 0) return !context.WebSockets.IsWebSocketRequest;
        return string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }
}
