using System.Net;
using System.Security.Claims;

namespace Ringwright.Web.Sharing;

/// <summary>
/// Who asks: this machine, a device that was let in, or a stranger. Kept as the request's user, so that a circuit knows it as well.
/// </summary>
internal static class Visitor
{
    /// <summary>The cookie with a device's key. Plain HTTP, so it cannot be marked Secure.</summary>
    public const string Cookie = "ringwright-device";

    // A claim and no more: an identity that counts as authenticated would need a name of its own for form tokens.
    private static readonly Claim OwnMachine = new("ringwright/at", "own machine");
    private const string DeviceClaim = "ringwright/device";

    /// <summary>Whether a user sits at the machine that the app runs on.</summary>
    public static bool IsOwn(this ClaimsPrincipal user) => user.HasClaim(OwnMachine.Type, OwnMachine.Value);

    /// <summary>What the device is called at which a user sits; empty at this machine.</summary>
    public static string DeviceName(this ClaimsPrincipal user) => user.FindFirst(DeviceClaim)?.Value ?? "";

    /// <summary>Whether a request came over the own machine's listener, from the own machine.</summary>
    public static bool IsOwn(this ConnectionInfo connection) =>
        Equals(connection.LocalIpAddress?.Plain(), IPAddress.Loopback) && connection.RemoteIpAddress?.Plain() is { } remote && IPAddress.IsLoopback(remote);

    /// <summary>The device that asks; null for this machine and for strangers.</summary>
    public static Device? Device(this HttpContext context) => context.Features.Get<Device>();

    /// <summary>Finds out who asks.</summary>
    public static void UseVisitor(this WebApplication app)
    {
        LocalSharing sharing = app.Services.GetRequiredService<LocalSharing>();
        app.Use((context, next) =>
        {
            if (context.Connection.IsOwn()) context.User = new(new ClaimsIdentity([OwnMachine]));
            else if (sharing.Recognise(context.Request.Cookies[Cookie]) is { } device)
            {
                context.Features.Set(device);
                context.User = new(new ClaimsIdentity([new(DeviceClaim, device.Name)]));
            }

            return next(context);
        });
    }
}
