using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Json;
using Ringwright.Store;

namespace Ringwright.Web.Tests.Browser;

/// <summary>
/// The app itself is killed (SIGKILL) again and again, while someone types at the bench and while a tablet counts wedges at the
/// saw. RINGWRIGHT_KILLS sets how often.
/// </summary>
public sealed class KillTests(BrowserFixture fixture, ITestOutputHelper output) : IDisposable
{
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("RINGWRIGHT_KILLS") ?? "1", CultureInfo.InvariantCulture);
    private readonly TemporaryFolder _data = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task Killed_while_wedges_are_counted_every_confirmed_one_is_there()
    {
        var random = new Random(20_264);
        int confirmed = 0, unconfirmed = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            using AppProcess app = await AppProcess.Start(_data.Path);
            using HttpClient client = ClientOf(app);
            int there = await Count(client);
            Assert.InRange(there, confirmed, confirmed + unconfirmed);
            (confirmed, unconfirmed) = (there, 1);
            Task killed = KillSoon(app, random.Next(20, 900));
            try
            {
                while (true)
                {
                    await Mark(client, confirmed);
                    confirmed++;
                }
            }
            catch (HttpRequestException)
            {
                await killed;
            }
        }

        using AppProcess last = await AppProcess.Start(_data.Path);
        using HttpClient reader = ClientOf(last);
        Assert.InRange(await Count(reader), confirmed, confirmed + 1);
        output.WriteLine($"{Kills} kills of the app while it counted: {confirmed} counts confirmed, none lost.");
    }

    // What was typed is on its way for a moment; how long is told, and is no promise of a busy machine.
    [Fact]
    public async Task Killed_while_someone_types_what_was_typed_last_is_there()
    {
        var random = new Random(20_265);
        var longest = TimeSpan.Zero;
        int typed = 0, lost = 0;
        int port = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            using AppProcess app = await AppProcess.Start(_data.Path, "--port", port.ToString(System.Globalization.CultureInfo.InvariantCulture));
            port = app.Port;
            await using OpenPage open = await OpenPage.Open(fixture, app.Address);
            open.ErrorsExpected = true;
            int before = Stored();
            Assert.Equal(typed - lost, before);
            typed = before;
            lost = 0;
            var times = new List<TimeSpan>();
            var clock = Stopwatch.StartNew();
            for (int more = random.Next(1, 6); more > 0; more--)
            {
                await open.Field("bore").FillAsync($"{++typed} mm or");
                times.Add(clock.Elapsed);
                await Task.Delay(random.Next(0, 400), Cancel);
            }

            await app.Kill();
            TimeSpan end = clock.Elapsed;
            int stored = Stored();
            Assert.InRange(stored, before, typed);
            lost = typed - stored;
            // The oldest that is missing was typed so long before the kill.
            if (lost > 0 && end - times[^lost] is TimeSpan age && age > longest) longest = age;
        }

        output.WriteLine($"{Kills} kills of the app while someone typed: {typed} entries, whole each time; the oldest one not yet on the disk was typed {longest.TotalMilliseconds:0} ms before the kill.");
    }

    private static async Task KillSoon(AppProcess app, int milliseconds)
    {
        await Task.Delay(milliseconds, Cancel);
        await app.Kill();
    }

    // Changes are taken from the app's own page only.
    private static HttpClient ClientOf(AppProcess app)
    {
        var client = new HttpClient { BaseAddress = app.Address };
        client.DefaultRequestHeaders.Add("Origin", app.Address.GetLeftPart(UriPartial.Authority));
        return client;
    }

    private static async Task Mark(HttpClient client, int number)
    {
        object mark = new { id = number.ToString(CultureInfo.InvariantCulture), cut = "1/maple", kind = "sawn", at = (long)number, of = (string?)null };
        using HttpResponseMessage answer = await client.PostAsJsonAsync("/saw/marks", new { piece = "Two-wood disc", ring = "Disc", marks = new[] { mark } }, Cancel);
        answer.EnsureSuccessStatusCode();
        await answer.Content.ReadAsStringAsync(Cancel);
    }

    private static async Task<int> Count(HttpClient client)
    {
        using HttpResponseMessage answer = await client.PostAsJsonAsync("/saw/marks", new { piece = "Two-wood disc", ring = "Disc", marks = Array.Empty<object>() }, Cancel);
        answer.EnsureSuccessStatusCode();
        return (await answer.Content.ReadFromJsonAsync<System.Text.Json.JsonElement>(Cancel)).GetProperty("marks").GetArrayLength();
    }

    // The number in the field as it stands in the data; 0 when none does.
    private int Stored()
    {
        using DataStore store = DataStore.Open(_data.Path, TimeProvider.System);
        Assert.Null(store.Told);
        return store.Pieces.List().Select(p => Typed(store.Pieces.Read(p.Id).Draft)).DefaultIfEmpty().Max();
    }

    private static int Typed(string? draft)
    {
        int end = draft?.IndexOf(" mm or\"", StringComparison.Ordinal) ?? -1;
        if (end < 0) return 0;
        int begin = draft!.LastIndexOf('"', end) + 1;
        return int.Parse(draft.AsSpan(begin, end - begin), CultureInfo.InvariantCulture);
    }
}
