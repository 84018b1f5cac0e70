using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;

namespace Ringwright.Web.Tests;

/// <summary>The app inside the test's own process, on a data folder and a port of its own.</summary>
public sealed class RunningApp : IAsyncLifetime
{
    private readonly TemporaryFolder _data = new();
    private readonly WebApplication _app;

    public RunningApp() => _app = WebServer.Build(0, _data.Path);

    public Uri Address { get; private set; } = null!;

    public HttpClient Client { get; private set; } = null!;

    internal T Service<T>()
        where T : notnull => _app.Services.GetRequiredService<T>();

    public async ValueTask InitializeAsync()
    {
        await _app.StartAsync(TestContext.Current.CancellationToken);
        Address = new(_app.Urls.First());
        Client = new() { BaseAddress = Address };
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        // Stopped first: until then it may still write into its folder. What is open is not waited for.
        await _app.StopAsync(new CancellationToken(canceled: true));
        await _app.DisposeAsync();
        _data.Dispose();
    }
}
