using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The app's page in a window of its own. Closing it fails the test when the console showed an error.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    // A browser without a graphics card reads what WebGL draws back into its page, and says so.
    private const string ReadBack = "GPU stall due to ReadPixels";

    private readonly IBrowserContext _context;
    private readonly Uri _address;
    private readonly List<string> _errors = [];

    private OpenPage(IBrowserContext context, IPage page, Uri address)
    {
        _context = context;
        _address = address;
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

    public static async Task<OpenPage> Open(IBrowser browser, Uri address, int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light, string? script = null, Func<IPage, Task>? first = null)
    {
        IBrowserContext context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultTimeout(60_000);
        var open = new OpenPage(context, await context.NewPageAsync(), address);
        if (script is not null) await open.Page.AddInitScriptAsync(script);
        await open.Page.GotoAsync(address.ToString());
        if (first is not null) await first(open.Page);
        await open.Live();
        return open;
    }

    /// <summary>Waits until the page answers.</summary>
    public Task Live() => Page.Locator(".page:not([inert])").WaitForAsync();

    /// <summary>Goes to a page of the app by its address, such as <c>/timber</c>.</summary>
    public async Task At(string path)
    {
        await Page.GotoAsync(new Uri(_address, path).ToString());
        await Live();
    }

    /// <summary>Goes to a station by its row.</summary>
    public Task Station(string name) => Page.Locator(".stations").GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync();

    /// <summary>Chooses how the piece is looked at.</summary>
    public Task View(string name) => Page.Locator(".stage-views").GetByRole(AriaRole.Radio, new() { Name = name, Exact = true }).CheckAsync();

    public ILocator Field(string key) => Page.Locator("#field-" + key);

    public ILocator Button(string name, bool exact = false) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = exact });

    /// <summary>The large value under a title.</summary>
    public ILocator Key(string title) => Page.Locator(".key", new() { Has = Page.GetByRole(AriaRole.Heading, new() { NameRegex = new("^" + title) }) }).Locator(".key-value");

    /// <summary>Puts an example on the bench, in millimetres, and shows its shape.</summary>
    public async Task StartOver(string example = "Two-wood disc")
    {
        await At("/pieces");
        await Page.Locator(".example", new() { Has = Page.GetByText(example, new() { Exact = true }) }).ClickAsync();
        await Page.WaitForURLAsync("**/shape");
        await Page.GetByRole(AriaRole.Radio, new() { Name = "mm", Exact = true }).CheckAsync();
        await Assertions.Expect(Field("name").First).ToHaveValueAsync(example);
    }

    public async ValueTask DisposeAsync()
    {
        await _context.CloseAsync();
        if (!ErrorsExpected) Assert.True(_errors.Count == 0, string.Join('\n', _errors));
    }
}
