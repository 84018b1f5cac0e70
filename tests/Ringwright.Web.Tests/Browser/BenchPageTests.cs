using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>What a person does on the page, in a real browser against the real app.</summary>
[Collection(nameof(BenchPageTests))]
public class BenchPageTests(BrowserFixture fixture)
{
    [Fact]
    public async Task The_example_shows_24_wedges_in_two_woods_with_its_numbers()
    {
        await using OpenPage open = await Start();
        await Expect(open.Wedges).ToHaveCountAsync(24);
        await Expect(open.Key("Rip to")).ToHaveTextAsync("9.5mm");
        await Expect(open.Key("Each fence at")).ToHaveTextAsync("7.5°");
        await Expect(open.Page.Locator("[data-bore]")).ToHaveCountAsync(1);
        string[] fills = await open.Wedges.EvaluateAllAsync<string[]>("all => [...new Set(all.map(p => p.getAttribute('fill')))]");
        Assert.Equal(2, fills.Length);
    }

    [Fact]
    public async Task Another_number_of_segments_draws_and_plans_anew()
    {
        await using OpenPage open = await Start();
        await open.Field("segments").FillAsync("18");
        await Expect(open.Wedges).ToHaveCountAsync(18);
        await Expect(open.Key("Each fence at")).ToHaveTextAsync("10°");
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "One segment more" }).ClickAsync();
        await Expect(open.Wedges).ToHaveCountAsync(19);
    }

    [Fact]
    public async Task Lengths_are_typed_as_people_write_them()
    {
        await using OpenPage open = await Start();
        await open.Field("diameter").FillAsync("3/4\"");
        // Half of 3/4 in is 9.525 mm, printed to hundredths.
        await Expect(open.Key("Rip to")).ToHaveTextAsync("9.53mm");
        await Expect(open.Field("diameter")).ToHaveValueAsync("3/4\"");
    }

    [Fact]
    public async Task Text_that_cannot_be_read_stays_with_a_sentence_and_the_last_good_picture()
    {
        await using OpenPage open = await Start();
        await open.Field("diameter").FillAsync("19 mn");
        await Expect(open.Page.Locator("#field-diameter-note .field-problem")).ToContainTextAsync("cannot be read from character 4");
        await Expect(open.Field("diameter")).ToHaveValueAsync("19 mn");
        await Expect(open.Field("diameter")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(open.Page.Locator(".old-mark")).ToBeVisibleAsync();
        await Expect(open.Wedges).ToHaveCountAsync(24);
        await open.Field("bore").FocusAsync();
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Go to Diameter" }).ClickAsync();
        await Expect(open.Field("diameter")).ToBeFocusedAsync();
        await open.Field("diameter").FillAsync("20 mm");
        await Expect(open.Page.Locator(".old-mark")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task The_foot_leads_into_the_closed_shop_to_the_value_at_fault()
    {
        await using OpenPage open = await Start();
        await open.Page.Locator("#shop summary").ClickAsync();
        await open.Field("saw-kerf").FillAsync("thin");
        await open.Page.Locator("#shop summary").ClickAsync();
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Go to Kerf" }).ClickAsync();
        await Expect(open.Field("saw-kerf")).ToBeFocusedAsync();
        await open.Field("saw-kerf").FillAsync("1.2 mm");
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
    public async Task Units_switch_the_figures_and_leave_what_was_typed()
    {
        await using OpenPage open = await Start();
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "in 1/64" }).CheckAsync();
        await Expect(open.Key("Rip to")).ToHaveTextAsync("3/8in");
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "in 0.001" }).CheckAsync();
        await Expect(open.Key("Rip to")).ToHaveTextAsync("0.374in");
        await Expect(open.Field("diameter")).ToHaveValueAsync("19 mm");
    }

    [Fact]
    public async Task The_change_a_finding_offers_is_one_click()
    {
        await using OpenPage open = await Start();
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Use a tip of 0.75 mm" }).ClickAsync();
        await Expect(open.Field("tip")).ToHaveValueAsync("0.75 mm");
        await Expect(open.Page.Locator(".mend")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Disc_becomes_ring_and_comes_back_with_its_bore()
    {
        await using OpenPage open = await Start();
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "Segment ring" }).CheckAsync();
        await open.Field("innerDiameter").FillAsync("12 mm");
        await Expect(open.Page.Locator(".view-plan")).ToContainTextAsync("inside 12 mm");
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "Wedge disc" }).CheckAsync();
        await Expect(open.Field("bore")).ToHaveValueAsync("7 mm");
    }

    [Fact]
    public async Task A_figure_opens_to_its_formula_with_the_values_put_in()
    {
        await using OpenPage open = await Start();
        await open.Page.Locator("#why-stop summary").ClickAsync();
        await Expect(open.Page.Locator("#why-stop .why")).ToContainTextAsync("2·9.5 mm·tan(7.5°) + 2·0.05 mm/cos(7.5°) = 2.6 mm");
    }

    [Fact]
    public async Task Everything_can_be_done_by_keyboard()
    {
        await using OpenPage open = await Start();
        await open.Page.Keyboard.PressAsync("Tab");
        for (int i = 0; i < 40 && !await IsFocused(open.Field("segments")); i++) await open.Page.Keyboard.PressAsync("Tab");
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
    public async Task Fast_typing_loses_no_character()
    {
        await using OpenPage open = await Start();
        await open.Field("name").FillAsync("");
        await open.Field("name").PressSequentiallyAsync("A disc for the pen of my neighbour, maple and padauk");
        await Expect(open.Field("name")).ToHaveValueAsync("A disc for the pen of my neighbour, maple and padauk");
        await Expect(open.Page.Locator(".title-name")).ToHaveTextAsync("A disc for the pen of my neighbour, maple and padauk");
    }

    [Theory]
    [InlineData("{ \"format\": \"ringwright/piece\", \"version\": 1, \"na", "ends too early")]
    [InlineData("{ \"format\": \"ringwright/piece\", \"version\": 99 }", "newer Ringwright is needed")]
    [InlineData("\u0089PNG", "it is not text")]
    public async Task A_broken_file_is_refused_in_one_sentence_and_the_piece_stays(string text, string expected)
    {
        await using OpenPage open = await Start();
        await open.Page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "bowl.json", MimeType = "application/json", Buffer = Encoding.Latin1.GetBytes(text) });
        await Expect(open.Page.Locator(".refused")).ToContainTextAsync(expected);
        await Expect(open.Page.Locator(".refused")).ToContainTextAsync("bowl.json was not opened.");
        await Expect(open.Wedges).ToHaveCountAsync(24);
    }

    [Fact]
    public async Task A_saved_copy_opens_again()
    {
        await using OpenPage open = await Start();
        await open.Field("segments").FillAsync("22");
        await Expect(open.Wedges).ToHaveCountAsync(22);
        IDownload copy = await open.Page.RunAndWaitForDownloadAsync(() => open.Page.GetByRole(AriaRole.Link, new() { Name = "Save a copy" }).ClickAsync());
        Assert.Equal("two-wood-disc.json", copy.SuggestedFilename);
        await open.StartOver();
        await open.Page.Locator("input[type=file]").SetInputFilesAsync(await copy.PathAsync());
        await Expect(open.Wedges).ToHaveCountAsync(22);
    }

    [Theory]
    [InlineData(1440)]
    [InlineData(820)]
    [InlineData(390)]
    public async Task Nothing_overflows_and_every_target_is_large_enough_for_a_finger(int width)
    {
        await using OpenPage open = await OpenPage.Open(await fixture.Browser, (await fixture.App).Address, width);
        await open.StartOver();
        await open.Page.Locator("#shop summary").ClickAsync();
        int wide = await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
        Assert.True(wide <= width, string.Create(CultureInfo.InvariantCulture, $"The page is {wide} px wide."));
        string[] small = await open.Page.Locator(".page button, .page .quiet, .page .chip, .page input[type=text], .page select, .page summary").EvaluateAllAsync<string[]>(
            "all => all.filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
        Assert.Empty(small);
    }

    private async Task<OpenPage> Start()
    {
        OpenPage open = await OpenPage.Open(await fixture.Browser, (await fixture.App).Address);
        await open.StartOver();
        return open;
    }

    private static Task<bool> IsFocused(ILocator locator) => locator.EvaluateAsync<bool>("e => e === document.activeElement");
}
