using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>An edit shows in the picture, and how soon; the time is told, and held to its mark in <c>bench/page</c>.</summary>
public sealed class PaceTests(BrowserFixture fixture, RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task An_edit_of_1500_segments_shows_in_each_picture()
    {
        app.Service<Workbench>().Put(Tower);
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/shape/rings");
        foreach ((string view, string picture, string field, string text) in new[]
        {
            ("Side", ".view-side svg", "thickness", "6 mm"), ("Ring", ".view-plan svg[role=group]", "segments", "30"), ("Laid flat", ".view-flat svg", "segments", "24"),
        })
        {
            await open.View(view);
            await Expect(open.Page.Locator(picture)).ToBeVisibleAsync();
            // From the key's event to the change of the picture, both on the page's own clock.
            await open.Page.EvaluateAsync("""
                picture => new Promise((ready) => {
                  let typed;
                  document.addEventListener('input', () => { typed = performance.now(); }, { capture: true, once: true });
                  const seen = new MutationObserver(() => { seen.disconnect(); window.redrawn = performance.now() - typed; });
                  seen.observe(document.querySelector(picture), { subtree: true, childList: true, attributes: true, characterData: true });
                  window.redrawn = null;
                  ready();
                })
                """, picture);
            await open.Field(field).FillAsync(text);
            await open.Page.WaitForFunctionAsync("() => window.redrawn !== null");
            double after = await open.Page.EvaluateAsync<double>("window.redrawn");
            Assert.True(after > 0);
            TestContext.Current.TestOutputHelper!.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{view}: the edit shows after {after:0} ms"));
        }
    }

    private static Piece Tower => new()
    {
        Name = "Tower of 1,500",
        Units = LengthUnit.Millimetre,
        Rings = [.. Enumerable.Range(1, 60).Select(i => new SegmentRing
        {
            Name = string.Create(CultureInfo.InvariantCulture, $"Ring {i}"), Segments = 25, Thickness = Length.FromMillimetres(5),
            Diameter = Length.FromMillimetres(150 + (40 * Math.Sin(i / 9.0))), InnerDiameter = Length.FromMillimetres(110 + (40 * Math.Sin(i / 9.0))), Woods = ["maple", "walnut", "cherry", "maple", "padauk"],
        })],
    };
}
