using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The page against the axe rules, light and dark, at rest and with something wrong.</summary>
public sealed class AccessTests(BrowserFixture fixture) : IDisposable
{
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task No_rule_is_broken_seriously_in_light_or_in_the_dark()
    {
        using AppProcess app = await AppProcess.Start(_data.Path);
        await using OpenPage open = await OpenPage.Open(await fixture.Browser, app.Address);
        await open.StartOver("Bowl with a band");
        foreach (string path in (string[])["/shape/outline", "/shape/rings", "/shape/pattern", "/timber", "/saw", "/fit", "/glue", "/lathe", "/pieces"])
        {
            await open.At(path);
            Assert.Empty(Serious(await open.Page.RunAxe()));
        }

        await open.StartOver();
        await open.Field("diameter").FillAsync("wide");
        await open.Page.Locator(".old-mark").WaitForAsync();
        Assert.Empty(Serious(await open.Page.Locator(".bench").RunAxe()));
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Switch between light and dark" }).ClickAsync();
        Assert.Equal("dark", await open.Page.Locator("html").GetAttributeAsync("data-theme"));
        // In the dark only colours differ, so only they are looked at again.
        var colours = new AxeRunOptions { RunOnly = new() { Type = "rule", Values = ["color-contrast"] } };
        Assert.Empty(Serious(await open.Page.RunAxe(colours)));
        await open.At("/timber");
        Assert.Empty(Serious(await open.Page.RunAxe(colours)));
    }

    // The switch's rules and the system's are the same text twice; this keeps them so.
    [Fact]
    public async Task The_systems_dark_has_the_same_colours_as_the_switchs()
    {
        const string Paper = "() => [...document.styleSheets].flatMap(s => [...s.cssRules]).flatMap(r => r.conditionText?.includes('dark') ? [...r.cssRules] : r.selectorText?.includes('dark') ? [r] : []).map(r => r.style.cssText)";
        await using OpenPage open = await OpenPage.Open(await fixture.Browser, (await fixture.App).Address, scheme: ColorScheme.Dark);
        string[] rules = await open.Page.EvaluateAsync<string[]>(Paper);
        Assert.Equal(2, rules.Length);
        Assert.Equal(rules[0], rules[1]);
    }

    private static IEnumerable<string> Serious(AxeResult result) =>
        result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {string.Join("; ", v.Nodes.Select(n => n.Html))}");
}
