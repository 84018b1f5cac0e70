using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>A piece with an outline: its points, its rings, its pattern and its wood.</summary>
public sealed class BowlTests(BrowserFixture fixture, RunningApp shared) : IClassFixture<RunningApp>
{
    private const string Bowl = "Bowl with a band";

    [Fact]
    public async Task Points_are_dragged_moved_by_keys_and_typed()
    {
        await using OpenPage open = await Start();
        await open.Button("Drag its outline").ClickAsync();
        await open.Drag("outer-3", 12, 0);
        await Expect(open.Field("outer-4-diameter")).Not.ToHaveValueAsync("194 mm");
        await Expect(open.Field("outer-4-height")).ToHaveValueAsync("62.5 mm");
        await open.Undo.ClickAsync();
        await Expect(open.Field("outer-4-diameter")).ToHaveValueAsync("194 mm");
        await open.Page.Locator("[data-handle='outer-3']").FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(open.Field("outer-4-diameter")).ToHaveValueAsync("195 mm");
        await open.Page.Keyboard.PressAsync("Shift+ArrowUp");
        await Expect(open.Field("outer-4-height")).ToHaveValueAsync("62.7 mm");
        await open.Page.Keyboard.PressAsync("Delete");
        await Expect(open.Page.Locator(".point-row")).ToHaveCountAsync(4);
        await open.Undo.ClickAsync();
        await open.Button("Add a point between 3 and 4").ClickAsync();
        await Expect(open.Page.Locator("[data-handle]")).ToHaveCountAsync(6);
        await open.Field("outer-1-diameter").FillAsync("3 1/2 in");
        await Expect(open.Page.Locator("#field-outer-1-diameter-note")).ToContainTextAsync("88.9 mm");
    }

    [Fact]
    public async Task Rings_are_chosen_together_changed_and_found_anew()
    {
        await using OpenPage open = await Start();
        await open.Page.GetByRole(AriaRole.Link, new() { Name = "Rings", Exact = true }).ClickAsync();
        await open.Button("Lip 24").ClickAsync();
        await open.Page.GetByLabel("Choose Shoulder too").CheckAsync();
        await Expect(open.Page.Locator("#ring-heading")).ToHaveTextAsync("2 rings at once");
        await open.Field("segments").FillAsync("36");
        await Expect(open.Page.Locator(".ring-words", new() { HasText = "36 ×" })).ToHaveCountAsync(2);
        await open.Button("Make one of them").ClickAsync();
        await Expect(open.Page.Locator(".ring-row")).ToHaveCountAsync(11);
        await open.Button("Split in two").ClickAsync();
        await Expect(open.Page.Locator(".ring-row")).ToHaveCountAsync(12);
        await open.Page.Locator("#find-rings > summary").ClickAsync();
        await open.Page.Locator("#desk-find-heights").FillAsync("18 mm, 12 mm");
        await open.Button("Find rings", exact: true).ClickAsync();
        await Expect(open.Page.GetByRole(AriaRole.Status).Filter(new() { HasText = "of strip" }).Or(open.Page.Locator("#find-rings [role=status]"))).ToContainTextAsync("strip");
        await Expect(open.Page.Locator(".ring-row").Last).ToContainTextAsync("Ring 1");
        await open.Undo.ClickAsync();
        await Expect(open.Page.Locator(".ring-row")).ToHaveCountAsync(12);
    }

    [Fact]
    public async Task Pieces_are_painted_by_touch_by_key_by_numbers_and_from_a_picture()
    {
        await using OpenPage open = await Start("Pen barrel of five discs");
        await open.Page.GetByRole(AriaRole.Link, new() { Name = "Pattern", Exact = true }).ClickAsync();
        await open.Page.GetByLabel("Another wood").FillAsync("holly");
        await open.Page.Keyboard.PressAsync("Tab");
        await Expect(open.Page.GetByLabel("Touches paint")).ToBeCheckedAsync();
        ILocator flat = open.Page.Locator(".view-flat > svg");
        LocatorBoundingBoxResult box = (await flat.BoundingBoxAsync())!;
        await open.Page.Mouse.ClickAsync(box.X + (box.Width * 0.52f), box.Y + (box.Height * 0.5f));
        await Expect(open.Page.Locator(".view-flat [data-wood=holly]")).ToHaveCountAsync(1);
        await Expect(open.Page.Locator("#flat-words")).ToContainTextAsync("holly");
        await open.Undo.ClickAsync();
        await Expect(open.Page.Locator(".view-flat [data-wood=holly]")).ToHaveCountAsync(0);
        await flat.FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowUp");
        await open.Page.Keyboard.PressAsync("Space");
        await Expect(open.Page.Locator(".view-flat [data-wood=holly]")).ToHaveCountAsync(1);
        await open.Page.Locator("#step-1").SelectOptionAsync("spiral");
        await open.Page.Locator("#desk-pattern-1-woods").FillAsync("oak, wenge");
        await open.Page.GetByLabel("Show on trial").CheckAsync();
        await Expect(open.Page.Locator(".trial-mark")).ToBeVisibleAsync();
        await Expect(open.Page.Locator(".view-flat [data-wood=wenge]")).ToHaveCountAsync(1);
        await open.Button("Lay it on the piece").ClickAsync();
        await Expect(open.Page.Locator(".trial-mark")).ToHaveCountAsync(0);
        await Expect(open.Page.Locator(".view-flat [data-wood=holly]")).ToHaveCountAsync(0);
        await open.Page.Locator(".station input[type=file]").SetInputFilesAsync(new FilePayload { Name = "half.png", MimeType = "image/png", Buffer = Half() });
        await Expect(open.Page.Locator(".trial-mark")).ToBeVisibleAsync();
        await open.Page.Locator(".station input[type=file]").SetInputFilesAsync(new FilePayload { Name = "no.png", MimeType = "image/png", Buffer = [1, 2, 3] });
        await Expect(open.Page.Locator(".station .field-problem")).ToContainTextAsync("not a PNG or JPEG");
    }

    [Fact]
    public async Task Timber_tells_woods_movement_and_air_and_takes_woods_of_ones_own()
    {
        await using OpenPage open = await Start();
        await open.Station("Timber");
        await Expect(open.Page.Locator(".wood-item").First).ToContainTextAsync("cherry");
        await Expect(open.Page.Locator(".movement-answer")).ToContainTextAsync("It holds");
        await open.Field("climate-home-winter-humidity").FillAsync("12");
        await Expect(open.Page.Locator(".movement-answer")).ToContainTextAsync("Something will give");
        await open.Page.Locator(".movement-list summary").First.ClickAsync();
        await Expect(open.Page.Locator(".movement-list .why").First).ToContainTextAsync("σ/S");
        await open.Button("Add a wood of your own").ClickAsync();
        await open.Field("species-1-name").FillAsync("cherry");
        await open.Field("species-1-density").FillAsync("610");
        await Expect(open.Page.Locator(".wood-item").First).ToContainTextAsync("610 kg/m³");
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "aged" }).CheckAsync();
        await open.View("Side");
        await Expect(open.Page.Locator(".view-side")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Every_kind_of_piece_begins_with_an_outline_to_edit()
    {
        await using OpenPage open = await OpenPage.In(fixture, shared, "/shape");
        foreach (string kind in (string[])["Bowl", "Vase", "Platter", "Box", "Spindle", "Pen barrel"])
        {
            await open.Page.Locator(".masthead").GetByRole(AriaRole.Link, new() { Name = "Pieces" }).ClickAsync();
            await open.Page.Locator(".start", new() { HasText = kind }).ClickAsync();
            await Expect(open.Field("name").First).ToHaveValueAsync(kind);
            await open.Button("Drag its outline").ClickAsync();
            await Expect(open.Page.Locator(".handle").First).ToBeVisibleAsync();
            await open.View("Solid");
        }
    }

    [Fact]
    public async Task Pieces_are_kept_found_opened_copied_and_compared()
    {
        // The list shall hold this test's pieces only.
        await using RunningApp app = await RunningApp.Start();
        await using OpenPage open = await Start(app: app);
        await open.Field("name").First.FillAsync("Bowl for Ada");
        await Expect(open.Page.Locator(".title-name")).ToContainTextAsync("Bowl for Ada");
        await open.StartOver("Bead");
        await open.Field("name").First.FillAsync("Bead for Ada");
        await Expect(open.Page.Locator(".title-name")).ToContainTextAsync("Bead for Ada");
        await open.Page.GetByRole(AriaRole.Link, new() { Name = "Pieces" }).ClickAsync();
        await Expect(open.Page.Locator(".piece-row .start-name")).ToHaveCountAsync(2);
        await open.Page.GetByLabel("Compare Bowl for Ada").CheckAsync();
        await open.Page.GetByLabel("Compare Bead for Ada").CheckAsync();
        await Expect(open.Page.Locator(".comparison")).ToContainTextAsync("Thinnest wood");
        await open.Page.Locator("#piece-search").FillAsync("bowl");
        await Expect(open.Page.Locator(".piece-row .start-name")).ToHaveCountAsync(1);
        await open.Button("Duplicate Bowl for Ada").ClickAsync();
        await Expect(open.Page.Locator(".piece-row .start-name")).ToHaveCountAsync(2);
        await open.Button("Open Bowl for Ada", exact: true).ClickAsync();
        await Expect(open.Page.Locator(".title-name")).ToContainTextAsync("Bowl for Ada");
        await open.Undo.ClickAsync();
        await Expect(open.Page.Locator(".title-name")).ToContainTextAsync("Bead for Ada");
    }

    private Task<OpenPage> Start(string example = Bowl, RunningApp? app = null)
    {
        app ??= shared;
        app.Put(example);
        return OpenPage.In(fixture, app, "/shape");
    }

    // Black on the left, white on the right.
    private static byte[] Half()
    {
        using var bitmap = new SkiaSharp.SKBitmap(8, 4);
        for (int x = 0; x < 8; x++)
            for (int y = 0; y < 4; y++) bitmap.SetPixel(x, y, x < 4 ? SkiaSharp.SKColors.Black : SkiaSharp.SKColors.White);
        return bitmap.Encode(SkiaSharp.SKEncodedImageFormat.Png, 100).ToArray();
    }
}
