using System.Text.Json;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The piece in three dimensions, drawn by a browser without a graphics card.</summary>
public class ViewerTests(BrowserFixture fixture, AppFixture app) : IClassFixture<AppFixture>
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
    public async Task The_bowl_is_drawn_with_one_call_for_each_material()
    {
        await using OpenPage open = await Start();
        Assert.Equal("288", await Canvas(open).GetAttributeAsync("data-segments"));
        // The wood and the shadow on the table.
        Assert.Equal("2", await Canvas(open).GetAttributeAsync("data-calls"));
        Assert.InRange(await open.Page.EvaluateAsync<double>("filled()"), 0.1, 0.7);
    }

    [Fact]
    public async Task A_segment_that_is_tapped_tells_where_it_comes_from()
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
    }

    [Fact]
    public async Task Cut_open_the_face_shows_each_ring_where_it_is_in_wood()
    {
        await using OpenPage open = await Start();
        await Choose(open, "CutOpen");
        // In the middle of each ring's wall, on the plane: which ring the picture has there.
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
    public async Task Keys_walk_the_rings_and_around_them()
    {
        await using OpenPage open = await Start();
        await Canvas(open).FocusAsync();
        ILocator said = open.Page.Locator(".viewer-said");
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
        await using OpenPage open = await Start();
        await open.Page.GetByRole(AriaRole.Link, new() { Name = "Rings", Exact = true }).ClickAsync();
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

    [Theory]
    [InlineData("PulledApart")]
    [InlineData("OneRing")]
    [InlineData("GlueJoints")]
    public async Task Every_way_it_can_stand_is_drawn(string view)
    {
        await using OpenPage open = await Start();
        await Choose(open, view);
        Assert.InRange(await open.Page.EvaluateAsync<double>(view == "GlueJoints" ? "Number(view.stage.canvas.dataset.calls) / 10" : "filled()"), 0.02, 0.7);
    }

    [Fact]
    public async Task Without_three_dimensions_there_are_flat_pictures_and_a_sentence()
    {
        const string NoWebGl = "const own = HTMLCanvasElement.prototype.getContext; HTMLCanvasElement.prototype.getContext = function (kind, ...rest) { return kind.startsWith('webgl') ? null : own.call(this, kind, ...rest); };";
        await using OpenPage open = await Bowl(820, 900, script: NoWebGl);
        await Expect(open.Page.Locator(".viewer-note")).ToContainTextAsync("these are the flat pictures");
        ILocator pictures = open.Page.Locator(".viewer-flat img");
        await Expect(pictures).ToHaveCountAsync(2);
        await Expect(pictures.First).ToBeVisibleAsync();
        foreach (ILocator picture in await pictures.AllAsync())
        {
            await Expect(picture).ToHaveJSPropertyAsync("complete", true);
            Assert.True(await picture.EvaluateAsync<int>("i => i.naturalWidth") > 0);
        }
    }

    [Theory]
    [InlineData(1440, ColorScheme.Light)]
    [InlineData(820, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    public async Task Nothing_overflows_and_no_rule_of_access_is_broken_seriously(int width, ColorScheme scheme)
    {
        await using OpenPage open = await Bowl(width, 900, scheme);
        await Canvas(open).WaitForAsync();
        Assert.True(await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        Assert.Empty((await open.Page.Locator(".viewer").RunAxe()).Violations.Where(v => v.Impact is "serious" or "critical").Select(v => v.Id));
    }

    [Fact]
    public async Task A_version_that_nobody_looks_at_is_answered_with_a_sentence()
    {
        using var client = new HttpClient();
        using HttpResponseMessage answer = await client.GetAsync(new Uri((await app.App).Address, "/viewer/none/fine.bin"), TestContext.Current.CancellationToken);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("no longer kept", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    private static ILocator Canvas(OpenPage open) => open.Page.Locator(".viewer-canvas");

    private async Task<OpenPage> Bowl(int width, int height, ColorScheme scheme = ColorScheme.Light, string? script = null)
    {
        OpenPage open = await OpenPage.Open(await fixture.Browser, (await app.App).Address, width, height, scheme, script);
        await open.StartOver("Bowl with a band");
        return open;
    }

    private async Task<OpenPage> Start()
    {
        OpenPage open = await Bowl(820, 1000);
        await open.Page.Locator(".viewer-canvas[data-calls]").WaitForAsync(new() { Timeout = 60_000 });
        await open.Page.EvaluateAsync(Helpers);
        return open;
    }

    private static async Task Choose(OpenPage open, string view)
    {
        await open.Page.Locator($"[data-viewer=view][value={view}]").CheckAsync(new() { Force = true });
        await open.Page.EvaluateAsync("view.stage.draw()");
    }
}
