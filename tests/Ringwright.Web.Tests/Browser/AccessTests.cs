using System.Globalization;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>Every page on desk, tablet and phone and against the axe rules, light and dark, at rest and with something wrong.</summary>
public sealed class AccessTests(BrowserFixture fixture, RunningApp app) : IClassFixture<RunningApp>
{
    // What is in order needs no report. In the dark only colours differ, so only they are looked at again.
    private static readonly AxeRunOptions Wrong = new() { ResultTypes = [ResultType.Violations] };
    private static readonly AxeRunOptions Colours = new() { ResultTypes = [ResultType.Violations], RunOnly = new() { Type = "rule", Values = ["color-contrast"] } };

    [Theory]
    [InlineData("/shape/outline")]
    [InlineData("/shape/rings")]
    [InlineData("/shape/pattern")]
    [InlineData("/timber")]
    [InlineData("/saw")]
    [InlineData("/fit")]
    [InlineData("/glue")]
    [InlineData("/lathe")]
    [InlineData("/pieces")]
    [InlineData("/shops")]
    [InlineData("/print")]
    [InlineData("/sharing")]
    [InlineData("/saw/Lip")]
    public async Task Nothing_overflows_targets_are_large_enough_for_a_finger_and_no_rule_is_broken_seriously(string path)
    {
        app.Put("Bowl with a band");
        // The page at the saw has no thread to the server to wait for.
        bool alone = path.StartsWith("/saw/", StringComparison.Ordinal);
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, path, live: !alone);
        foreach (int width in (int[])[390, 820, 1440])
        {
            await open.Page.SetViewportSizeAsync(width, 900);
            int wide = await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            Assert.True(wide <= width, string.Create(CultureInfo.InvariantCulture, $"{path} is {wide} px wide on {width} px."));
            string[] small = await open.Page.Locator(":is(.page, .saw-body) :is(button, .quiet, .chip, .check, input[type=text], select, summary), .tabs a, .stations a").EvaluateAllAsync<string[]>(
                "all => all.filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
            Assert.Empty(small);
        }

        Assert.Empty(Serious(await open.Page.RunAxe(Wrong)));
        await open.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        Assert.Empty(Serious(await open.Page.RunAxe(Colours)));
    }

    [Fact]
    public async Task With_something_wrong_no_rule_is_broken_seriously_in_light_or_in_the_switchs_dark()
    {
        app.Put();
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/shape");
        await open.Field("diameter").FillAsync("wide");
        await open.Page.Locator(".old-mark").WaitForAsync();
        Assert.Empty(Serious(await open.Page.Locator(".bench").RunAxe(Wrong)));
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Switch between light and dark" }).ClickAsync();
        Assert.Equal("dark", await open.Page.Locator("html").GetAttributeAsync("data-theme"));
        Assert.Empty(Serious(await open.Page.RunAxe(Colours)));
    }

    // The switch's rules and the system's are the same text twice; this keeps them so.
    [Fact]
    public async Task The_systems_dark_has_the_same_colours_as_the_switchs()
    {
        const string Paper = "() => [...document.styleSheets].flatMap(s => [...s.cssRules]).flatMap(r => r.conditionText?.includes('dark') ? [...r.cssRules] : r.selectorText?.includes('dark') ? [r] : []).map(r => r.style.cssText)";
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, scheme: ColorScheme.Dark);
        string[] rules = await open.Page.EvaluateAsync<string[]>(Paper);
        Assert.Equal(2, rules.Length);
        Assert.Equal(rules[0], rules[1]);
    }

    private static IEnumerable<string> Serious(AxeResult result) =>
        result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {string.Join("; ", v.Nodes.Select(n => n.Html))}");
}
