using System.Text.RegularExpressions;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The whole way, from no piece at all to its printed packet: by hand, and by keys alone.</summary>
public sealed partial class JourneyTests(BrowserFixture fixture)
{
    [Fact]
    public async Task A_bowl_goes_from_the_first_click_to_a_packet_that_says_what_the_pages_say()
    {
        await using RunningApp app = await RunningApp.Start();
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/pieces");
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "mm", Exact = true }).CheckAsync();
        await open.Page.Locator(".start", new() { HasText = "Bowl" }).ClickAsync();
        await open.IsAt("/shape");
        await open.Field("name").First.FillAsync("Bowl for Ada");
        await Expect(open.Page.Locator(".title-name")).ToHaveTextAsync("Bowl for Ada");

        // Its shape: one point dragged, one typed; a new bowl's rings follow both.
        await open.Button("Drag its outline").ClickAsync();
        await Expect(open.Field("outer-4-diameter")).ToHaveValueAsync("158.4 mm");
        await open.Drag("outer-3", 12, 0);
        await Expect(open.Field("outer-4-diameter")).Not.ToHaveValueAsync("158.4 mm");
        await open.Field("outer-5-diameter").FillAsync("190 mm");
        await Expect(open.Page.Locator(".side-sizes")).ToContainTextAsync("190 mm across");

        // Its woods, ring by ring, and what they do over a year.
        await open.Page.GetByRole(AriaRole.Link, new() { Name = "Rings", Exact = true }).ClickAsync();
        await open.Button("Choose all").ClickAsync();
        // Another ring's count takes this field's place; a text filled in meanwhile would stand beside it.
        await Expect(open.Page.Locator("#ring-heading")).ToHaveTextAsync("5 rings at once");
        await open.Field("segments").FillAsync("24");
        await open.Field("woods-2").FillAsync("walnut");
        await Expect(open.Page.Locator(".ring-words", new() { HasText = "24 ×" })).ToHaveCountAsync(5);
        await open.Station("Timber");
        await Expect(open.Page.Locator(".wood-item", new() { HasText = "walnut" })).ToHaveCountAsync(1);
        await Expect(open.Page.Locator(".movement-answer")).Not.ToBeEmptyAsync();

        // The saw's figures for its topmost ring; what is seen at the fit; the glue; the lathe.
        await open.Station("Saw");
        await open.Page.Locator("#ring-choice").SelectOptionAsync(new SelectOptionValue { Index = 0 });
        await Expect(open.Key("Stop at")).ToContainTextAsync("mm");
        string ring = (await open.Page.Locator("#ring-choice option:checked").InnerTextAsync()).Split(':', ',')[1].Trim();
        string[] saw = [await Value(open, "Rip to"), await Value(open, "Plane to"), await Value(open, "Each fence at"), await Value(open, "Stop at")];
        await open.Station("Fit");
        await open.Page.Locator("#desk-fit-gap").FillAsync("3 mm");
        await open.Button("Add this reading").ClickAsync();
        await Expect(open.Key("Move both fences")).ToContainTextAsync("mm");
        await open.Station("Glue");
        // Not by CheckAsync: what is ticked goes to Done, and it would tick the next one too.
        await open.Page.Locator(".tick input").First.PressAsync("Space");
        await Expect(open.Page.Locator("section[aria-labelledby=order-heading] > [role=status]")).ToContainTextAsync("1 of ");
        await open.Station("Lathe");
        string[] lathe = [await Value(open, "Rough blank, at most"), await Value(open, "Round work, at most")];

        // The packet: its name, and the pages' figures on it.
        await open.Page.Locator(".masthead").GetByRole(AriaRole.Link, new() { Name = "Print" }).ClickAsync();
        using PdfDocument packet = await Packet(open, link => link.ClickAsync());
        Assert.Contains("Bowl for Ada", packet.Information.Title, StringComparison.Ordinal);
        string[] pages = [.. packet.GetPages().Select(Letters)];
        Assert.All(pages, page => Assert.Contains("BowlforAda", page, StringComparison.Ordinal));
        Assert.Contains("190mm", pages[0], StringComparison.Ordinal);
        Assert.Contains("walnut", pages[0], StringComparison.Ordinal);
        string ofRing = string.Concat(pages.Where(p => p.Contains(Bare(ring), StringComparison.Ordinal)).Skip(1));
        Assert.All(saw, figure => Assert.Contains(figure, ofRing, StringComparison.Ordinal));
        string all = string.Concat(pages);
        Assert.All(lathe, figure => Assert.Contains(figure, all, StringComparison.Ordinal));
    }

    [Fact]
    public async Task By_keys_alone_a_bowl_goes_from_the_start_to_a_printed_packet_and_one_sees_where_one_is()
    {
        await using RunningApp app = await RunningApp.Start();
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/pieces");
        IKeyboard keys = open.Page.Keyboard;
        await open.TabTo(".units input");
        await keys.PressAsync("ArrowRight");
        await Expect(open.Page.Locator(".units input").Nth(1)).ToBeCheckedAsync();
        await keys.PressAsync("ArrowLeft");
        await Expect(open.Page.Locator(".units input").First).ToBeCheckedAsync();
        await open.TabTo(".start:has-text(\"Bowl\")");
        await keys.PressAsync("Enter");
        await open.IsAt("/shape");
        await Expect(open.Button("Drag its outline")).ToBeVisibleAsync();
        await open.TabTo(".stage button:has-text(\"Drag its outline\")");
        await keys.PressAsync("Enter");
        await Expect(open.Field("outer-4-diameter")).ToHaveValueAsync("158.4 mm");
        await open.TabTo("[data-handle=outer-3]");
        // Faster than the page is drawn: each of them counts.
        for (int i = 0; i < 6; i++) await keys.PressAsync("ArrowRight");
        await Expect(open.Field("outer-4-diameter")).ToHaveValueAsync("164.4 mm");
        await open.TabTo(".tabs a[href='/shape/rings']");
        await keys.PressAsync("Enter");
        await open.TabTo(".ring-pick");
        await keys.PressAsync("Enter");
        await Expect(open.Page.Locator("#ring-heading")).ToHaveTextAsync("Ring 5");
        await open.TabTo("#field-woods-2");
        await keys.PressAsync("Control+a");
        await keys.TypeAsync("walnut");
        await Expect(open.Page.Locator(".ring-row.is-chosen .ring-woods")).ToBeVisibleAsync();
        await open.TabTo(".stations a[href='/saw']");
        await keys.PressAsync("Enter");
        await Expect(open.Key("Stop at")).ToContainTextAsync("mm");
        await open.TabTo(".station button:has-text(\"Sawn\")");
        await keys.PressAsync("Enter");
        await Expect(open.Page.Locator(".count-now").First).ToContainTextAsync("1 of ");
        await open.TabTo(".stations a[href='/glue']");
        await keys.PressAsync("Enter");
        await open.TabTo(".tick input");
        await keys.PressAsync("Space");
        await Expect(open.Page.Locator("section[aria-labelledby=order-heading] > [role=status]")).ToContainTextAsync("1 of ");
        await open.TabTo(".masthead a[href='/print']");
        await keys.PressAsync("Enter");
        await open.TabTo("input[name=paper]");
        await keys.PressAsync("ArrowDown");
        await keys.PressAsync("ArrowDown");
        await Expect(open.Page.GetByRole(AriaRole.Radio, new() { Name = "Letter" })).ToBeCheckedAsync();
        using PdfDocument packet = await Packet(open, async _ =>
        {
            await open.TabTo("a[href^='/pieces/current/job-sheet.pdf']");
            await keys.PressAsync("Enter");
        });
        Assert.Equal(612, packet.GetPage(1).Width, 1.0); // Letter, 8 1/2 in
        Assert.Contains("walnut", Letters(packet.GetPage(1)), StringComparison.Ordinal);
    }

    // What the window that the link opens asks for is read. A browser without a reader for PDF opens it all the same, and keeps a file.
    private static async Task<PdfDocument> Packet(OpenPage open, Func<ILocator, Task> press)
    {
        var asked = new TaskCompletionSource<string>();
        open.Page.Context.Request += (_, request) =>
        {
            if (request.IsNavigationRequest) asked.TrySetResult(request.Url);
        };
        await open.Page.RunAndWaitForPopupAsync(() => press(open.Page.GetByRole(AriaRole.Link, new() { Name = "Job sheets" })));
        IAPIResponse answer = await open.Page.APIRequest.GetAsync(await asked.Task.WaitAsync(TimeSpan.FromMinutes(1)));
        Assert.Equal("application/pdf", answer.Headers["content-type"]);
        return PdfDocument.Open(await answer.BodyAsync());
    }

    private static async Task<string> Value(OpenPage open, string title) => Bare(await open.Key(title).InnerTextAsync());

    // Without spaces: in the PDF a figure and its unit are placed, not spaced.
    private static string Letters(Page page) => Bare(string.Concat(page.Letters.Select(l => l.Value)));

    private static string Bare(string text) => Space().Replace(text, "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
