using System.Globalization;

namespace Ringwright.Web.Tests.Browser;

/// <summary>Desk, tablet and phone: nothing overflows, every target is large enough for a finger.</summary>
public sealed class WidthTests(BrowserFixture fixture) : IDisposable
{
    private static readonly string[] Pages = ["/shape/outline", "/shape/rings", "/shape/pattern", "/timber", "/saw", "/fit", "/glue", "/lathe", "/pieces", "/print", "/sharing"];
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task Nothing_overflows_and_every_target_is_large_enough_for_a_finger()
    {
        using AppProcess app = await AppProcess.Start(_data.Path);
        await using OpenPage open = await OpenPage.Open(await fixture.Browser, app.Address);
        await open.StartOver("Bowl with a band");
        foreach (string path in Pages)
        {
            await open.At(path);
            foreach (int width in (int[])[1440, 820, 390])
            {
                await open.Page.SetViewportSizeAsync(width, 900);
                int wide = await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
                Assert.True(wide <= width, string.Create(CultureInfo.InvariantCulture, $"{path} is {wide} px wide on {width} px."));
                string[] small = await open.Page.Locator(".page button, .page .quiet, .page .chip, .page .check, .page input[type=text], .page select, .page summary, .tabs a, .stations a").EvaluateAllAsync<string[]>(
                    "all => all.filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
                Assert.Empty(small);
            }
        }
    }
}
