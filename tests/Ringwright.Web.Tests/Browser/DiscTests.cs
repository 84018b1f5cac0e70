using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The simple disc, in a real browser against the real app: few numbers on the screen, the picture beside them.</summary>
public class DiscTests(BrowserFixture fixture, RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task A_disc_is_a_few_numbers_and_its_saw_settings_one_station_on()
    {
        await using OpenPage open = await Start();
        await Expect(open.Wedges).ToHaveCountAsync(24);
        await Expect(open.Page.Locator("[data-bore]")).ToHaveCountAsync(1);
        string[] fills = await open.Wedges.EvaluateAllAsync<string[]>("all => [...new Set(all.map(p => p.getAttribute('fill')))]");
        Assert.Equal(2, fills.Length);
        // Segments, diameter, height, bore, tip, board width, two woods, and the piece's name.
        await Expect(open.Page.Locator(".page input[type=text]:visible")).ToHaveCountAsync(9);
        await open.Station("Saw");
        await Expect(open.Key("Rip to")).ToHaveTextAsync("9.5mm");
        await Expect(open.Key("Each fence at")).ToHaveTextAsync("7.5°");
        await open.Page.Locator("#why-stop summary").ClickAsync();
        await Expect(open.Page.Locator("#why-stop .why")).ToContainTextAsync("2·9.5 mm·tan(7.5°) + 2·0.05 mm/cos(7.5°) = 2.6 mm");
    }

    [Fact]
    public async Task Numbers_are_typed_as_people_write_them_and_draw_anew()
    {
        await using OpenPage open = await Start();
        await open.Field("segments").FillAsync("18");
        await Expect(open.Wedges).ToHaveCountAsync(18);
        await open.Button("One segment more").ClickAsync();
        await Expect(open.Wedges).ToHaveCountAsync(19);
        await open.Field("diameter").FillAsync("3/4\"");
        await Expect(open.Page.Locator(".view-plan")).ToContainTextAsync("19.05 mm");
        await Expect(open.Field("diameter")).ToHaveValueAsync("3/4\"");
        await open.Button("Use a tip of").ClickAsync();
        await Expect(open.Page.Locator(".mend")).ToHaveCountAsync(0);
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "in 1/64" }).CheckAsync();
        await Expect(open.Page.Locator(".view-plan")).ToContainTextAsync("3/4 in");
        await Expect(open.Field("diameter")).ToHaveValueAsync("3/4\"");
    }

    [Fact]
    public async Task Text_that_cannot_be_read_stays_and_the_foot_leads_to_it_from_any_station()
    {
        await using OpenPage open = await Start();
        await open.Field("diameter").FillAsync("19 mn");
        await Expect(open.Page.Locator("#field-diameter-note .field-problem")).ToContainTextAsync("cannot be read from character 4");
        await Expect(open.Field("diameter")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(open.Page.Locator(".old-mark")).ToBeVisibleAsync();
        await Expect(open.Wedges).ToHaveCountAsync(24);
        await open.Station("Timber");
        await open.Button("Go to Diameter").ClickAsync();
        await Expect(open.Field("diameter")).ToBeFocusedAsync();
        await Expect(open.Field("diameter")).ToHaveValueAsync("19 mn");
        await open.Field("diameter").FillAsync("19 mm");
        await open.Station("Saw");
        await open.Page.Locator("#shop summary").ClickAsync();
        await open.Field("saw-endTrim").FillAsync("short");
        await open.Page.Locator("#shop summary").ClickAsync();
        await open.Station("Shape");
        await open.Button("Go to End trim").ClickAsync();
        await Expect(open.Field("saw-endTrim")).ToBeFocusedAsync();
        await open.Field("saw-endTrim").FillAsync("5 mm");
        await Expect(open.Page.Locator(".foot-mark")).ToHaveTextAsync("Can do");
    }

    [Fact]
    public async Task Undo_and_redo_work_by_button_and_by_key()
    {
        await using OpenPage open = await Start();
        await open.Field("segments").FillAsync("18");
        await Expect(open.Wedges).ToHaveCountAsync(18);
        await open.Page.Keyboard.PressAsync("Control+z");
        await Expect(open.Wedges).ToHaveCountAsync(24);
        await Expect(open.Field("segments")).ToHaveValueAsync("24");
        await open.Page.Keyboard.PressAsync("Control+Shift+Z");
        await Expect(open.Wedges).ToHaveCountAsync(18);
        await open.Undo.ClickAsync();
        await Expect(open.Wedges).ToHaveCountAsync(24);
    }

    [Fact]
    public async Task A_reload_keeps_everything_also_unreadable_text()
    {
        await using OpenPage open = await Start();
        await open.Field("segments").FillAsync("20");
        await open.Field("bore").FillAsync("7 mm or so");
        await Expect(open.Page.Locator("#field-bore-note .field-problem")).ToBeVisibleAsync();
        await open.Page.ReloadAsync();
        await open.Live();
        await Expect(open.Field("bore")).ToHaveValueAsync("7 mm or so");
        await Expect(open.Field("segments")).ToHaveValueAsync("20");
        await Expect(open.Wedges).ToHaveCountAsync(20);
    }

    [Fact]
    public async Task Disc_becomes_ring_and_comes_back_with_its_bore()
    {
        await using OpenPage open = await Start();
        await open.Field("construction").SelectOptionAsync("segment ring");
        await open.Field("innerDiameter").FillAsync("12 mm");
        await Expect(open.Page.Locator(".view-plan")).ToContainTextAsync("inside 12 mm");
        await open.Field("construction").SelectOptionAsync("wedge disc");
        await Expect(open.Field("bore")).ToHaveValueAsync("7 mm");
    }

    [Fact]
    public async Task Everything_can_be_done_by_keyboard()
    {
        await using OpenPage open = await Start();
        await open.Page.Keyboard.PressAsync("Tab");
        for (int i = 0; i < 60 && !await IsFocused(open.Field("segments")); i++) await open.Page.Keyboard.PressAsync("Tab");
        await Expect(open.Field("segments")).ToBeFocusedAsync();
        await open.Page.Keyboard.PressAsync("Control+a");
        await open.Page.Keyboard.TypeAsync("30");
        await Expect(open.Wedges).ToHaveCountAsync(30);
        await open.Page.Locator(".wedges").FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowLeft");
        await open.Page.Keyboard.PressAsync("ArrowLeft");
        await Expect(open.Page.Locator(".view-plan figcaption strong")).ToHaveTextAsync("Wedge 3 of 30: maple");
        await open.Page.Keyboard.PressAsync("End");
        await Expect(open.Page.Locator(".view-plan figcaption strong")).ToHaveTextAsync("Wedge 30 of 30: padauk");
    }

    [Fact]
    public async Task A_file_that_cannot_be_read_is_refused_with_a_sentence_and_the_piece_stays()
    {
        await using OpenPage open = await Start("/pieces");
        ILocator problem = open.Page.Locator(".station .field-problem");
        foreach ((string text, string expected) in new[]
        {
            ("this is no piece", "this is not JSON"),
            ("{ \"format\": \"ringwright/piece\", \"version\": 99, \"name\": \"x\", \"rings\": [] }", "version"),
            ("caf\u00e9", "not text"),
        })
        {
            await open.Page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "bowl.json", MimeType = "application/json", Buffer = Encoding.Latin1.GetBytes(text) });
            await Expect(problem).ToContainTextAsync(expected);
            await Expect(problem).ToContainTextAsync("bowl.json was not opened.");
            await Expect(open.Wedges).ToHaveCountAsync(24);
        }
    }

    [Fact]
    public async Task A_saved_copy_opens_again()
    {
        await using OpenPage open = await Start();
        await open.Field("segments").FillAsync("22");
        await Expect(open.Wedges).ToHaveCountAsync(22);
        await open.Page.GetByRole(AriaRole.Link, new() { Name = "Pieces" }).ClickAsync();
        IDownload copy = await open.Page.RunAndWaitForDownloadAsync(() => open.Page.GetByRole(AriaRole.Link, new() { Name = "Save a copy" }).ClickAsync());
        Assert.Equal("two-wood-disc.json", copy.SuggestedFilename);
        await open.StartOver();
        await open.At("/pieces");
        await open.Page.Locator("input[type=file]").SetInputFilesAsync(await copy.PathAsync());
        await Expect(open.Wedges).ToHaveCountAsync(22);
    }

    private Task<OpenPage> Start(string path = "/shape")
    {
        app.Put();
        return OpenPage.In(fixture, app, path);
    }

    private static Task<bool> IsFocused(ILocator locator) => locator.EvaluateAsync<bool>("e => e === document.activeElement");
}
