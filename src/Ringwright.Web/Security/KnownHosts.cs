using System.Net;
using Ringwright.Web.Sharing;

namespace Ringwright.Web.Security;

/// <summary>
/// Refuses requests that name another host than the one they came to: a name that somebody made point here (DNS rebinding) would
/// make a foreign page look like our own. This machine has its usual names, a shared address only its own digits.
/// </summary>
internal static class KnownHosts
{
    private static readonly object KnownMark = new();
    private static readonly ImmutableHashSet<string> OfOwnMachine = ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, "localhost", "127.0.0.1", "[::1]");

    public static void UseKnownHosts(this WebApplication app)
    {
        LocalSharing sharing = app.Services.GetRequiredService<LocalSharing>();
        app.Use((context, next) =>
            context.Connection.IsOwn()
                ? OfOwnMachine.Contains(context.Request.Host.Host) ? Known(context, next) : Refuse(context, "at localhost")
                : At(context, sharing) is not { } place ? Refuse(context, "on its own machine")
                : context.Request.Host == new HostString(place.Address.ToString(), place.Port) ? Known(context, next) : Refuse(context, "at the address that it shows for sharing"));
    }

    /// <summary>Whether the host that a request names was found to be ours.</summary>
    public static bool HasKnownHost(this HttpContext context) => context.Items.ContainsKey(KnownMark);

    private static Task Known(HttpContext context, RequestDelegate next)
    {
        context.Items[KnownMark] = true;
        return next(context);
    }

    // Where it came in, as long as that is shared.
    private static IPEndPoint? At(HttpContext context, LocalSharing sharing) =>
        context.Connection.LocalIpAddress is { } local && new IPEndPoint(local.Plain(), context.Connection.LocalPort) is var at && sharing.Places.Contains(at) ? at : null;

    private static Task Refuse(HttpContext context, string where) =>
        ShareGate.Say(context, StatusCodes.Status400BadRequest, $"Ringwright answers only {where}.");
}
