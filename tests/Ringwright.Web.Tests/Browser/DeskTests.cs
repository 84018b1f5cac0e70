using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>What belongs to the user beside the pieces: the boards on the rack and the shops.</summary>
public sealed class DeskTests(BrowserFixture fixture, RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task Boards_are_entered_planned_found_short_and_sawn()
    {
        await using OpenPage open = await Start("/timber");
        await Board(open, "A1", "maple", "900 mm");
        await Expect(open.Page.Locator(".board-row")).ToHaveCountAsync(1);
        await open.Button("Plan the boards").ClickAsync();
        await Expect(open.Page.Locator(".cutting-answer")).ToContainTextAsync("The rack is not enough", new() { Timeout = 90_000 });
        await Expect(open.Page.Locator(".foot")).ToContainTextAsync("Wood is short");
        await open.Station("Shape");
        await open.Button("Show what is short").ClickAsync();
        await Expect(open.Page.Locator("#rack-answer")).ToBeFocusedAsync();
        await open.Page.Locator("#board-form > summary").ClickAsync();
        await Board(open, "B1", "padauk", "long");
        await Expect(open.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("lengths are written like");
        await open.Page.Locator("#desk-rack-length").FillAsync("900 mm");
        await open.Button("Put it on the rack").ClickAsync();
        await Expect(open.Page.Locator(".board-row")).ToHaveCountAsync(2);
        await open.Button("Plan the boards again").ClickAsync();
        await Expect(open.Page.Locator(".cutting-answer")).ToContainTextAsync("The rack is enough", new() { Timeout = 90_000 });
        await Expect(open.Page.Locator(".board-steps")).ToHaveCountAsync(2);
        await open.Button("Job done").ClickAsync();
        await Expect(open.Page.Locator(".board-row").First).ToContainTextAsync("A1-1");
        await open.Button("Undo: “Two-wood disc” sawn").ClickAsync();
        await Expect(open.Page.Locator(".board-row")).ToHaveCountAsync(2);
        await Expect(open.Page.Locator(".board-row").First).Not.ToContainTextAsync("A1-1");
    }

    [Fact]
    public async Task Shops_are_named_added_chosen_and_undo_goes_back_to_the_one_before()
    {
        await using OpenPage open = await Start("/shops");
        ILocator name = open.Page.Locator("#field-shop-name");
        await name.FillAsync("Cellar");
        await open.Button("Another shop like this one").ClickAsync();
        await Expect(name).ToHaveValueAsync("Cellar 2");
        await open.Station("Saw");
        await open.Page.Locator("#shop summary").First.ClickAsync();
        await open.Field("saw-kerf").FillAsync("3.1 mm");
        await open.At("/shops");
        await open.Button("Use Cellar", exact: true).ClickAsync();
        await Expect(name).ToHaveValueAsync("Cellar");
        await open.Undo.ClickAsync();
        await Expect(name).ToHaveValueAsync("Cellar 2");
        await open.Station("Saw");
        await open.Page.Locator("#shop summary").First.ClickAsync();
        await Expect(open.Field("saw-kerf")).ToHaveValueAsync("3.1 mm");
    }

    private Task<OpenPage> Start(string path)
    {
        app.Put();
        return OpenPage.In(fixture, app, path);
    }

    private static async Task Board(OpenPage open, string label, string wood, string length)
    {
        foreach ((string field, string text) in new[] { ("label", label), ("wood", wood), ("length", length), ("width", "120 mm"), ("thickness", "36 mm") })
            await open.Page.Locator("#desk-rack-" + field).FillAsync(text);
        await open.Button("Put it on the rack").ClickAsync();
    }
}
