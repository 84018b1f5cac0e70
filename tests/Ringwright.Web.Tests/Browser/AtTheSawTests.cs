using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The page at the saw on two tablets of their own, with the bench there and gone.</summary>
public sealed class AtTheSawTests(BrowserFixture fixture, RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task Two_tablets_count_on_without_the_bench_and_lose_no_tap()
    {
        using var data = new TemporaryFolder();
        AppProcess app = await AppProcess.Start(data.Path);
        int port = app.Port;
        try
        {
            await using Tablet one = await Tablet.Open(await fixture.Browser, new Uri(app.Address, "/saw/Disc"));
            await using Tablet two = await Tablet.Open(await fixture.Browser, new Uri(app.Address, "/saw/Disc"));
            Assert.Matches(@"/saw/\d+/1$", one.Page.Url);
            await one.Tap("Sawn", 2);
            await Expect(two.Out("good")).ToHaveTextAsync("2");

            // The bench is gone. Each counts by itself, and the page can be opened anew.
            await app.Kill();
            await one.Tap("Sawn", 3);
            await two.Tap("Sawn", 2);
            await two.Tap("Lost one", 1);
            await two.Tap("Undo", 1);
            await Expect(one.Out("net")).ToContainTextAsync("3 taps are kept here");
            await one.Page.ReloadAsync();
            await Expect(one.Out("good")).ToHaveTextAsync("5");
            await one.Tap("Sawn", 1);
            await Expect(two.Out("good")).ToHaveTextAsync("4");

            // It is back: both come to the same, all taps of both.
            app.Dispose();
            app = await AppProcess.Start(data.Path, "--port", port.ToString(System.Globalization.CultureInfo.InvariantCulture));
            foreach (Tablet tablet in new[] { one, two })
            {
                await Expect(tablet.Out("good")).ToHaveTextAsync("8");
                await Expect(tablet.Out("net")).ToHaveTextAsync("In step with the bench.");
            }

            // At the desk it stands as well, each step to be taken back.
            await using OpenPage desk = await OpenPage.Open(fixture, app.Address, "/saw");
            await Expect(desk.Page.Locator(".count-now").First).ToContainTextAsync("8 of 12 good");
            await desk.Page.Locator(".floor-steps > summary").ClickAsync();
            await desk.Page.Locator(".floor-step-list li", new() { HasText = "4 × sawn" }).GetByRole(AriaRole.Button).ClickAsync();
            await Expect(desk.Page.Locator(".count-now").First).ToContainTextAsync("4 of 12 good");
            await Expect(one.Out("good")).ToHaveTextAsync("4");
        }
        finally
        {
            app.Dispose();
        }
    }

    [Fact]
    public async Task A_tablet_that_lets_its_screen_go_dark_says_so()
    {
        app.Put();
        await using Tablet refuses = await Tablet.Open(await fixture.Browser, new Uri(app.Address, "/saw/Disc"), "Object.defineProperty(navigator, 'wakeLock', { value: { request: () => Promise.reject(new Error('no')) } })");
        await Expect(refuses.Out("awake")).ToContainTextAsync("does not keep its screen on");
        await using Tablet stays = await Tablet.Open(await fixture.Browser, new Uri(app.Address, "/saw/Disc"), "Object.defineProperty(navigator, 'wakeLock', { value: { request: (kind) => { window.asked = kind; return Promise.resolve({ released: false }); } } })");
        Assert.Equal("screen", await stays.Page.EvaluateAsync<string>("window.asked"));
        await Expect(stays.Out("awake")).ToBeEmptyAsync();
    }

    [Fact]
    public async Task Every_target_at_the_saw_is_64_px_and_at_the_sander_44()
    {
        const string Small = "(least) => [...document.querySelectorAll('button, a, summary, input:not([type=radio]), select')].filter((e) => e.checkVisibility() && e.closest('.saw-body, .sander, .caliper')).map((e) => [e.textContent || e.id, Math.round(e.getBoundingClientRect().width), Math.round(e.getBoundingClientRect().height)]).filter(([, w, h]) => w < least || h < least).map((e) => e.join(' '))";
        app.Put();
        await using Tablet tablet = await Tablet.Open(await fixture.Browser, new Uri(app.Address, "/saw/Disc"));
        await using OpenPage desk = await OpenPage.In(fixture, app, "/fit");
        await Expect(desk.Button("Face done")).ToBeVisibleAsync();
        foreach ((int width, ColorScheme scheme) in ((int, ColorScheme)[])[(1440, ColorScheme.Light), (820, ColorScheme.Dark), (390, ColorScheme.Light)])
        {
            foreach ((IPage page, int least) in ((IPage, int)[])[(tablet.Page, 64), (desk.Page, 44)])
            {
                await page.SetViewportSizeAsync(width, 1100);
                await page.EmulateMediaAsync(new() { ColorScheme = scheme });
                Assert.Empty(await page.EvaluateAsync<string[]>(Small, least));
                Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
            }
        }
    }

    [Fact]
    public async Task A_caliper_that_types_goes_from_field_to_field()
    {
        app.Put();
        await using OpenPage desk = await OpenPage.In(fixture, app, "/fit");
        await desk.Page.Locator("#caliper-rim-1").FocusAsync();
        foreach (string typed in new[] { "2,61", "0.12", "2,60", "0,1" })
        {
            await desk.Page.Keyboard.TypeAsync(typed);
            await desk.Page.Keyboard.PressAsync("Enter");
        }

        await Expect(desk.Page.Locator("#caliper-tip-2")).ToHaveValueAsync("0,1");
        await Expect(desk.Page.Locator("section[aria-labelledby=caliper-heading] [role=status]").First).ToContainTextAsync("2 of 30 measured. Next: wedge 3");
        Assert.Equal("caliper-rim-3", await desk.Page.EvaluateAsync<string>("document.activeElement.id"));
    }

    /// <summary>The page at the saw, which has no circuit.</summary>
    private sealed class Tablet(IBrowserContext context, IPage page) : IAsyncDisposable
    {
        public IPage Page => page;

        public static async Task<Tablet> Open(IBrowser browser, Uri address, string? script = null)
        {
            IBrowserContext context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 820, Height = 1100 }, HasTouch = true });
            context.SetDefaultTimeout(60_000);
            IPage page = await context.NewPageAsync();
            if (script is not null) await page.AddInitScriptAsync(script);
            await page.GotoAsync(address.ToString());
            await Expect(page.Locator("[data-out=net]")).ToHaveTextAsync("In step with the bench.");
            // Kept for when the bench is gone.
            await page.WaitForFunctionAsync("async () => (await caches.keys()).length > 0 && !!(await caches.match(location.href)) && !!(await caches.match(document.querySelector('script[src*=at-the-saw]').src))");
            return new(context, page);
        }

        public ILocator Out(string name) => page.Locator($"[data-out={name}]");

        public async Task Tap(string button, int times)
        {
            for (int i = 0; i < times; i++) await page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).TapAsync();
        }

        public async ValueTask DisposeAsync() => await context.CloseAsync();
    }
}
