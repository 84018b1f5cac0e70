using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Ringwright.Web.Bench;
using Ringwright.Web.Library;

namespace Ringwright.Web.Tests;

/// <summary>Every page of the app with every example on the bench, as the server draws it.</summary>
public sealed class StationPageTests : IDisposable
{
    private static readonly string[] Pages = ["/shape/outline", "/shape/rings", "/shape/pattern", "/timber", "/saw", "/fit", "/glue", "/lathe", "/cost", "/pieces", "/shops", "/print"];
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task Every_example_is_drawn_at_every_station_whichever_ring_is_shown()
    {
        await using WebApplication app = WebServer.Build(0, _data.Path);
        await app.StartAsync(TestContext.Current.CancellationToken);
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        Workbench bench = app.Services.GetRequiredService<Workbench>();
        ImmutableArray<Web.Library.Example> examples = app.Services.GetRequiredService<Examples>().All;
        Assert.True(examples.Length >= 16);
        foreach (Web.Library.Example example in examples)
        {
            bench.Open(example.Json);
            foreach (string page in Pages) Assert.Contains("title-name\">" + example.Name, await client.GetStringAsync(page, TestContext.Current.CancellationToken), StringComparison.Ordinal);
            foreach (int ring in bench.Now.Good.Rings.Select((r, i) => (Kind: r.Ring.GetType(), i)).DistinctBy(r => r.Kind).Select(r => r.i))
            {
                bench.Select(ring);
                string saw = await client.GetStringAsync("/saw", TestContext.Current.CancellationToken);
                Assert.Contains("class=\"steps\"", saw, StringComparison.Ordinal);
                Assert.Contains("id=\"field-thickness\"", await client.GetStringAsync("/shape/rings", TestContext.Current.CancellationToken), StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Every_kind_of_piece_can_be_begun_in_either_unit()
    {
        foreach (UnitChoice units in Enum.GetValues<UnitChoice>())
        {
            Workbench bench = Example.Bench;
            bench.Show(units);
            foreach (NewPiece start in NewPiece.All)
            {
                bench.Put(start.Make(bench.Now));
                Assert.Equal(start.Label, bench.Now.Good.Piece.Name);
                Assert.DoesNotContain(bench.Now.Good.Findings, f => f.Weight == Core.Planning.Weight.Stop);
            }
        }
    }
}
