using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Net.WebSockets;
using Ringwright.Core;
using Ringwright.Web.Sharing;

namespace Ringwright.Web.Tests.Sharing;

/// <summary>Sharing over real HTTP between addresses of this machine.</summary>
public class ShareTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Nothing_is_listened_on_but_the_own_machine_until_it_is_asked_for()
    {
        await using SharedApp app = await SharedApp.Start(share: false);
        Assert.False(app.Sharing.IsOn);
        Assert.Null(app.Sharing.Code);
        using var client = new TcpClient();
        await Assert.ThrowsAsync<SocketException>(async () => await client.ConnectAsync(IPAddress.Parse("127.0.0.2"), app.Own.Port, Cancel));
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/print")]
    [InlineData("/pieces/current.json")]
    [InlineData("/pieces/current/job-sheet.pdf")]
    [InlineData("/css/timber.css")]
    [InlineData("/_framework/blazor.web.js")]
    [InlineData("/sharing")]
    [InlineData("/nowhere")]
    public async Task A_stranger_is_led_to_the_pairing_page_from_everywhere(string path)
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        OtherDevice.Answer answer = await device.Get(path);
        Assert.Equal(HttpStatusCode.Redirect, answer.Status);
        Assert.StartsWith("/pair", answer.Location, StringComparison.Ordinal);
        Assert.Empty(answer.Text);
        OtherDevice.Answer page = await device.Get(answer.Location!);
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.DoesNotContain(app.Bench.Now.Good.Piece.Name, page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(app.Sharing.Code!.Value.Spoken, page.Text, StringComparison.Ordinal);
        Assert.Equal("no-store", page.Message.Headers.CacheControl?.ToString());
        Assert.Contains("script-src 'self'", Assert.Single(page.Message.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_code_lets_a_device_in_and_on_to_what_it_wanted()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        OtherDevice.Answer answer = await device.Pair(("code", app.Sharing.Code!.Value.Spoken), ("name", "Tablet"), ("to", "/rings/Disc/job-sheet.pdf"));
        Assert.Equal((HttpStatusCode.Redirect, "/rings/Disc/job-sheet.pdf"), (answer.Status, answer.Location));
        string cookie = Assert.Single(answer.Message.Headers.GetValues("Set-Cookie"));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.OK, (await device.Get("/")).Status);
        Assert.StartsWith("%PDF", (await device.Get("/pieces/current/job-sheet.pdf")).Text, StringComparison.Ordinal);
        Device known = Assert.Single(app.Sharing.Devices);
        Assert.Equal(("Tablet", "127.0.0.3"), (known.Name, known.Address.ToString()));
        Assert.Equal(HttpStatusCode.Forbidden, (await device.Get("/sharing")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await device.Get("/sharing/code.svg?place=0")).Status);
        using OtherDevice other = app.Device("127.0.0.4");
        Assert.Equal(HttpStatusCode.Redirect, (await other.Get("/")).Status);
    }

    [Fact]
    public async Task The_link_lets_in_once()
    {
        await using SharedApp app = await SharedApp.Start();
        string secret = app.Sharing.Code!.Value.Link;
        using OtherDevice device = app.Device(), late = app.Device("127.0.0.4");
        // Looking at the link, as a preview does, uses nothing up.
        Assert.Contains(secret, (await device.Get("/pair?link=" + secret)).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Redirect, (await device.Pair(("link", secret))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await late.Pair(("link", secret))).Status);
        Assert.Equal("Device 1", Assert.Single(app.Sharing.Devices).Name);
    }

    [Fact]
    public async Task Wrong_codes_change_the_code_and_are_limited()
    {
        await using SharedApp app = await SharedApp.Start();
        string first = app.Sharing.Code!.Value.Spoken;
        using OtherDevice device = app.Device();
        string wrong = first[0] == '0' ? "11111111" : "00000000";
        for (int i = 0; i < PairingCode.WrongTries; i++)
        {
            OtherDevice.Answer answer = await device.Pair(("code", wrong));
            Assert.Equal(HttpStatusCode.Forbidden, answer.Status);
            Assert.Contains("not the one that is shown", answer.Text, StringComparison.Ordinal);
        }

        Assert.NotEqual(first, app.Sharing.Code!.Value.Spoken);
        Assert.Equal(HttpStatusCode.Forbidden, (await device.Pair(("code", first))).Status);
        for (int i = PairingCode.WrongTries + 1; i < ShareLimits.TriesOfOne; i++) await device.Pair(("code", wrong));
        OtherDevice.Answer limited = await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        Assert.Equal(HttpStatusCode.TooManyRequests, limited.Status);
        Assert.NotNull(limited.Message.Headers.RetryAfter);
        Assert.Contains("wait", limited.Text, StringComparison.Ordinal);
        // Another device has tries of its own.
        using OtherDevice other = app.Device("127.0.0.4");
        Assert.Equal(HttpStatusCode.Redirect, (await other.Pair(("code", app.Sharing.Code!.Value.Spoken))).Status);
    }

    [Fact]
    public async Task All_addresses_together_are_limited_too()
    {
        await using SharedApp app = await SharedApp.Start();
        int refused = 0;
        for (int i = 0; i <= ShareLimits.TriesOfAll; i++)
        {
            using OtherDevice device = app.Device($"127.0.1.{i + 1}");
            if ((await device.Pair(("code", "x"))).Status == HttpStatusCode.TooManyRequests) refused++;
        }

        Assert.Equal(1, refused);
    }

    [Fact]
    public async Task Stopping_ends_sessions_sockets_and_the_listening()
    {
        await using SharedApp app = await SharedApp.Start();
        Uri shared = app.Shared;
        using OtherDevice device = app.Device();
        await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        (ClientWebSocket socket, _) = await device.Socket(device.Origin);
        using ClientWebSocket held = socket;
        Assert.Equal(WebSocketState.Open, held.State);
        await app.Sharing.Stop();
        await Assert.ThrowsAnyAsync<WebSocketException>(() => held.ReceiveAsync(new byte[64], Cancel));
        await Assert.ThrowsAsync<SocketException>(() => Refused(shared));
        Assert.Equal(HttpStatusCode.OK, (await new HttpClient().GetAsync(app.Own, Cancel)).StatusCode);
        await app.Sharing.Start(IPAddress.Parse(shared.Host));
        Assert.Empty(app.Sharing.Devices);
        Assert.Equal(HttpStatusCode.Redirect, (await device.Get("/")).Status);
    }

    [Fact]
    public async Task A_removed_device_is_a_stranger_again_and_the_others_stay()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device(), other = app.Device("127.0.0.4");
        await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        await other.Pair(("code", app.Sharing.Code!.Value.Spoken));
        (ClientWebSocket socket, _) = await device.Socket(device.Origin);
        using ClientWebSocket held = socket;
        app.Sharing.Remove(1);
        await Assert.ThrowsAnyAsync<WebSocketException>(() => held.ReceiveAsync(new byte[64], Cancel));
        Assert.Equal(HttpStatusCode.Redirect, (await device.Get("/")).Status);
        Assert.Equal(HttpStatusCode.OK, (await other.Get("/")).Status);
    }

    [Fact]
    public async Task Other_names_and_other_pages_are_refused()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        foreach (string host in (string[])["attacker.example", "localhost", app.Own.Authority, "127.0.0.2:1", "127.0.0.2"])
            Assert.Equal(HttpStatusCode.BadRequest, (await device.Get("/pair", ("Host", host))).Status);
        await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        foreach (string origin in (string[])["http://attacker.example", "null", app.Own.GetLeftPart(UriPartial.Authority)])
            Assert.Equal(HttpStatusCode.Forbidden, (await device.Get("/pieces/current.json", ("Origin", origin))).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await device.Get("/pieces/current.json", ("Sec-Fetch-Site", "cross-site"))).Status);
        using OtherDevice foreign = app.Device();
        using var form = new FormUrlEncodedContent([KeyValuePair.Create("code", app.Sharing.Code!.Value.Spoken)]);
        Assert.Equal(HttpStatusCode.Forbidden, (await foreign.Send(HttpMethod.Post, "/pair", form)).Status);
        Assert.Single(app.Sharing.Devices);
        // Nor does the own machine's page answer to a shared address.
        using var own = new HttpClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, app.Own) { Headers = { Host = app.Shared.Authority } };
        Assert.Equal(HttpStatusCode.BadRequest, (await own.SendAsync(request, Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_socket_needs_a_session_and_each_device_has_some_and_no_more()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        (ClientWebSocket refused, HttpStatusCode status) = await device.Socket(device.Origin);
        refused.Dispose();
        Assert.Equal(HttpStatusCode.Unauthorized, status);
        await device.Pair(("code", app.Sharing.Code!.Value.Spoken));
        Assert.Equal(HttpStatusCode.Forbidden, (await device.Socket("http://attacker.example")).Status);
        List<ClientWebSocket> open = [];
        for (int i = 0; i < Device.MostWindows; i++)
        {
            (ClientWebSocket socket, HttpStatusCode each) = await device.Socket(device.Origin);
            Assert.Equal(HttpStatusCode.SwitchingProtocols, each);
            open.Add(socket);
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, (await device.Socket(device.Origin)).Status);
        open.ForEach(s => s.Dispose());
    }

    [Theory]
    [InlineData("application/json", "{\"code\":", 0)]
    [InlineData("application/x-www-form-urlencoded", "code=", 9000)]
    [InlineData("multipart/form-data; boundary=x", "--x\r\nContent-Dis", 0)]
    [InlineData("multipart/form-data", "code", 0)]
    [InlineData("application/x-www-form-urlencoded", "a=1&b=2&c=3&d=4&e=5&f=6&g=7&h=8&i=9&j=10", 0)]
    public async Task Malformed_and_oversized_forms_get_a_sentence(string type, string start, int more)
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        using var body = new StringContent(start + new string('1', more));
        body.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        OtherDevice.Answer answer = await device.Send(HttpMethod.Post, "/pair", body, ("Origin", device.Origin));
        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Contains("the form of this page is needed", answer.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(" at Microsoft", answer.Text, StringComparison.Ordinal);
        Assert.Empty(app.Sharing.Devices);
    }

    [Theory]
    [InlineData("//attacker.example/")]
    [InlineData("/\\attacker.example")]
    [InlineData("http://attacker.example")]
    [InlineData("")]
    public async Task Pairing_leads_to_no_other_host(string to)
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        Assert.DoesNotContain("attacker", (await device.Get("/pair?to=" + Uri.EscapeDataString(to))).Text, StringComparison.Ordinal);
        Assert.Equal("/", (await device.Pair(("code", app.Sharing.Code!.Value.Spoken), ("to", to))).Location);
    }

    [Fact]
    public async Task Markup_in_a_name_stays_text()
    {
        await using SharedApp app = await SharedApp.Start();
        using OtherDevice device = app.Device();
        OtherDevice.Answer answer = await device.Pair(("code", "x"), ("name", "\"><script>"));
        Assert.DoesNotContain("<script>", answer.Text, StringComparison.Ordinal);
        Assert.Contains("40 at most", (await device.Pair(("code", "x"), ("name", new string('n', 41)))).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_address_that_is_not_ours_is_refused_and_sharing_stays_off()
    {
        await using SharedApp app = await SharedApp.Start(share: false);
        // TEST-NET-1 of RFC 5737: no machine has it.
        BadInputException refused = await Assert.ThrowsAsync<BadInputException>(() => app.Sharing.Start(IPAddress.Parse("192.0.2.1")));
        Assert.Contains("192.0.2.1", refused.Message, StringComparison.Ordinal);
        Assert.False(app.Sharing.IsOn);
    }

    private static async Task Refused(Uri address)
    {
        // The listener is closed in the background.
        for (int i = 0; i < 400; i++)
        {
            using var client = new TcpClient();
            await client.ConnectAsync(address.Host, address.Port, Cancel);
            await Task.Delay(25, Cancel);
        }
    }
}
