namespace Ringwright.Web.Tests.Browser;

/// <summary>One app for a class of tests, whose windows all show its bench; started when first asked for.</summary>
public sealed class AppFixture : IAsyncDisposable
{
    private readonly TemporaryFolder _data = new();
    private readonly Lazy<Task<AppProcess>> _app;

    public AppFixture() => _app = new(() => AppProcess.Start(_data.Path));

    internal Task<AppProcess> App => _app.Value;

    public async ValueTask DisposeAsync()
    {
        if (_app.IsValueCreated) (await App).Dispose();
        _data.Dispose();
    }
}
