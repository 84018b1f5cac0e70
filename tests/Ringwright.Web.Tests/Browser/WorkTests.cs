using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The stations at the machines: one way through each.</summary>
public sealed class WorkTests(BrowserFixture fixture) : IDisposable
{
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task At_the_saw_one_counts_on_without_the_network_and_nothing_is_lost()
    {
        RunningApp app = await RunningApp.Start(_data.Path);
        app.Put();
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/saw");
        open.ErrorsExpected = true;
        await Expect(open.Page.Locator(".stage .strip-wedge.is-next")).ToHaveCountAsync(1);
        string ring = (await open.Page.GetByRole(AriaRole.Link, new() { Name = "At the saw" }).GetAttributeAsync("href"))!;
        await open.Page.GotoAsync(new Uri(app.Address, ring).ToString());
        await Tap("Sawn");
        await Tap("Sawn");
        await Tap("Lost one");
        await Expect(Out("good")).ToHaveTextAsync("2");
        await Expect(Out("how")).ToHaveTextAsync("Fence 1");
        await Tap("Undo");
        await Expect(Out("how")).ToHaveTextAsync("Fence 2");
        await Expect(Out("net")).ToHaveTextAsync("In step with the bench.");
        // The page and its sheet are kept by now, or soon.
        await open.Page.WaitForFunctionAsync("async () => { const shelf = await caches.open('ringwright-saw-1'); return (await shelf.keys()).some(r => r.url.endsWith('sheet.pdf')) && !!await shelf.match(location.href); }");
        await app.DisposeAsync();
        await open.Page.ReloadAsync();
        await Expect(Out("good")).ToHaveTextAsync("2");
        await Tap("Sawn");
        await Expect(Out("net")).ToContainTextAsync("1 tap is kept here");
        await using RunningApp again = await RunningApp.Start(_data.Path, app.Address.Port);
        await Expect(Out("net")).ToHaveTextAsync("In step with the bench.", new() { Timeout = 20_000 });
        await open.At("/saw");
        await Expect(open.Page.Locator(".count-now").First).ToContainTextAsync("3 of 12 good");
        await open.Button("Add to the record").ClickAsync();
        await Expect(open.Page.GetByText("3 sawn and 0 lost are in the record.")).ToBeVisibleAsync();

        ILocator Out(string name) => open.Page.Locator($"[data-out={name}]");
        Task Tap(string name) => open.Button(name, exact: true).ClickAsync();
    }

    [Fact]
    public async Task What_is_seen_says_which_fence_and_a_caliper_that_types_lays_the_ring()
    {
        await using RunningApp app = await RunningApp.Start();
        app.Put();
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/shape");
        await open.Field("segments").FillAsync("8");
        await open.Station("Fit");
        await open.Page.Locator("#desk-fit-gap").FillAsync("0.6 mm");
        await open.Button("Add this reading").ClickAsync();
        await Expect(open.Key("Move both fences")).ToContainTextAsync("mm");
        await Expect(open.Page.Locator(".key-note").First).ToContainTextAsync("away from square");
        await open.Page.Locator("#desk-fit-gap").FillAsync("wide");
        await open.Button("Add this reading").ClickAsync();
        await Expect(open.Page.Locator("[role=alert].field-problem")).ToBeVisibleAsync();
        // As a caliper sends them: figures and Enter, again and again.
        int rows = await open.Page.Locator(".caliper-row").CountAsync();
        await open.Page.Locator("#caliper-rim-1").FocusAsync();
        for (int i = 0; i < rows; i++)
        {
            await open.Page.Keyboard.TypeAsync(i % 2 == 0 ? "7.94" : "7.96");
            await open.Page.Keyboard.PressAsync("Enter");
            await open.Page.Keyboard.TypeAsync("0.1");
            await open.Page.Keyboard.PressAsync("Enter");
        }

        await Expect(open.Page.GetByText($"{rows} of {rows} measured")).ToBeVisibleAsync();
        await open.Button("Choose the best").ClickAsync();
        await Expect(open.Page.GetByText("Lay them counter-clockwise")).ToBeVisibleAsync();
        await open.Page.Locator("#forecast-rings").SelectOptionAsync("200");
        await open.Button("Simulate them").ClickAsync();
        await Expect(open.Page.GetByText("of 200 rings")).ToBeVisibleAsync();
        await open.Button("Face done").ClickAsync();
        await Expect(open.Page.Locator(".sander-count")).ToContainTextAsync("1 of");
    }

    [Fact]
    public async Task Glue_and_lathe_are_ticked_off_and_the_stack_grows()
    {
        await using RunningApp app = await RunningApp.Start();
        app.Put("Bowl with a band");
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/glue");
        ILocator loose = open.Page.Locator(".stage .grown-loose");
        await Expect(loose).ToHaveCountAsync(24);
        // By keys alone: what is ticked goes to Done, and the next takes its place.
        ILocator status = open.Page.Locator("section[aria-labelledby=order-heading] > [role=status]");
        for (int done = 1; done <= 6; done++)
        {
            await open.Page.Locator(".tick input").First.PressAsync("Space");
            await Expect(status).ToContainTextAsync($"{done} of ");
        }

        await open.Page.Locator("#glue-done > summary").PressAsync("Enter");
        await Expect(open.Page.Locator("#glue-done .tick input:checked")).ToHaveCountAsync(6);
        await open.Page.Locator("summary", new() { HasText = "Later" }).ClickAsync();
        await open.Page.Locator(".tick", new() { HasText = "Base: flatten" }).GetByRole(AriaRole.Checkbox).CheckAsync();
        await open.Button("Start", exact: true).ClickAsync();
        await Expect(open.Page.Locator(".big-clock-face")).Not.ToHaveTextAsync("10:00");
        await Expect(open.Page.Locator(".chart tbody tr")).Not.ToHaveCountAsync(0);
        await open.Station("Lathe");
        await Expect(open.Key("Rough blank, at most")).ToContainTextAsync("rpm");
        await open.Page.Locator(".tick input").First.CheckAsync();
        await Expect(open.Page.Locator(".tick.is-done")).ToHaveCountAsync(1);
        await open.At("/lathe");
        await Expect(open.Page.Locator(".tick input").First).ToBeCheckedAsync();
        await Expect(open.Page.Locator(".stage .paper-picture svg")).ToBeVisibleAsync();
    }
}
