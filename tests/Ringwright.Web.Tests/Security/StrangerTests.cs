using System.Net;
using System.Net.WebSockets;
using Ringwright.Web.Sharing;
using Ringwright.Web.Tests.Sharing;

namespace Ringwright.Web.Tests.Security;

/// <summary>What a device in the same network can try, before and after it was let in.</summary>
public class StrangerTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Guessing_stops_and_never_shuts_out_the_owner_or_who_holds_the_right_code()
    {
        await using SharedApp app = await SharedApp.Start();
        HashSet<string> codes = [app.Sharing.Code!.Value.Spoken];
        int tries = 0;
        for (int address = 10; address < 20; address++)
        {
            using OtherDevice guesser = app.Device($"127.0.2.{address}");
            for (int i = 0; i < ShareLimits.TriesOfOne + 2; i++)
            {
                OtherDevice.Answer answer = await guesser.Pair(("code", $"{tries:00000000}"));
                Assert.NotEqual(HttpStatusCode.Redirect, answer.Status);
                if (answer.Status == HttpStatusCode.Forbidden) tries++;
                codes.Add(app.Sharing.Code!.Value.Spoken);
            }
        }

        // All together no more than this in a minute, and a code was never tried more often than it may be.
        Assert.InRange(tries, 1, ShareLimits.TriesOfAll);
        Assert.True(codes.Count > tries / PairingCode.WrongTries, $"{codes.Count} codes in {tries} tries");

        // The owner works on, asks for a new code, stops and starts; then whoever reads it comes in.
        using var own = new HttpClient { BaseAddress = app.Own };
        for (int i = 0; i < 100; i++) Assert.Equal(HttpStatusCode.OK, (await own.GetAsync("/pieces/current.json", Cancel)).StatusCode);
        string before = app.Sharing.Code!.Value.Spoken;
        app.Sharing.RenewCode();
        Assert.NotEqual(before, app.Sharing.Code!.Value.Spoken);
        Assert.Equal(HttpStatusCode.OK, (await own.GetAsync("/sharing", Cancel)).StatusCode);
    }

    [Fact]
    public async Task Tries_with_a_link_are_limited_as_well()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice guesser = app.Device();
        HttpStatusCode last = default;
        for (int i = 0; i <= ShareLimits.TriesOfOne; i++) last = (await guesser.Pair(("link", new string((char)('a' + i), 22)))).Status;
        Assert.Equal(HttpStatusCode.TooManyRequests, last);
    }

    // Every way to write the address that routing or a browser might take for the same.
    [Fact]
    public async Task A_device_that_was_let_in_does_not_come_to_the_owners_pages()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        foreach (string path in (string[])[
            "/sharing", "/SHARING", "/sharing/", "/%73haring", "/./sharing", "/pieces/../sharing", "/pieces/%2e%2e/sharing", "/sharing?x=1", "//sharing",
            "/sharing/code.svg?place=0", "/Sharing/Code.svg?place=0", "/sharing/./code.svg?place=0", "/sharing%2fcode.svg?place=0"])
        {
            RawRequest.RawAnswer answer = await RawRequest.Get(app.Shared, path, "Cookie: " + device.Cookie);
            Assert.True(answer.Status is 403 or 404, $"{path}: {answer.Status}");
            Assert.DoesNotContain(app.Sharing.Code!.Value.Spoken, answer.Text, StringComparison.Ordinal);
            Assert.DoesNotContain(app.Sharing.Code!.Value.Link, answer.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("<svg", answer.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_window_of_another_device_is_counted_for_there_is_no_way_but_sockets()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        foreach (string path in (string[])["/_blazor", "/_blazor/", "/_BLAZOR", "/_blazor?id=x", "/_blazor/?id=x"])
            foreach (HttpMethod method in (HttpMethod[])[HttpMethod.Get, HttpMethod.Post])
            {
                OtherDevice.Answer answer = await device.Send(method, path, null, ("Origin", device.Origin));
                Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
                Assert.Contains("needs a WebSocket", answer.Text, StringComparison.Ordinal);
            }
    }

    [Fact]
    public async Task A_key_is_of_use_only_while_its_device_is_in()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        OtherDevice.Answer paired = await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        string cookie = Assert.Single(paired.Message.Headers.GetValues("Set-Cookie"));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("path=/", cookie, StringComparison.OrdinalIgnoreCase);
        // Gone with the browser, for no other host.
        Assert.DoesNotContain("expires", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("max-age", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("domain", cookie, StringComparison.OrdinalIgnoreCase);

        (ClientWebSocket open, HttpStatusCode status) = await device.Socket(device.Origin);
        using ClientWebSocket held = open;
        Assert.Equal(HttpStatusCode.SwitchingProtocols, status);
        string key = device.Cookie;
        app.Sharing.Remove(Assert.Single(app.Sharing.Devices).Id);
        await Assert.ThrowsAnyAsync<WebSocketException>(() => held.ReceiveAsync(new byte[64], Cancel));
        foreach (string path in (string[])["/", "/pieces/current.json", "/pieces/current/job-sheet.pdf", "/_blazor/negotiate"])
            Assert.Equal(302, (await RawRequest.Get(app.Shared, path, "Cookie: " + key)).Status);
    }

    [Fact]
    public async Task The_owners_own_address_is_not_to_be_had_from_outside_by_saying_so()
    {
        await using SharedApp app = await SharedApp.Start();
        foreach (string header in (string[])["X-Forwarded-For: 127.0.0.1", "Forwarded: for=127.0.0.1", "X-Real-IP: 127.0.0.1", "X-Original-URL: /pair", "X-Rewrite-URL: /pair"])
            Assert.Equal(302, (await RawRequest.Get(app.Shared, "/pieces/current.json", header)).Status);
    }

    [Fact]
    public async Task What_a_stranger_gets_carries_the_headers_and_is_kept_nowhere()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        foreach (string path in (string[])["/", "/pair", "/pieces/current.json", "/nowhere"])
        {
            OtherDevice.Answer answer = await device.Get(path);
            Assert.Equal("DENY", Assert.Single(answer.Message.Headers.GetValues("X-Frame-Options")));
            Assert.Contains("frame-ancestors 'none'", Assert.Single(answer.Message.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
            Assert.Equal("nosniff", Assert.Single(answer.Message.Headers.GetValues("X-Content-Type-Options")));
            Assert.True(answer.Message.Headers.CacheControl?.NoStore, path);
        }
    }
}
