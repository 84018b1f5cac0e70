using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;

namespace Ringwright.Web.Tests.Sharing;

/// <summary>A browser on a device of its own address.</summary>
internal sealed class OtherDevice : IDisposable
{
    private readonly CookieContainer _cookies = new();
    private readonly SocketsHttpHandler _handler;
    private readonly HttpClient _client;
    private readonly Uri _address;

    public OtherDevice(Uri address, IPAddress from)
    {
        _address = address;
        _handler = new()
        {
            AllowAutoRedirect = false,
            CookieContainer = _cookies,
            ConnectCallback = async (context, cancel) =>
            {
                var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp);
                socket.Bind(new IPEndPoint(from, 0));
                await socket.ConnectAsync(context.DnsEndPoint, cancel);
                return new NetworkStream(socket, ownsSocket: true);
            },
        };
        _client = new(_handler);
    }

    public string Cookie => _cookies.GetCookieHeader(_address);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public Task<Answer> Get(string path, params (string Name, string Value)[] headers) => Send(HttpMethod.Get, path, null, headers);

    /// <summary>Sends a form as the app's own page does.</summary>
    public Task<Answer> Pair(params (string Name, string Value)[] fields) =>
        Send(HttpMethod.Post, "/pair", new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))), ("Origin", Origin));

    public string Origin => _address.GetLeftPart(UriPartial.Authority);

    public async Task<Answer> Send(HttpMethod method, string path, HttpContent? body, params (string Name, string Value)[] headers)
    {
        using var request = new HttpRequestMessage(method, new Uri(_address, path)) { Content = body };
        foreach ((string name, string value) in headers) request.Headers.TryAddWithoutValidation(name, value);
        using HttpResponseMessage answer = await _client.SendAsync(request, Cancel);
        return new(answer.StatusCode, await answer.Content.ReadAsStringAsync(Cancel), answer.Headers.Location?.ToString(), answer);
    }

    /// <summary>Opens a socket of a circuit; the answer's status when that is refused.</summary>
    public async Task<(ClientWebSocket Socket, HttpStatusCode Status)> Socket(string? origin)
    {
        var socket = new ClientWebSocket();
        socket.Options.CollectHttpResponseDetails = true;
        socket.Options.Cookies = _cookies;
        if (origin is not null) socket.Options.SetRequestHeader("Origin", origin);
        try
        {
            await socket.ConnectAsync(new Uri($"ws://{_address.Authority}/_blazor"), Cancel);
        }
        catch (WebSocketException)
        {
            // The status says why.
        }

        return (socket, socket.HttpStatusCode);
    }

    public void Dispose()
    {
        _client.Dispose();
        _handler.Dispose();
    }

    /// <summary>What came back.</summary>
    public sealed record Answer(HttpStatusCode Status, string Text, string? Location, HttpResponseMessage Message);
}
