using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The app's page in a window of its own. Closing it fails the test when the console showed an error.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    // A browser without a graphics card reads what WebGL draws back into its page, and says so.
    private const string ReadBack = "GPU stall due to ReadPixels";

    private readonly IBrowserContext _context;
    private readonly List<string> _errors = [];

    private OpenPage(IBrowserContext context, IPage page)
    {
        _context = context;
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" && !message.Text.Contains(ReadBack, StringComparison.Ordinal)) _errors.Add(message.Text);
        };
        page.PageError += (_, error) => _errors.Add(error);
    }

    public IPage Page { get; }

    /// <summary>Whether errors in the console are part of the test, as when the server is killed.</summary>
    public bool ErrorsExpected { get; set; }

    public ILocator Wedges => Page.Locator(".wedges polygon");

    public ILocator Undo => Page.Locator("#undo");

    public static async Task<OpenPage> Open(IBrowser browser, Uri address, int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light, string? script = null)
    {
        IBrowserContext context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultTimeout(15_000);
        var open = new OpenPage(context, await context.NewPageAsync());
        if (script is not null) await open.Page.AddInitScriptAsync(script);
        await open.Page.GotoAsync(address.ToString());
        await open.Live();
        return open;
    }

    /// <summary>Waits until the page answers.</summary>
    public Task Live() => Page.Locator(".page:not([inert])").WaitForAsync();

    public ILocator Field(string key) => Page.Locator("#field-" + key);

    /// <summary>The large value under a title.</summary>
    public ILocator Key(string title) => Page.Locator(".key", new() { Has = Page.GetByRole(AriaRole.Heading, new() { NameRegex = new("^" + title) }) }).Locator(".key-value");

    /// <summary>Puts the example on the bench, in millimetres.</summary>
    public async Task StartOver()
    {
        await Page.GetByRole(AriaRole.Button, new() { Name = "Example" }).ClickAsync();
        await Page.GetByRole(AriaRole.Radio, new() { Name = "mm", Exact = true }).CheckAsync();
        await Assertions.Expect(Field("segments")).ToHaveValueAsync("24");
        await Assertions.Expect(Field("diameter")).ToHaveValueAsync("19 mm");
    }

    public async ValueTask DisposeAsync()
    {
        await _context.CloseAsync();
        if (!ErrorsExpected) Assert.Empty(_errors);
    }
}
