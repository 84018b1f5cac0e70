using System.Net;
using System.Net.WebSockets;
using System.Text;
using Ringwright.Web.Bench;
using Ringwright.Web.Viewing;

namespace Ringwright.Web.Tests.Security;

/// <summary>The headers that keep a browser on our side, on every kind of answer (OWASP Secure Headers Project, from memory).</summary>
public class HeaderTests(RunningApp app) : IClassFixture<RunningApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/", 200)]
    [InlineData("/shape", 200)]
    [InlineData("/sharing", 200)]
    [InlineData("/saw/Disc", 302)]
    [InlineData("/saw/99/1", 422)]
    [InlineData("/saw/none", 404)]
    [InlineData("/nowhere", 404)]
    [InlineData("/css/none.css", 404)]
    [InlineData("/pair", 302)]
    [InlineData("/saw/marks", 404)]
    [InlineData("/sharing/code.svg?place=0", 404)]
    [InlineData("/pieces/current.json", 200)]
    [InlineData("/files/shop.json", 200)]
    [InlineData("/files/rack.json", 200)]
    [InlineData("/pieces/current/job-sheet.pdf", 200)]
    [InlineData("/pieces/current/job-sheet.pdf?paper=a3", 422)]
    [InlineData("/pieces/current/labels.pdf?skip=x", 400)]
    [InlineData("/pieces/current/views/ring.svg", 200)]
    [InlineData("/pieces/current/views/ring.png", 200)]
    [InlineData("/pieces/current/cut-list.csv", 200)]
    [InlineData("/pieces/current/plan.json", 200)]
    [InlineData("/pieces/current/figures.xlsx", 200)]
    [InlineData("/pieces/current/solid.glb", 200)]
    [InlineData("/pieces/current/templates.svg.zip", 200)]
    [InlineData("/rings/Disc/job-sheet.pdf", 200)]
    [InlineData("/viewer/none/fine.bin", 404)]
    public async Task The_work_and_every_refusal_carry_them_and_are_kept_nowhere(string path, int status)
    {
        using HttpResponseMessage answer = await Send(HttpMethod.Get, path);
        Assert.Equal(status, (int)answer.StatusCode);
        await Carries(answer);
        Assert.True(answer.Headers.CacheControl?.NoStore, path);
    }

    [Theory]
    [InlineData("GET", "/pieces/current.json", "Host: attacker.example", 400)]
    [InlineData("GET", "/pieces/current.json", "Origin: http://attacker.example", 403)]
    [InlineData("POST", "/saw/marks", "", 403)]
    [InlineData("POST", "/saw/marks", "Origin: own", 400)]
    [InlineData("POST", "/pieces/current.json", "Origin: own", 405)]
    [InlineData("DELETE", "/files/shop.json", "Origin: own", 405)]
    [InlineData("HEAD", "/nowhere", "", 404)]
    public async Task Refusals_of_every_kind_carry_them(string method, string path, string header, int status)
    {
        using HttpResponseMessage answer = await Send(new(method), path, header);
        Assert.Equal(status, (int)answer.StatusCode);
        await Carries(answer);
        Assert.True(answer.Headers.CacheControl?.NoStore, path);
    }

    [Fact]
    public async Task The_apps_own_files_carry_them_and_may_be_kept_as_long_as_they_are_the_same()
    {
        string page = await app.Client.GetStringAsync("/", Cancel);
        foreach (string path in (string[])["/css/paper.css", "/js/dist/viewer.js", "/_framework/blazor.web.js", "/mark.svg", "/" + page.Split("href=\"")[3].Split('"')[0].TrimStart('/')])
        {
            using HttpResponseMessage answer = await Send(HttpMethod.Get, path);
            Assert.True(answer.IsSuccessStatusCode, path);
            await Carries(answer);
            Assert.False(answer.Headers.CacheControl?.NoStore ?? true, path);
            using HttpResponseMessage again = await Send(HttpMethod.Get, path, $"If-None-Match: {answer.Headers.ETag}");
            Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
            await Carries(again);
        }
    }

    [Fact]
    public async Task Meshes_are_asked_for_anew_each_time()
    {
        ViewedPlan viewed = app.Service<ViewerStore>().Publish(app.Service<Workbench>().Now.Good);
        foreach (string detail in (string[])["coarse.bin", "fine.bin"])
        {
            using HttpResponseMessage answer = await Send(HttpMethod.Get, $"/viewer/{viewed.Version}/{detail}");
            await Carries(answer);
            Assert.Equal("no-cache, private", answer.Headers.CacheControl?.ToString());
            using HttpResponseMessage again = await Send(HttpMethod.Get, $"/viewer/{viewed.Version}/{detail}", $"If-None-Match: {answer.Headers.ETag}");
            Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
            await Carries(again);
        }

        GC.KeepAlive(viewed);
    }

    [Fact]
    public async Task The_answer_that_opens_a_socket_carries_them()
    {
        using var socket = new ClientWebSocket();
        socket.Options.CollectHttpResponseDetails = true;
        socket.Options.SetRequestHeader("Origin", app.Address.GetLeftPart(UriPartial.Authority));
        await socket.ConnectAsync(new Uri($"ws://{app.Address.Authority}/_blazor"), Cancel);
        Assert.Equal("nosniff", Assert.Single(socket.HttpResponseHeaders!["X-Content-Type-Options"]));
    }

    [Fact]
    public async Task A_body_that_is_too_large_is_refused_with_a_sentence()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, new Uri(app.Address, "/saw/marks")) { Content = new ByteArrayContent(new byte[WebServer.LargestFile + 1]) };
        request.Headers.Add("Origin", app.Address.GetLeftPart(UriPartial.Authority));
        // Else the answer comes while the body is still being sent.
        request.Headers.ExpectContinue = true;
        using HttpResponseMessage answer = await app.Client.SendAsync(request, Cancel);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Equal("That is too large (413); at most 4 MB are read.", await answer.Content.ReadAsStringAsync(Cancel));
        await Carries(answer);
    }

    [Fact]
    public async Task A_host_that_was_refused_is_not_repeated()
    {
        RawRequest.RawAnswer answer = await RawRequest.Get(app.Address, "/", "Host: attacker.example;x");
        Assert.Equal(400, answer.Status);
        Assert.DoesNotContain("attacker", answer.Text, StringComparison.Ordinal);
    }

    private static async Task Carries(HttpResponseMessage answer)
    {
        string at = $"{answer.RequestMessage!.Method} {answer.RequestMessage.RequestUri}";
        string policy = Of("Content-Security-Policy");
        foreach (string part in (string[])["default-src 'none'; ", "script-src 'self'; ", "style-src 'self'; ", "frame-ancestors 'none'", "base-uri 'self'; ", "form-action 'self'; "])
            Assert.Contains(part, policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("*", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", Of("X-Content-Type-Options"));
        Assert.Equal("DENY", Of("X-Frame-Options"));
        Assert.Equal("same-origin", Of("Cross-Origin-Opener-Policy"));
        Assert.Equal("same-origin", Of("Cross-Origin-Resource-Policy"));
        Assert.Equal("no-referrer", Of("Referrer-Policy"));
        Assert.Contains("camera=()", Of("Permissions-Policy"), StringComparison.Ordinal);
        Assert.False(answer.Headers.Contains("Server"), at);
        byte[] body = await answer.Content.ReadAsByteArrayAsync(Cancel);
        if (body.Length == 0) return;
        // A browser that may not guess has to be told.
        Assert.True(answer.Content.Headers.ContentType is not null, at);
        if (answer.IsSuccessStatusCode) return;
        Assert.Equal("text/plain; charset=utf-8", answer.Content.Headers.ContentType.ToString());
        string words = Encoding.UTF8.GetString(body);
        Assert.True(words.Length < 300 && words.EndsWith('.') && !words.Contains('\n', StringComparison.Ordinal), $"{at}: {words}");

        string Of(string name) => answer.Headers.TryGetValues(name, out IEnumerable<string>? values) ? Assert.Single(values) : throw new Xunit.Sdk.XunitException($"{at} has no {name}");
    }

    private Task<HttpResponseMessage> Send(HttpMethod method, string path, string header = "")
    {
        var request = new HttpRequestMessage(method, new Uri(app.Address, path));
        if (header.Split(": ") is [string name, string value]) request.Headers.TryAddWithoutValidation(name, value == "own" ? app.Address.GetLeftPart(UriPartial.Authority) : value);
        return new HttpMessageInvoker(new SocketsHttpHandler { AllowAutoRedirect = false }).SendAsync(request, Cancel);
    }
}
