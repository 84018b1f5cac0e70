using System.Net;
using System.Net.WebSockets;

namespace Ringwright.Web.Tests.Security;

/// <summary>What the app answers to requests that its own page does not make.</summary>
public class SecurityTests(RunningApp app) : IClassFixture<RunningApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_answer_carries_the_headers()
    {
        using HttpResponseMessage answer = await Get("/");
        string policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
        Assert.Equal("DENY", Assert.Single(answer.Headers.GetValues("X-Frame-Options")));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Fact]
    public async Task Another_host_name_is_refused()
    {
        using HttpResponseMessage answer = await Get("/", ("Host", "attacker.example"));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory]
    [InlineData("http://attacker.example")]
    [InlineData("null")]
    [InlineData("http://127.0.0.1:1")]
    public async Task Another_origin_is_refused(string origin)
    {
        using HttpResponseMessage answer = await Get("/pieces/current.json", ("Origin", origin));
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("http://attacker.example")]
    public async Task A_socket_of_another_page_is_refused(string? origin)
    {
        using var socket = new ClientWebSocket();
        socket.Options.CollectHttpResponseDetails = true;
        if (origin is not null) socket.Options.SetRequestHeader("Origin", origin);
        await Assert.ThrowsAsync<WebSocketException>(() => socket.ConnectAsync(new Uri($"ws://{app.Address.Authority}/_blazor"), Cancel));
        Assert.Equal(HttpStatusCode.Forbidden, socket.HttpStatusCode);
    }

    [Fact]
    public async Task The_copy_is_a_file_the_library_reads()
    {
        using HttpResponseMessage answer = await Get("/pieces/current.json");
        Assert.NotEmpty(Core.Documents.DocumentJson.ReadPiece(await answer.Content.ReadAsStringAsync(Cancel)).Rings);
    }

    [Fact]
    public async Task An_unknown_address_gets_a_sentence()
    {
        using HttpResponseMessage answer = await Get("/nowhere");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("Nothing is at this address", await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    private async Task<HttpResponseMessage> Get(string path, params (string Name, string Value)[] headers)
    {
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(app.Address, path));
        foreach ((string name, string value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        return await client.SendAsync(request, Cancel);
    }
}
