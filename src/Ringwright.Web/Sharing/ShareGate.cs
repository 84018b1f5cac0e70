using Microsoft.AspNetCore.Http.Features;

namespace Ringwright.Web.Sharing;

/// <summary>What may be had from other devices: nothing but the pairing page before they are let in, and then all but sharing itself.</summary>
internal static class ShareGate
{
    private const string CircuitPath = "/_blazor";

    // The pairing page and what it looks like.
    private static readonly ImmutableHashSet<string> ForStrangers = [PairingEndpoints.Path, "/css/paper.css", "/css/sharing.css", "/mark.svg"];

    public static void UseShareGate(this WebApplication app) => app.Use((context, next) =>
        context.User.IsOwn() ? next(context)
        : context.Device() is { } device ? ForDevice(context, device, next)
        : ForStranger(context, next));

    /// <summary>An answer of one sentence.</summary>
    public static Task Say(HttpContext context, int status, string sentence)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(sentence);
    }

    private static Task ForStranger(HttpContext context, RequestDelegate next)
    {
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit) limit.MaxRequestBodySize = PairingEndpoints.LargestForm;
        if (ForStrangers.Contains(context.Request.Path.Value ?? "")) return next(context);
        if (!HttpMethods.IsGet(context.Request.Method) || context.WebSockets.IsWebSocketRequest)
            return Say(context, StatusCodes.Status401Unauthorized, "This device was not let in; open this address in a browser and type the code.");
        // After pairing it goes on to what was asked for, such as the sheet that a label leads to.
        context.Response.Redirect(PairingEndpoints.LinkTo(context.Request.Path + context.Request.QueryString));
        return Task.CompletedTask;
    }

    private static async Task ForDevice(HttpContext context, Device device, RequestDelegate next)
    {
        if (context.Request.Path.StartsWithSegments(SharingPage.Path, StringComparison.OrdinalIgnoreCase))
        {
            await Say(context, StatusCodes.Status403Forbidden, SharingPage.OnlyThere);
            return;
        }

        bool socket = context.WebSockets.IsWebSocketRequest;
        // Windows are counted by their sockets; the way around sockets is closed.
        if (!socket && IsCircuit(context.Request.Path))
        {
            await Say(context, StatusCodes.Status400BadRequest, "A page of Ringwright needs a WebSocket; let it through whatever stands between.");
            return;
        }

        if (socket && !device.OpenWindow())
        {
            await Say(context, StatusCodes.Status429TooManyRequests, $"This device has {Device.MostWindows} windows of Ringwright open; close one.");
            return;
        }

        try
        {
            // Removed, or sharing stopped: what is under way ends as well.
            await using CancellationTokenRegistration end = device.Ended.Register(context.Abort);
            await next(context);
        }
        finally
        {
            if (socket) device.CloseWindow();
        }
    }

    // Routing takes a slash at the end for the same address.
    private static bool IsCircuit(PathString path) => string.Equals(path.Value?.TrimEnd('/'), CircuitPath, StringComparison.OrdinalIgnoreCase);
}
