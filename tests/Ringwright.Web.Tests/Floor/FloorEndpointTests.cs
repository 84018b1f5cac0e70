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
        object sent = new { piece = "Disc", ring = "Ring 1", marks = new[] { new { id = "a", cut = "1/maple", kind = "sawn", at = 1L, of = (string?)null } } };
        for (int i = 0; i < 2; i++)
        {
            using HttpResponseMessage answer = await client.PostAsJsonAsync("/saw/marks", sent, Cancel);
            string text = await answer.Content.ReadAsStringAsync(Cancel);
            Assert.Equal("[{\"id\":\"a\",\"cut\":\"1/maple\",\"kind\":\"sawn\",\"at\":1,\"of\":null}]", text);
        }

        Assert.Equal(1, CutTally.Of(app.Services.GetRequiredService<ShopFloor>().Now.MarksOf("Disc", "Ring 1"), "1/maple").Good);
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
        string page = await client.GetStringAsync(new Uri(FloorEndpoints.Page(ring), UriKind.Relative), Cancel);
        Assert.Contains("data-job=", page, StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
        using HttpResponseMessage sheet = await client.GetAsync(new Uri(FloorEndpoints.Sheet(ring), UriKind.Relative), Cancel);
        Assert.Equal("application/pdf", sheet.Content.Headers.ContentType?.MediaType);
        using HttpResponseMessage none = await client.GetAsync(new Uri("/saw/nowhere", UriKind.Relative), Cancel);
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        using HttpResponseMessage noSheet = await client.GetAsync(new Uri("/saw/nowhere/sheet.pdf", UriKind.Relative), Cancel);
        Assert.Contains("there is none called “nowhere”", await noSheet.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
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
