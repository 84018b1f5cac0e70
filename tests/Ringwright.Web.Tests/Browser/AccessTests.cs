using System.Globalization;
using Microsoft.Playwright;

namespace Ringwright.Web.Tests.Browser;

/// <summary>Every page on desk, tablet and phone and against the axe rules, light and dark, at rest and with something wrong.</summary>
public sealed class AccessTests(BrowserFixture fixture, RunningApp app) : IClassFixture<RunningApp>
{
    private static readonly string[] Pages =
        ["/shape/outline", "/shape/rings", "/shape/pattern", "/timber", "/saw", "/fit", "/glue", "/lathe", "/pieces", "/shops", "/print", "/sharing", "/saw/Lip"];

    [Fact]
    public async Task No_page_overflows_targets_are_large_enough_for_a_finger_and_no_rule_is_broken_seriously()
    {
        app.Put("Bowl with a band");
        var wrong = new List<string>();
        foreach (string path in Pages)
        {
            // The page at the saw has no thread to the server to wait for.
            await using OpenPage open = await OpenPage.In(fixture, app, path, 390, live: !path.StartsWith("/saw/", StringComparison.Ordinal));
            foreach (int width in (int[])[390, 820, 1440])
            {
                await open.Page.SetViewportSizeAsync(width, 900);
                int wide = await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
                if (wide > width) wrong.Add(string.Create(CultureInfo.InvariantCulture, $"{path} is {wide} px wide on {width} px."));
                string[] small = await open.Page.Locator(":is(.page, .saw-body) :is(button, .quiet, .chip, .check, input[type=text], select, summary), .tabs a, .stations a").EvaluateAllAsync<string[]>(
                    "all => all.filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
                wrong.AddRange(small.Select(s => $"{path}: too small for a finger: {s}"));
            }

            wrong.AddRange((await Axe.Serious(open.Page)).Select(rule => $"{path}: {rule}"));
            await open.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
            wrong.AddRange((await Axe.Serious(open.Page, coloursOnly: true)).Select(rule => $"{path}, dark: {rule}"));
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public async Task With_something_wrong_no_rule_is_broken_seriously_in_light_or_in_the_switchs_dark()
    {
        app.Put();
        await using OpenPage open = await OpenPage.Open(fixture, app.Address, "/shape");
        await open.Field("diameter").FillAsync("wide");
        await open.Page.Locator(".old-mark").WaitForAsync();
        Assert.Empty(await Axe.Serious(open.Page, ".bench"));
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Switch between light and dark" }).ClickAsync();
        Assert.Equal("dark", await open.Page.Locator("html").GetAttributeAsync("data-theme"));
        Assert.Empty(await Axe.Serious(open.Page, coloursOnly: true));
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
}
