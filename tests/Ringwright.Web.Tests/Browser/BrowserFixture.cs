using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Ringwright.Web.Tests.Browser.BrowserFixture))]

namespace Ringwright.Web.Tests.Browser;

/// <summary>One browser for all tests; started when first asked for.</summary>
public sealed class BrowserFixture : IAsyncLifetime
{
    private static readonly string[] Flags =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--enable-unsafe-swiftshader"];

    private readonly Lazy<Task<IBrowser>> _browser;
    private IPlaywright? _playwright;

    public BrowserFixture() => _browser = new(Launch);

    internal Task<IBrowser> Browser => _browser.Value;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        if (_browser.IsValueCreated) await (await Browser).DisposeAsync();
        _playwright?.Dispose();
    }

    private async Task<IBrowser> Launch()
    {
        string path = InstalledBrowser.Path();
        Assertions.SetDefaultExpectTimeout(60_000);
        _playwright = await Playwright.CreateAsync();
        return await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = path, Args = Flags });
    }
}
