using System.Net;
using Ringwright.Web.Sharing;

namespace Ringwright.Web.Tests.Sharing;

/// <summary>The app, shared at another address of this same machine, so that nothing leaves it.</summary>
internal sealed class SharedApp : IAsyncDisposable
{
    private readonly RunningApp _app = new();

    private SharedApp()
    {
    }

    public RunningApp Running => _app;

    public Uri Own => _app.Address;

    public Uri Shared => Sharing.Address!;

    public LocalSharing Sharing => _app.Service<LocalSharing>();

    public T Service<T>()
        where T : notnull => _app.Service<T>();

    public Web.Bench.Workbench Bench => _app.Service<Web.Bench.Workbench>();

    public static async Task<SharedApp> Start(bool share = true)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsWindows(), "Only 127.0.0.1 of the loopback addresses is usual on this system.");
        var app = new SharedApp();
        await app._app.InitializeAsync();
        if (share) await app.Sharing.Start(IPAddress.Parse("127.0.0.2"));
        return app;
    }

    /// <summary>A browser on another device: keeps cookies, follows nothing.</summary>
    /// <param name="from">The device's address.</param>
    public OtherDevice Device(string from = "127.0.0.3") => new(Shared, IPAddress.Parse(from));

    public ValueTask DisposeAsync() => _app.DisposeAsync();
}
