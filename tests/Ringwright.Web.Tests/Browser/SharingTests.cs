using Microsoft.Playwright;
using Ringwright.Web.Tests.Sharing;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>A second device in a browser of its own: let in, working on the same bench, and let go.</summary>
public sealed class SharingTests(BrowserFixture fixture)
{
    [Fact]
    public async Task A_device_is_let_in_by_code_works_and_is_let_go()
    {
        await using SharedApp app = await SharedApp.Start();
        app.Running.Put();
        await using OpenPage own = await OpenPage.Open(fixture, app.Own, "/shape");
        await own.Page.Locator(".masthead").GetByRole(AriaRole.Link, new() { Name = "Share" }).ClickAsync();
        string code = await own.Page.Locator("[data-code]").InnerTextAsync();
        Uri shared = new(await own.Page.Locator(".sharing-address").InnerTextAsync());
        await Expect(own.Page.Locator(".sharing-place img")).ToHaveJSPropertyAsync("naturalWidth", 227);

        await using OpenPage device = await OpenPage.Open(fixture, shared, "/shape", 390, 800, first: async page =>
        {
            await page.GetByLabel("The code that the other machine shows").FillAsync(code.Replace(' ', '-'));
            await page.GetByLabel("What to call this device").FillAsync("Shop tablet");
            await page.GetByRole(AriaRole.Button, new() { Name = "Let it in" }).ClickAsync();
        });
        Assert.Equal("/shape", new Uri(device.Page.Url).AbsolutePath);
        await Expect(own.Page.Locator(".device-name")).ToHaveTextAsync("Shop tablet");

        // The same bench, and what the device changes is undone on the machine.
        await device.Field("segments").FillAsync("18");
        await Expect(own.Wedges).ToHaveCountAsync(18);
        await own.Undo.ClickAsync();
        await Expect(device.Field("segments")).ToHaveValueAsync("24");

        // Without a request of its own, inside its circuit, it comes to the page but not to the switch.
        await device.Page.Locator(".masthead").GetByRole(AriaRole.Link, new() { Name = "Share" }).ClickAsync();
        await Expect(device.Page.Locator(".station .hint")).ToContainTextAsync("and only there");
        await Expect(device.Page.Locator(".station button")).ToHaveCountAsync(0);

        device.ErrorsExpected = true; // its socket is cut
        await own.Button("Remove Shop tablet").ClickAsync();
        await Expect(own.Page.Locator(".device-name")).ToHaveCountAsync(0);
        await Expect(device.Page.GetByRole(AriaRole.Heading, new() { Name = "Let this device in" })).ToBeVisibleAsync();

        await own.Button("Stop sharing").ClickAsync();
        await Expect(own.Button("Share on this network")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Papers_and_files_are_had_from_the_page_as_they_were_chosen()
    {
        await using RunningApp app = await RunningApp.Start();
        app.Put();
        await using OpenPage open = await OpenPage.Open(fixture, app.Address);
        await open.Page.Locator(".masthead").GetByRole(AriaRole.Link, new() { Name = "Print" }).ClickAsync();
        await open.Page.GetByRole(AriaRole.Radio, new() { Name = "Letter" }).CheckAsync();
        await open.Page.GetByLabel("Both sides").CheckAsync();
        ILocator sheets = open.Page.GetByRole(AriaRole.Link, new() { Name = "Job sheets" });
        await Expect(sheets).ToHaveAttributeAsync("href", "/pieces/current/job-sheet.pdf?paper=letter&duplex=true");
        await open.Page.ReloadAsync();
        await open.Live();
        await Expect(open.Page.GetByLabel("Both sides")).ToBeCheckedAsync();
        await open.Page.Locator("summary", new() { HasText = "My printer" }).ClickAsync();
        await open.Page.Locator("#print-correction").FillAsync("1.2,1");
        await Expect(open.Page.Locator("#print-problem")).ToContainTextAsync("more than 5 % from 1");
        await open.Page.Locator("#print-correction").FillAsync("99.7 mm,100 mm");
        await Expect(open.Page.Locator("#print-problem")).ToHaveCountAsync(0);
        foreach (ILocator link in await open.Page.Locator(".station a[href^='/pieces']").AllAsync())
        {
            string address = (await link.GetAttributeAsync("href"))!;
            IAPIResponse answer = await open.Page.APIRequest.GetAsync(new Uri(app.Address, address).ToString(), new() { Timeout = 60_000 });
            Assert.True(answer.Ok, $"{address}: {answer.Status}");
            Assert.True((await answer.BodyAsync()).Length > 200, address);
        }
    }
}
