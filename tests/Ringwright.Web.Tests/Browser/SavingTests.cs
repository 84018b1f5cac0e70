using Microsoft.Playwright;
using Ringwright.Store;
using static Microsoft.Playwright.Assertions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>What is left after the process was killed, and what is said when nothing can be saved.</summary>
public sealed class SavingTests(BrowserFixture fixture) : IDisposable
{
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task A_killed_app_comes_back_with_the_last_edit_and_the_open_page_follows()
    {
        using AppProcess first = await AppProcess.Start(_data.Path);
        await using OpenPage open = await OpenPage.Open(fixture, first.Address);
        open.ErrorsExpected = true;
        await open.Field("segments").FillAsync("18");
        await Expect(open.Wedges).ToHaveCountAsync(18);
        await open.Field("bore").FillAsync("7 mm or");
        await Saved("7 mm or");
        await first.Kill();
        await Expect(open.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await using RunningApp second = await RunningApp.Start(_data.Path, first.Port);
        await open.Page.Locator("body:not([data-away]) .page:not([inert])").WaitForAsync(new() { Timeout = 90_000 });
        await Expect(open.Field("segments")).ToHaveValueAsync("18");
        await Expect(open.Field("bore")).ToHaveValueAsync("7 mm or");
        await open.Field("bore").FillAsync("6 mm");
        await Expect(open.Page.Locator(".view-plan")).ToContainTextAsync("bore 6 mm");
    }

    [Fact]
    public async Task Where_nothing_can_be_saved_the_page_says_so_and_work_goes_on()
    {
        string file = _data.In("no-folder");
        await File.WriteAllTextAsync(file, "", TestContext.Current.CancellationToken);
        await using RunningApp app = await RunningApp.Start(Path.Combine(file, "data"));
        await using OpenPage open = await OpenPage.Open(fixture, app.Address);
        await Expect(open.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("cannot be written, so your work is not saved");
        await open.Field("segments").FillAsync("18");
        await Expect(open.Wedges).ToHaveCountAsync(18);
    }

    // The save runs behind the edit; it is done when the text stands in the data.
    private async Task Saved(string text)
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        using DataStore store = DataStore.Open(_data.Path, TimeProvider.System);
        while (!store.Pieces.List().Any(p => store.Pieces.Read(p.Id).Draft?.Contains($"\"{text}\"", StringComparison.Ordinal) == true)) await Task.Delay(20, limit.Token);
    }
}
