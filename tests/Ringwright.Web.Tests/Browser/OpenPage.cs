using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The app's page in a window. Letting it go fails the test when the console showed an error.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    // A browser without a graphics card reads what WebGL draws back into its page, and says so.
    private const string ReadBack = "GPU stall due to ReadPixels";

    // Software WebGL takes longer over one picture than the rest of the page over all it does. Where the solid is not what is
    // looked at, the browser has none, and the page shows the flat pictures it has for that.
    private const string NoWebGl = "const own = HTMLCanvasElement.prototype.getContext; HTMLCanvasElement.prototype.getContext = function (kind, ...rest) { return kind.startsWith('webgl') ? null : own.call(this, kind, ...rest); };";

    private readonly IBrowserContext _context;
    private readonly Uri _address;
    private readonly List<string> _errors = [];
    private bool _kept;

    private OpenPage(IBrowserContext context, IPage page, Uri address)
    {
        _context = context;
        _address = address;
        Page = page;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" && !message.Text.Contains(ReadBack, StringComparison.Ordinal)) _errors.Add($"{message.Text} {message.Location}");
        };
        page.PageError += (_, error) => _errors.Add(error);
    }

    public IPage Page { get; }

    /// <summary>Whether errors in the console are part of the test, as when the server is killed.</summary>
    public bool ErrorsExpected { get; set; }

    public ILocator Wedges => Page.Locator(".wedges polygon");

    public ILocator Undo => Page.Locator("#undo");

    /// <summary>Opens a page and waits until it answers.</summary>
    /// <param name="fixture">The browser.</param>
    /// <param name="address">Where the app answers.</param>
    /// <param name="path">Which of its pages.</param>
    /// <param name="width">Of the window, px.</param>
    /// <param name="height">Of the window, px.</param>
    /// <param name="scheme">What the system asks for.</param>
    /// <param name="solid">Whether the browser draws in three dimensions.</param>
    /// <param name="live">Whether the page has a thread to the server to wait for.</param>
    /// <param name="before">What is done before the page is asked for.</param>
    /// <param name="first">What is done before it answers, as letting a device in.</param>
    public static async Task<OpenPage> Open(
        BrowserFixture fixture, Uri address, string path = "/", int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light, bool solid = false, bool live = true, Func<OpenPage, Task>? before = null, Func<IPage, Task>? first = null)
    {
        IBrowserContext context = await (await fixture.Browser).NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultTimeout(60_000);
        var open = new OpenPage(context, await context.NewPageAsync(), address);
        if (!solid) await open.Page.AddInitScriptAsync(NoWebGl);
        if (before is not null) await before(open);
        await open.Page.GotoAsync(new Uri(address, path).ToString());
        if (first is not null) await first(open.Page);
        if (live) await open.Live();
        return open;
    }

    /// <summary>
    /// Opens a page in the window that the tests of one app share: what it loaded and compiled is there already. For tests that
    /// leave nothing behind in the browser.
    /// </summary>
    public static async Task<OpenPage> In(BrowserFixture fixture, RunningApp app, string path, int width = 1440, int height = 900, bool solid = false, bool live = true)
    {
        if (!app.Windows.TryGetValue(solid, out OpenPage? open))
        {
            open = await Open(fixture, app.Address, path, width, height, solid: solid, live: live);
            open._kept = true;
            app.Windows.Add(solid, open);
            return open;
        }

        open.ErrorsExpected = false;
        open._errors.Clear();
        await open.Page.SetViewportSizeAsync(width, height);
        await open.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
        await open.At(path, live);
        return open;
    }

    /// <summary>Waits until the page answers.</summary>
    public Task Live() => Page.Locator(".page:not([inert])").WaitForAsync();

    /// <summary>Goes to a page of the app by its address, such as <c>/timber</c>.</summary>
    public async Task At(string path, bool live = true)
    {
        await Page.GotoAsync(new Uri(_address, path).ToString());
        if (live) await Live();
    }

    /// <summary>Goes to a station by its row.</summary>
    public Task Station(string name) => Page.Locator(".stations").GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync();

    /// <summary>Chooses how the piece is looked at.</summary>
    public Task View(string name) => Page.Locator(".stage-views").GetByRole(AriaRole.Radio, new() { Name = name, Exact = true }).CheckAsync();

    public ILocator Field(string key) => Page.Locator("#field-" + key);

    public ILocator Button(string name, bool exact = false) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = exact });

    /// <summary>The large value under a title.</summary>
    public ILocator Key(string title) => Page.Locator(".key", new() { Has = Page.GetByRole(AriaRole.Heading, new() { NameRegex = new("^" + title) }) }).Locator(".key-value");

    /// <summary>Waits for an address that the page itself goes to.</summary>
    public Task IsAt(string path) => Assertions.Expect(Page).ToHaveURLAsync(new Uri(_address, path).ToString());

    /// <summary>Puts an example on the bench, in millimetres, and shows its shape.</summary>
    public async Task StartOver(string example = "Two-wood disc")
    {
        await At("/pieces");
        await Page.Locator(".example", new() { Has = Page.GetByText(example, new() { Exact = true }) }).ClickAsync();
        await IsAt("/shape");
        await Page.GetByRole(AriaRole.Radio, new() { Name = "mm", Exact = true }).CheckAsync();
        await Assertions.Expect(Field("name").First).ToHaveValueAsync(example);
    }

    /// <summary>Drags a point of the outline.</summary>
    /// <param name="handle">Which: <c>outer-3</c>.</param>
    /// <param name="right">How far, px.</param>
    /// <param name="down">How far, px.</param>
    public async Task Drag(string handle, float right, float down)
    {
        ILocator dot = Page.Locator($"[data-handle='{handle}'] .handle-dot");
        await dot.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = (await dot.BoundingBoxAsync())!;
        (float x, float y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await Page.Mouse.MoveAsync(x, y);
        await Page.Mouse.DownAsync();
        await Page.Mouse.MoveAsync(x + right, y + down, new() { Steps = 6 });
        await Page.Mouse.UpAsync();
    }

    /// <summary>Tabs on until an element has the focus. Whatever has it on the way must look other than without it, and lie clear.</summary>
    public async Task TabTo(string element)
    {
        const int Most = 250;
        ILocator wanted = Page.Locator(element).First;
        await wanted.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        for (int i = 0; i < Most; i++)
        {
            await Page.Keyboard.PressAsync("Tab");
            // Asked of the wanted one, for a page may be drawn anew on the way.
            string? found = await wanted.EvaluateAsync<string>("""
                (wanted) => {
                  const now = document.activeElement;
                  if (!now || now === document.body) return '';
                  const look = () => [now, now.nextElementSibling, ...now.children].filter(Boolean).map((e) => {
                    const s = getComputedStyle(e);
                    return [s.outlineStyle, s.outlineWidth, s.outlineColor, s.boxShadow, s.stroke, s.strokeWidth, s.fill, s.backgroundColor].join();
                  }).join('|');
                  const box = now.getBoundingClientRect();
                  if (box.bottom <= 0 || box.top >= innerHeight) return `out of sight: ${now.outerHTML}`;
                  const over = document.elementFromPoint(Math.min(innerWidth - 1, Math.max(0, box.left + box.width / 2)), box.top + box.height / 2);
                  if (over?.closest('.foot') && !now.closest('.foot')) return `under the foot: ${now.outerHTML}`;
                  const focused = look();
                  now.blur();
                  const calm = look();
                  now.focus({ preventScroll: true });
                  if (focused === calm) return `looks no other with the focus: ${now.outerHTML}`;
                  return now === wanted ? 'there' : '';
                }
                """);
            if (found == "there") return;
            Assert.Equal("", found);
        }

        Assert.Fail($"Tab does not come to {element}.");
    }

    /// <summary>Closes a window that was shared.</summary>
    public Task Close() => _context.CloseAsync();

    public async ValueTask DisposeAsync()
    {
        if (!_kept) await _context.CloseAsync();
        if (!ErrorsExpected) Assert.True(_errors.Count == 0, string.Join('\n', _errors));
    }
}
