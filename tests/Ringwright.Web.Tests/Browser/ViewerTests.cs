using System.Text.Json;
using Microsoft.Playwright;
using Ringwright.Web.Viewing;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The piece in three dimensions, drawn by a browser without a graphics card.</summary>
public class ViewerTests(BrowserFixture fixture, RunningApp app) : IClassFixture<RunningApp>
{
    // What the tests read of the picture: share of points that are drawn, and where a point of the piece is on the page.
    private const string Helpers = """
        window.view = document.querySelector('.viewer').pieceView;
        window.filled = () => {
          const { stage } = view, gl = stage.renderer.getContext(), w = gl.drawingBufferWidth, h = gl.drawingBufferHeight, rgba = new Uint8Array(4 * w * h);
          stage.ground.visible = false;
          stage.draw();
          gl.readPixels(0, 0, w, h, gl.RGBA, gl.UNSIGNED_BYTE, rgba);
          stage.arrange();
          return rgba.filter((v, i) => i % 4 === 3 && v > 250).length / (w * h);
        };
        window.onPage = (x, y, z) => {
          const { stage } = view, box = stage.canvas.getBoundingClientRect();
          stage.eye.prepare();
          const at = stage.eye.camera.position.clone().set(x, y, z).project(stage.eye.camera);
          return { x: box.left + (at.x + 1) / 2 * box.width, y: box.top + (1 - at.y) / 2 * box.height };
        };
        null;
        """;

    [Fact]
    public async Task The_bowl_is_drawn_in_every_way_it_can_stand_with_one_call_for_each_material()
    {
        await using OpenPage open = await Start();
        Assert.Equal("288", await Canvas(open).GetAttributeAsync("data-segments"));
        // The wood and the shadow on the table.
        Assert.Equal("2", await Canvas(open).GetAttributeAsync("data-calls"));
        Assert.InRange(await open.Page.EvaluateAsync<double>("filled()"), 0.1, 0.7);
        foreach (string view in (string[])["PulledApart", "OneRing", "GlueJoints"])
        {
            await Choose(open, view);
            Assert.InRange(await open.Page.EvaluateAsync<double>(view == "GlueJoints" ? "Number(view.stage.canvas.dataset.calls) / 10" : "filled()"), 0.02, 0.7);
        }

        await Choose(open, "CutOpen");
        // Its face shows each ring where it is in wood: in the middle of each ring's wall, on the plane: which ring the picture has there.
        int[] rings = await open.Page.EvaluateAsync<int[]>("""
            (() => {
              const { stage } = view, { solid } = stage, { wall, rings } = solid.packet, t = stage.cutTurn;
              return rings.map(({ bottom, top }, ring) => {
                const z = (bottom + top) / 2, i = Math.floor((z - wall.bottom) / (wall.top - wall.bottom) * wall.outer.length), r = (wall.outer[i] + wall.inner[i]) / 2;
                const at = onPage(-Math.sin(t) * r, Math.cos(t) * r, z);
                const part = stage.pick(at.x, at.y);
                return part < 0 ? -1 : solid.ringOf(part);
              });
            })()
            """);
        Assert.Equal(Enumerable.Range(0, 12), rings);
        Assert.Equal("2", await Canvas(open).GetAttributeAsync("data-calls"));
    }

    [Fact]
    public async Task A_segment_that_is_tapped_tells_where_it_comes_from_and_keys_walk_on()
    {
        await using OpenPage open = await Start();
        // The corner of the rim that is nearest to the eye; the middle of its segment is tapped.
        JsonElement aim = await open.Page.EvaluateAsync<JsonElement>("""
            (() => {
              const { stage } = view, { solid } = stage, eye = stage.eye.camera.position;
              let best = null;
              for (let segment = 0; segment < 24; segment++) {
                const [x, y, z] = solid.middleOf(solid.partAt(11, segment)), r = Math.hypot(x, y), out = (r + 3.4) / r;
                const away = Math.hypot(eye.x - x, eye.y - y);
                if (!best || away < best.away) best = { away, segment, ...onPage(x * out, y * out, z) };
              }
              return best;
            })()
            """);
        await open.Page.Mouse.ClickAsync(aim.GetProperty("x").GetSingle(), aim.GetProperty("y").GetSingle());
        int segment = aim.GetProperty("segment").GetInt32() + 1;
        await Expect(open.Page.Locator(".viewer-said")).ToHaveTextAsync($"Rim, segment {segment} of 24: walnut");
        await Expect(open.Page.Locator(".picked")).ToContainTextAsync("of walnut for this ring, segment ");
        await Expect(open.Page.Locator(".picked-wedge")).ToHaveCountAsync(1);
        await Expect(open.Page.Locator(".picked .figure-row").First).ToContainTextAsync("mm");

        // Let go, and by keys down from the topmost ring and around.
        await Canvas(open).FocusAsync();
        await open.Page.Keyboard.PressAsync("Escape");
        ILocator said = open.Page.Locator(".viewer-said");
        await Expect(said).ToContainTextAsync("Tap a segment");
        await open.Page.Keyboard.PressAsync("[");
        await Expect(said).ToContainTextAsync("Rim, segment 1 of 24");
        await open.Page.Keyboard.PressAsync("[");
        await Expect(said).ToContainTextAsync("Lip, segment 1 of 24");
        await open.Page.Keyboard.PressAsync(",");
        await Expect(said).ToContainTextAsync("Lip, segment 24 of 24: cherry");
        await open.Page.Keyboard.PressAsync("Escape");
        await Expect(said).ToContainTextAsync("Tap a segment");
    }

    [Fact]
    public async Task The_ring_of_a_segment_is_chosen_and_stays_in_hand_while_one_types_and_looks_elsewhere()
    {
        await using OpenPage open = await Start("/shape/rings");
        await Canvas(open).FocusAsync();
        await open.Page.Keyboard.PressAsync("[");
        await open.Page.Keyboard.PressAsync("[");
        await Expect(open.Page.Locator("#ring-heading")).ToHaveTextAsync("Lip");
        await Expect(open.Page.Locator(".picked h3")).ToContainTextAsync("Lip, segment 1 of 24");
        string? before = await Canvas(open).GetAttributeAsync("data-version");
        await open.Field("segments").FillAsync("30");
        await Expect(Canvas(open)).Not.ToHaveAttributeAsync("data-version", before!);
        await Expect(open.Page.Locator(".picked h3")).ToContainTextAsync("Lip, segment 1 of 30");
        await Expect(open.Field("segments")).ToBeFocusedAsync();
        string? seen = await Canvas(open).GetAttributeAsync("data-version");
        await open.View("Side");
        await Expect(Canvas(open)).ToBeHiddenAsync();
        await open.Undo.ClickAsync();
        await Expect(open.Field("segments")).ToHaveValueAsync("24");
        Assert.Equal(seen, await Canvas(open).GetAttributeAsync("data-version"));
        await open.View("Solid");
        await Expect(open.Page.Locator(".picked h3")).ToContainTextAsync("Lip, segment 1 of 24");
    }

    [Fact]
    public async Task Without_three_dimensions_there_are_flat_pictures_and_a_sentence()
    {
        await using OpenPage open = await Bowl(820, 900, solid: false);
        await FlatPictures(open, "This browser draws nothing in three dimensions here, so these are the flat pictures.");
        // They follow the piece.
        string? before = await open.Page.Locator(".viewer-flat img").First.GetAttributeAsync("src");
        await open.At("/shape/rings");
        await open.Field("segments").FillAsync("30");
        await Expect(open.Page.Locator(".viewer-flat img").First).Not.ToHaveAttributeAsync("src", before!);
        await FlatPictures(open, "so these are the flat pictures.");
    }

    [Fact]
    public async Task When_its_script_does_not_load_there_are_flat_pictures_and_the_page_goes_on()
    {
        await using OpenPage open = await Bowl(820, 900, "/shape/rings", before: page => page.Page.RouteAsync("**/viewer*.js", route => route.AbortAsync()));
        open.ErrorsExpected = true; // the script that is not had
        await FlatPictures(open, "The picture in three dimensions did not load, so these are the flat pictures.");
        string? before = await open.Page.Locator(".viewer-flat img").First.GetAttributeAsync("src");
        await open.Field("segments").FillAsync("30");
        await Expect(open.Page.Locator(".ring-words", new() { HasText = "30 ×" })).ToHaveCountAsync(1);
        await Expect(open.Page.Locator(".viewer-flat img").First).Not.ToHaveAttributeAsync("src", before!);
        await FlatPictures(open, "so these are the flat pictures.");
        await open.View("Side");
        await Expect(open.Page.Locator(".view-side")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Nothing_overflows_and_no_rule_of_access_is_broken_seriously()
    {
        await using OpenPage open = await Bowl(1440, 900);
        await Canvas(open).WaitForAsync();
        foreach ((int width, ColorScheme scheme) in new[] { (1440, ColorScheme.Light), (820, ColorScheme.Dark), (390, ColorScheme.Light) })
        {
            await open.Page.SetViewportSizeAsync(width, 900);
            await open.Page.EmulateMediaAsync(new() { ColorScheme = scheme });
            Assert.True(await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
            Assert.Empty(await Axe.Serious(open.Page, ".viewer"));
        }
    }

    [Fact]
    public async Task A_version_that_nobody_looks_at_is_answered_with_a_sentence()
    {
        using HttpResponseMessage answer = await app.Client.GetAsync("/viewer/none/fine.bin", TestContext.Current.CancellationToken);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("no longer kept", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    // While its mesh or picture is on the way to the browser, the next edit may let a version go.
    [Fact]
    public async Task A_version_that_an_edit_overtook_is_answered_with_nothing_and_no_error()
    {
        string version = Overtaken(app.Service<ViewerStore>());
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
        foreach (string path in new[] { "fine.bin", "whole.svg" })
        {
            using HttpResponseMessage answer = await app.Client.GetAsync($"/viewer/{version}/{path}", TestContext.Current.CancellationToken);
            Assert.Equal(System.Net.HttpStatusCode.NoContent, answer.StatusCode);
        }
    }

    [System.Runtime.CompilerServices.MethodImpl(System.Runtime.CompilerServices.MethodImplOptions.NoInlining)]
    private static string Overtaken(ViewerStore store) => store.Publish(Example.Sheet.Good).Version;

    private static ILocator Canvas(OpenPage open) => open.Page.Locator(".viewer-canvas");

    private Task<OpenPage> Bowl(int width, int height, string path = "/shape", bool solid = true, Func<OpenPage, Task>? before = null)
    {
        app.Put("Bowl with a band");
        return before is null ? OpenPage.In(fixture, app, path, width, height, solid) : OpenPage.Open(fixture, app.Address, path, width, height, solid: solid, before: before);
    }

    private async Task<OpenPage> Start(string path = "/shape")
    {
        OpenPage open = await Bowl(820, 1000, path);
        await open.Page.Locator(".viewer-canvas[data-calls]").WaitForAsync(new() { Timeout = 60_000 });
        await open.Page.EvaluateAsync(Helpers);
        return open;
    }

    private static async Task Choose(OpenPage open, string view)
    {
        await open.Page.Locator($"[data-viewer=view][value={view}]").CheckAsync(new() { Force = true });
        await open.Page.EvaluateAsync("view.stage.draw()");
    }

    // Both there, drawn, and what only the solid obeys out of sight.
    private static async Task FlatPictures(OpenPage open, string sentence)
    {
        await Expect(open.Page.Locator(".viewer-note")).ToContainTextAsync(sentence);
        ILocator pictures = open.Page.Locator(".viewer-flat img");
        await Expect(pictures).ToHaveCountAsync(2);
        foreach (ILocator picture in await pictures.AllAsync())
        {
            await Expect(picture).ToBeVisibleAsync();
            await Expect(picture).ToHaveJSPropertyAsync("complete", true);
            Assert.True(await picture.EvaluateAsync<int>("i => i.naturalWidth") > 0);
        }

        await Expect(Canvas(open)).ToBeHiddenAsync();
        await Expect(open.Page.Locator(".viewer-tools:visible, .viewer-said:visible, .viewer-home:visible")).ToHaveCountAsync(0);
    }
}
