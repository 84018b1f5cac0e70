using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The page against the axe rules, light and dark, at rest and with something wrong.</summary>
[Collection(nameof(BenchPageTests))]
public class AccessTests(BrowserFixture fixture)
{
    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task No_rule_is_broken_seriously(ColorScheme scheme)
    {
        await using OpenPage open = await OpenPage.Open(await fixture.Browser, (await fixture.App).Address, scheme: scheme);
        await open.StartOver();
        await open.Page.Locator("#shop summary").ClickAsync();
        await open.Page.Locator("#why-stop summary").ClickAsync();
        Assert.Empty(await Broken(open.Page, scheme));
        await open.Page.Locator("#why-stop summary").ClickAsync();
        await open.Field("diameter").FillAsync("wide");
        await open.Page.Locator(".old-mark").WaitForAsync();
        Assert.Empty(await Broken(open.Page, scheme));
    }

    // In the dark only colours differ, so only they are looked at again.
    private static async Task<IEnumerable<string>> Broken(IPage page, ColorScheme scheme)
    {
        var options = new AxeRunOptions();
        if (scheme == ColorScheme.Dark) options.RunOnly = new() { Type = "rule", Values = ["color-contrast"] };
        AxeResult result = await page.RunAxe(options);
        return result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {string.Join("; ", v.Nodes.Select(n => n.Html))}");
    }
}
