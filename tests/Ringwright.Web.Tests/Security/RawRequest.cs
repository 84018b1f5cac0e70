using System.Net.Sockets;
using System.Text;

namespace Ringwright.Web.Tests.Security;

/// <summary>Sends a request byte by byte as it is written: a usual client would tidy the path up before anybody could misread it.</summary>
internal static class RawRequest
{
    /// <summary>The answer to a GET.</summary>
    public static async Task<RawAnswer> Get(Uri address, string path, params string[] headers)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(address.Host, address.Port, TestContext.Current.CancellationToken);
        await using NetworkStream stream = client.GetStream();
        string head = string.Join("\r\n", [$"GET {path} HTTP/1.1", .. headers.Any(h => h.StartsWith("Host:", StringComparison.Ordinal)) ? [] : (string[])[$"Host: {address.Authority}"], .. headers, "Connection: close", "", ""]);
        await stream.WriteAsync(Encoding.Latin1.GetBytes(head), TestContext.Current.CancellationToken);
        using var all = new MemoryStream();
        await stream.CopyToAsync(all, TestContext.Current.CancellationToken);
        string text = Encoding.Latin1.GetString(all.ToArray());
        return new(int.Parse(text.AsSpan(9, 3), System.Globalization.CultureInfo.InvariantCulture), text);
    }

    /// <summary>What came back, head and body.</summary>
    public sealed record RawAnswer(int Status, string Text)
    {
        /// <summary>Status line and headers.</summary>
        public string Head => Text[..Text.IndexOf("\r\n\r\n", StringComparison.Ordinal)];
    }
}
