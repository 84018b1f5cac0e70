using System.Net;
using System.Net.WebSockets;
using System.Text;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Security;

/// <summary>
/// What a page of another site can have the user's browser ask for (OWASP Cross-Site Request Forgery Prevention; W3C Fetch
/// Metadata; DNS rebinding), from memory.
/// </summary>
public class ForgeryTests(RunningApp app) : IClassFixture<RunningApp>
{
    private const string Marks = "{\"piece\":\"Two-wood disc\",\"ring\":\"Disc\",\"marks\":[{\"id\":\"f\",\"cut\":\"1/maple\",\"kind\":\"sawn\",\"at\":1,\"of\":null}]}";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private string Own => app.Address.GetLeftPart(UriPartial.Authority);

    [Theory]
    [InlineData("Origin", "http://attacker.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "")]
    [InlineData("Origin", "http://127.0.0.1")]
    [InlineData("Origin", "http://127.0.0.1.attacker.example")]
    [InlineData("Origin", "OWN.attacker.example")]
    [InlineData("Origin", "https:OWN")]
    [InlineData("Origin", "OWN, http://attacker.example")]
    [InlineData("Origin", "OWN/")]
    [InlineData("Referer", "OWN/saw/Disc")]
    [InlineData("Referer", "http://attacker.example/")]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    public async Task A_change_needs_an_origin_that_is_ours(string name, string value)
    {
        string sent = value.Replace("https:OWN", "https" + Own[4..], StringComparison.Ordinal).Replace("OWN", Own, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, await Post("application/json", (name, sent)));
        Untouched();
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    [InlineData("made-up")]
    public async Task What_the_browser_calls_another_site_is_refused_whatever_else_it_says(string site)
    {
        Assert.Equal(HttpStatusCode.Forbidden, await Post("application/json", ("Origin", Own), ("Sec-Fetch-Site", site)));
        Assert.Equal(HttpStatusCode.Forbidden, (await Get("/pieces/current.json", ("Sec-Fetch-Site", site))).StatusCode);
        Untouched();
    }

    // What a form of another page can send without being asked first, and the ways around a method.
    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("multipart/form-data; boundary=x")]
    public async Task A_form_of_another_page_changes_nothing(string type)
    {
        Assert.Equal(HttpStatusCode.Forbidden, await Post(type, ("Origin", "http://attacker.example")));
        Assert.Equal(HttpStatusCode.Forbidden, await Post(type, ("X-HTTP-Method-Override", "GET")));
        Untouched();
    }

    [Fact]
    public async Task No_other_site_is_ever_told_that_it_may_read()
    {
        using var preflight = new HttpRequestMessage(HttpMethod.Options, new Uri(app.Address, "/saw/marks"));
        preflight.Headers.Add("Origin", "http://attacker.example");
        preflight.Headers.Add("Access-Control-Request-Method", "POST");
        using HttpResponseMessage answer = await app.Client.SendAsync(preflight, Cancel);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        foreach (HttpResponseMessage each in (HttpResponseMessage[])[answer, await Get("/pieces/current.json"), await Get("/")])
            Assert.DoesNotContain(each.Headers, h => h.Key.StartsWith("Access-Control", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("/_blazor/negotiate?negotiateVersion=1")]
    [InlineData("/_blazor/disconnect")]
    [InlineData("/_blazor")]
    [InlineData("/_blazor/")]
    [InlineData("/_blazor?id=x")]
    public async Task A_circuit_is_not_begun_for_another_page(string path)
    {
        foreach (string? origin in (string?[])[null, "null", "http://attacker.example", "http://localhost:1"])
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(app.Address, path)) { Content = new StringContent("") };
            if (origin is not null) request.Headers.Add("Origin", origin);
            using HttpResponseMessage answer = await app.Client.SendAsync(request, Cancel);
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
            (WebSocketException? refused, HttpStatusCode status) = await Socket(origin);
            Assert.NotNull(refused);
            Assert.Equal(HttpStatusCode.Forbidden, status);
        }

        Assert.Null((await Socket(Own)).Refused);
    }

    [Theory]
    [InlineData("attacker.example")]
    [InlineData("127.0.0.1.attacker.example")]
    [InlineData("localhost.attacker.example")]
    [InlineData("attacker.example@127.0.0.1")]
    [InlineData("0.0.0.0")]
    [InlineData("127.1")]
    [InlineData("2130706433")]
    [InlineData("127.0.0.2")]
    [InlineData("[::ffff:127.0.0.1]")]
    [InlineData("localhost.")]
    [InlineData("")]
    public async Task A_name_that_was_made_to_point_here_is_refused(string host)
    {
        string withPort = host.Length == 0 ? "" : $"{host}:{app.Address.Port}";
        foreach (string path in (string[])["/", "/pieces/current.json", "/css/paper.css", "/_blazor/negotiate"])
        {
            RawRequest.RawAnswer answer = await RawRequest.Get(app.Address, path, $"Host: {withPort}", $"Origin: http://{withPort}");
            Assert.Equal(400, answer.Status);
        }
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("LOCALHOST")]
    [InlineData("127.0.0.1")]
    public async Task The_machines_own_names_are_answered(string host) =>
        Assert.Equal(200, (await RawRequest.Get(app.Address, "/pieces/current.json", $"Host: {host}:{app.Address.Port}")).Status);

    // A request that names a host in its first line, as to a proxy, and two Host lines.
    [Fact]
    public async Task Two_hosts_in_one_request_do_not_pass()
    {
        Assert.Equal(400, (await RawRequest.Get(app.Address, "http://attacker.example/pieces/current.json", $"Host: {app.Address.Authority}")).Status);
        Assert.Equal(400, (await RawRequest.Get(app.Address, "/pieces/current.json", $"Host: {app.Address.Authority}", "Host: attacker.example")).Status);
        Assert.Equal(400, (await RawRequest.Get(app.Address, "/pieces/current.json", "Host: attacker.example", $"X-Forwarded-Host: {app.Address.Authority}")).Status);
    }

    private void Untouched() => Assert.DoesNotContain(app.Service<ShopFloor>().Now.Marks.Values, marks => marks.Any(m => m.Id == "f"));

    private async Task<HttpStatusCode> Post(string type, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(app.Address, "/saw/marks")) { Content = new StringContent(Marks, Encoding.UTF8) };
        request.Content.Headers.ContentType = System.Net.Http.Headers.MediaTypeHeaderValue.Parse(type);
        foreach ((string name, string value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        using HttpResponseMessage answer = await app.Client.SendAsync(request, Cancel);
        return answer.StatusCode;
    }

    private async Task<HttpResponseMessage> Get(string path, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(app.Address, path));
        foreach ((string name, string value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        return await app.Client.SendAsync(request, Cancel);
    }

    private async Task<(WebSocketException? Refused, HttpStatusCode Status)> Socket(string? origin)
    {
        using var socket = new ClientWebSocket();
        socket.Options.CollectHttpResponseDetails = true;
        if (origin is not null) socket.Options.SetRequestHeader("Origin", origin);
        try
        {
            await socket.ConnectAsync(new Uri($"ws://{app.Address.Authority}/_blazor"), Cancel);
            return (null, socket.HttpStatusCode);
        }
        catch (WebSocketException e)
        {
            return (e, socket.HttpStatusCode);
        }
    }
}
