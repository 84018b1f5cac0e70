using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Ringwright.Web.Bench;
using Ringwright.Web.Library;

namespace Ringwright.Web.Tests;

/// <summary>
/// The app inside the test's own process, on a data folder and a port of its own: a second one costs a moment where a process of
/// its own costs seconds. Tests that kill it use <see cref="Browser.AppProcess"/>.
/// </summary>
public sealed class RunningApp : IAsyncLifetime
{
    private readonly TemporaryFolder _data = new();
    private readonly WebApplication _app;

    public RunningApp() => _app = WebServer.Build(0, _data.Path);

    private RunningApp(string dataFolder, int port) => _app = WebServer.Build(port, dataFolder);

    public Uri Address { get; private set; } = null!;

    public HttpClient Client { get; private set; } = null!;

    /// <summary>The windows that are kept open for its tests, by whether they draw in three dimensions.</summary>
    internal Dictionary<bool, Browser.OpenPage> Windows { get; } = [];

    internal T Service<T>()
        where T : notnull => _app.Services.GetRequiredService<T>();

    /// <summary>One that runs, for a single test; on a folder and a port that another one had before, if they are named.</summary>
    internal static async Task<RunningApp> Start(string? dataFolder = null, int port = 0)
    {
        RunningApp app = dataFolder is null ? new() : new(dataFolder, port);
        await app.InitializeAsync();
        return app;
    }

    /// <summary>Puts an example on the bench, in millimetres, as the page with the examples would.</summary>
    internal void Put(string example = "Two-wood disc")
    {
        Workbench bench = Service<Workbench>();
        bench.Show(UnitChoice.Millimetres);
        bench.Open(Service<Examples>().All.First(e => e.Name == example).Json, borrowed: true);
    }

    public async ValueTask InitializeAsync()
    {
        await _app.StartAsync(TestContext.Current.CancellationToken);
        Address = new(_app.Urls.First());
        Client = new() { BaseAddress = Address };
    }

    public async ValueTask DisposeAsync()
    {
        foreach (Browser.OpenPage window in Windows.Values) await window.Close();
        Client.Dispose();
        // Stopped first: until then it may still write into its folder. What is open is not waited for.
        await _app.StopAsync(new CancellationToken(canceled: true));
        await _app.DisposeAsync();
        _data.Dispose();
    }
}
