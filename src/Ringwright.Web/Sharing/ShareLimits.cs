using System.Net;
using System.Threading.RateLimiting;

namespace Ringwright.Web.Sharing;

/// <summary>How often other devices may ask. This machine may always.</summary>
internal static class ShareLimits
{
    /// <summary>Tries to pair in a minute, of one address and of all together.</summary>
    public const int TriesOfOne = 8, TriesOfAll = 24;

    // A page with its viewer asks for some thirty files; a finger on a drawing uses the socket, not requests.
    private const int DeviceBurst = 300, DevicePerSecond = 40, StrangersPerMinute = 60;
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    public static void AddShareLimits(this IServiceCollection services) => services.AddRateLimiter(o =>
    {
        o.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        o.OnRejected = (rejected, _) => new(TooMany(rejected.HttpContext, rejected.Lease));
        o.GlobalLimiter = PartitionedRateLimiter.CreateChained(
            PartitionedRateLimiter.Create<HttpContext, object>(Requests),
            PartitionedRateLimiter.Create<HttpContext, object>(Drawing),
            PartitionedRateLimiter.Create<HttpContext, object>(c => IsTry(c) ? Window(Remote(c), TriesOfOne) : None),
            PartitionedRateLimiter.Create<HttpContext, object>(c => IsTry(c) ? Window(IPAddress.Any, TriesOfAll) : None));
    });

    private static RateLimitPartition<object> None => RateLimitPartition.GetNoLimiter<object>("none");

    private static RateLimitPartition<object> Requests(HttpContext context) =>
        context.User.IsOwn() ? None
        : context.Device() is { } device ? RateLimitPartition.GetTokenBucketLimiter<object>(device.Id, _ => new() { TokenLimit = DeviceBurst, TokensPerPeriod = DevicePerSecond, ReplenishmentPeriod = TimeSpan.FromSeconds(1) })
        : Window(Remote(context), StrangersPerMinute);

    // Sheets and solids are drawn anew for each request; one device must not keep all processors busy with them.
    private static RateLimitPartition<object> Drawing(HttpContext context) =>
        context.Device() is { } device && context.Request.Path.StartsWithSegments(PieceEndpoints.Files) ? RateLimitPartition.GetConcurrencyLimiter<object>(device.Id, _ => new() { PermitLimit = 1, QueueLimit = 8 }) : None;

    private static RateLimitPartition<object> Window(IPAddress key, int permits) =>
        RateLimitPartition.GetFixedWindowLimiter<object>(key, _ => new() { PermitLimit = permits, Window = Minute });

    private static bool IsTry(HttpContext context) => !context.User.IsOwn() && HttpMethods.IsPost(context.Request.Method) && context.Request.Path == PairingEndpoints.Path;

    private static IPAddress Remote(HttpContext context) => context.Connection.RemoteIpAddress?.Plain() ?? IPAddress.None;

    private static Task TooMany(HttpContext context, RateLimitLease lease)
    {
        int seconds = lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan after) ? Math.Max(1, (int)Math.Ceiling(after.TotalSeconds)) : 1;
        context.Response.Headers.RetryAfter = seconds.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return ShareGate.Say(context, StatusCodes.Status429TooManyRequests, $"Too many requests; wait {seconds} s and try again.");
    }
}
