using System.Net;
using System.Net.Http.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Ringwright.Web.Bench;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Floor;

/// <summary>What the tablet asks the bench.</summary>
public sealed class FloorEndpointTests : IDisposable
{
    private readonly TemporaryFolder _data = new();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task Marks_are_taken_once_and_all_of_the_ring_come_back()
    {
        await using WebApplication app = await Start();
        using HttpClient client = Client(app);
        string piece = app.Services.GetRequiredService<FloorNumbers>().Own();
        object sent = new { piece, ring = "1", marks = new[] { new { id = "a", cut = "1/maple", kind = "sawn", at = 1L, of = (string?)null } } };
        for (int i = 0; i < 2; i++)
        {
            using HttpResponseMessage answer = await client.PostAsJsonAsync("/saw/marks", sent, Cancel);
            string text = await answer.Content.ReadAsStringAsync(Cancel);
            Assert.Equal("{\"marks\":[{\"id\":\"a\",\"cut\":\"1/maple\",\"kind\":\"sawn\",\"at\":1,\"of\":null}],\"told\":null}", text);
        }

        ShopFloor floor = app.Services.GetRequiredService<ShopFloor>();
        Assert.Equal(1, CutTally.Of(floor.Now.MarksOf(FloorNames.Job(piece, "1")), "1/maple").Good);
        // What came from there is taken back here; what is sent again changes nothing.
        Assert.Equal("sawn: Disc", Assert.Single(floor.Now.Steps).What);
        Assert.Null(floor.Return(1));
        using HttpResponseMessage again = await client.PostAsJsonAsync("/saw/marks", sent, Cancel);
        Assert.Contains("undone", await again.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        Assert.Equal(0, CutTally.Of(floor.Now.MarksOf(FloorNames.Job(piece, "1")), "1/maple").Good);
    }

    [Fact]
    public async Task A_page_that_is_older_than_numbers_still_gets_its_taps_in()
    {
        await using WebApplication app = await Start();
        using HttpClient client = Client(app);
        object sent = new { piece = "Two-wood disc", ring = "Disc", marks = new[] { new { id = "a", cut = "1/maple", kind = "sawn", at = 1L } } };
        using HttpResponseMessage answer = await client.PostAsJsonAsync("/saw/marks", sent, Cancel);
        Assert.True(answer.IsSuccessStatusCode);
        string piece = app.Services.GetRequiredService<FloorNumbers>().Own();
        Assert.Single(app.Services.GetRequiredService<ShopFloor>().Now.MarksOf(FloorNames.Job(piece, "1")));
        using HttpResponseMessage none = await client.PostAsJsonAsync("/saw/marks", new { piece = "77", ring = "1", marks = Array.Empty<object>() }, Cancel);
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        Assert.Contains("taps are kept", await none.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_one_at_the_saw_is_told_when_the_ring_is_planned_anew()
    {
        await using WebApplication app = await Start();
        using HttpClient client = Client(app);
        Workbench bench = app.Services.GetRequiredService<Workbench>();
        string piece = app.Services.GetRequiredService<FloorNumbers>().Own();
        CutBasis[] basis = [.. SawCut.Of(bench.Now.Ring, bench.Now.Good.Shop).Select(CutBasis.Of)];
        object Sent(string id) => new { piece, ring = "1", basis, marks = new[] { new { id, cut = basis[0].Cut, kind = "sawn", at = 1L } } };
        using HttpResponseMessage first = await client.PostAsJsonAsync("/saw/marks", Sent("a"), Cancel);
        Assert.Contains("\"told\":null", await first.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        bench.Type(Web.Bench.Fields.RingFields.Segments, "18");
        using HttpResponseMessage second = await client.PostAsJsonAsync("/saw/marks", Sent("b"), Cancel);
        Assert.Contains("planned anew", await second.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        Assert.Equal(2, app.Services.GetRequiredService<ShopFloor>().Now.MarksOf(FloorNames.Job(piece, "1")).Length);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("null")]
    [InlineData("{\"piece\":\"Disc\",\"ring\":\"1\",\"marks\":[{\"id\":\"a\",\"cut\":\"c\",\"kind\":\"eaten\",\"at\":1}]}")]
    public async Task What_are_no_marks_is_refused_with_a_sentence(string body)
    {
        await using WebApplication app = await Start();
        using HttpClient client = Client(app);
        using var content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
        using HttpResponseMessage answer = await client.PostAsync(new Uri("/saw/marks", UriKind.Relative), content, Cancel);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("Marks are sent as", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ring_has_its_page_and_its_sheet_and_another_name_has_none()
    {
        await using WebApplication app = await Start();
        using HttpClient client = Client(app);
        string ring = app.Services.GetRequiredService<Workbench>().Now.Ring.Ring.Name;
        string piece = app.Services.GetRequiredService<FloorNumbers>().Own();
        string page = await client.GetStringAsync(new Uri(FloorEndpoints.Page(piece, "1"), UriKind.Relative), Cancel);
        Assert.Contains("data-job=", page, StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
        // As addresses were once.
        Assert.Contains("data-job=", await client.GetStringAsync(new Uri("/saw/" + Uri.EscapeDataString(ring), UriKind.Relative), Cancel), StringComparison.Ordinal);
        using HttpResponseMessage sheet = await client.GetAsync(new Uri(FloorEndpoints.SheetOf(piece, "1"), UriKind.Relative), Cancel);
        Assert.Equal("application/pdf", sheet.Content.Headers.ContentType?.MediaType);
        using HttpResponseMessage none = await client.GetAsync(new Uri("/saw/nowhere", UriKind.Relative), Cancel);
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        foreach ((string path, string says) in new[] { ("/saw/99/1", "there is none with this number"), ($"/saw/{piece}/9", "not in it any more"), ("/saw/x/1/sheet.pdf", "not among the pieces") })
        {
            using HttpResponseMessage gone = await client.GetAsync(new Uri(path, UriKind.Relative), Cancel);
            Assert.Equal(HttpStatusCode.UnprocessableEntity, gone.StatusCode);
            Assert.Contains(says, await gone.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_piece_that_is_not_on_the_bench_has_its_page_too()
    {
        await using WebApplication app = await Start();
        using HttpClient client = Client(app);
        string piece = app.Services.GetRequiredService<FloorNumbers>().Own();
        Workbench bench = app.Services.GetRequiredService<Workbench>();
        bench.Put(Example.BenchWith("feature-bowl.json").Now);
        string page = await client.GetStringAsync(new Uri(FloorEndpoints.Page(piece, "1"), UriKind.Relative), Cancel);
        Assert.Contains("Two-wood disc; on the bench now: " + bench.Now.Good.Piece.Name, page, StringComparison.Ordinal);
    }

    private async Task<WebApplication> Start()
    {
        WebApplication app = WebServer.Build(0, _data.Path);
        await app.StartAsync(Cancel);
        return app;
    }

    // As the app's own page asks.
    private static HttpClient Client(WebApplication app)
    {
        var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        client.DefaultRequestHeaders.Add("Origin", app.Urls.First());
        return client;
    }
}
