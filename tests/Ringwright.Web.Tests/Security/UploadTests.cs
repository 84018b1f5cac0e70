using System.Text;
using Microsoft.AspNetCore.Components.Forms;
using Ringwright.Core.Documents;
using Ringwright.Web.Bench;
using Ringwright.Web.Library;

namespace Ringwright.Web.Tests.Security;

/// <summary>Files that are chosen in the browser: what cannot be taken is told in a sentence and changes nothing.</summary>
public class UploadTests
{
    private static readonly (string Kind, Action<string> Take)[] Kinds =
    [
        ("piece", json => Example.Bench.Open(json)),
        ("shop", json => DocumentJson.ReadShop(json)),
        ("rack", json => DocumentJson.ReadRack(json)),
        ("record", json => DocumentJson.ReadRunLog(json)),
        ("record as CSV", text => Store.RunLogCsv.Read(text, "record")),
    ];

    [Fact]
    public async Task A_file_that_says_it_is_too_large_is_not_even_read()
    {
        var file = new Chosen(new byte[10], claims: WebServer.LargestFile + 1L);
        string? wrong = await UserFile.Read(file, _ => Assert.Fail("taken"));
        Assert.Contains("at most 4 MB are read", wrong, StringComparison.Ordinal);
        Assert.Equal(0, file.Opened);
    }

    [Fact]
    public async Task A_file_that_is_larger_than_it_says_is_read_no_further()
    {
        string taken = "";
        await UserFile.Read(new Chosen(new byte[WebServer.LargestFile + 100], claims: 10), text => taken = text);
        Assert.Equal(10, taken.Length);
    }

    [Fact]
    public async Task What_is_no_such_file_is_told_in_a_sentence()
    {
        string deep = string.Concat(Enumerable.Repeat("[", 200_000)), deepFields = string.Concat(Enumerable.Repeat("{\"rings\":", 100_000));
        byte[][] files =
        [
            [], [0], [0xFF, 0xFE, 0x7B, 0x00], [0xC0, 0xAF], Encoding.UTF8.GetBytes("null"), Encoding.UTF8.GetBytes("[]"), Encoding.UTF8.GetBytes("{"), Encoding.UTF8.GetBytes("\"\\ud800\""),
            Encoding.UTF8.GetBytes(deep), Encoding.UTF8.GetBytes(deepFields), Encoding.UTF8.GetBytes("{\"format\":\"ringwright/piece\",\"version\":1,\"name\":" + deep),
            Encoding.UTF8.GetBytes("{\"format\":\"ringwright/piece\",\"version\":1e400}"), Encoding.UTF8.GetBytes("{\"format\":\"ringwright/piece\",\"version\":" + new string('9', 100_000) + "}"),
            Encoding.UTF8.GetBytes(new string(' ', 1_000_000)), Encoding.UTF8.GetBytes("PK\u0003\u0004zip"), Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY b SYSTEM \"file:///etc/passwd\">]><a>&b;</a>"),
            Encoding.UTF8.GetBytes("sled,note\n\"" + new string('x', 1_000_000)),
        ];
        foreach ((string kind, Action<string> take) in Kinds)
            foreach (byte[] bytes in files)
            {
                string? wrong = await UserFile.Read(new Chosen(bytes), take);
                string begin = Encoding.UTF8.GetString(bytes.AsSpan(0, Math.Min(40, bytes.Length)));
                Assert.True(wrong is not null, $"{kind} took {begin}");
                Assert.True(wrong.Length < 1000 && !wrong.Contains("   at ", StringComparison.Ordinal) && !wrong.Contains("Exception", StringComparison.Ordinal), $"{kind} {begin}: {wrong}");
            }
    }

    [Theory]
    [InlineData("\"segments\": 24", "\"segments\": 2147483647")]
    [InlineData("\"segments\": 24", "\"segments\": 1e300")]
    [InlineData("\"segments\": 24", "\"segments\": -1")]
    [InlineData("\"19 mm\"", "\"1e300 mm\"")]
    [InlineData("\"19 mm\"", "\"99999999999999999999999999 mm\"")]
    [InlineData("\"19 mm\"", "\"NaN\"")]
    [InlineData("\"19 mm\"", "\"1/0 in\"")]
    [InlineData("\"30 mm\"", "\"0.0000000001 mm\"")]
    [InlineData("\"two-wood\"", "x")]
    [InlineData("\"maple\"", "\"LONG\"")]
    [InlineData("\"Disc\"", "\"LONG\"")]
    public async Task Values_beyond_sense_are_refused_and_the_bench_stays_as_it_was(string part, string instead)
    {
        Workbench bench = Example.Bench;
        Sheet before = bench.Now;
        string json = part == "\"two-wood\"" ? Example.Json + instead : Example.Json.Replace(part, instead.Replace("LONG", new string('w', 3_000_000), StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.NotEqual(Example.Json, json);
        string? wrong = await UserFile.Read(new Chosen(Encoding.UTF8.GetBytes(json)), text => bench.Open(text));
        Assert.NotNull(wrong);
        Assert.True(wrong.Length < 1000, wrong);
        Assert.Same(before, bench.Now);
    }

    [Fact]
    public async Task As_many_rings_as_a_file_can_hold_are_refused()
    {
        string ring = Example.Json[(Example.Json.IndexOf('[', StringComparison.Ordinal) + 1)..Example.Json.LastIndexOf(']')];
        int many = (WebServer.LargestFile / (ring.Length + 16)) - 10;
        string json = Example.Json.Replace(ring, string.Join(',', Enumerable.Range(0, many).Select(i => ring.Replace("\"Disc\"", $"\"{i}\"", StringComparison.Ordinal))), StringComparison.Ordinal);
        string? wrong = await UserFile.Read(new Chosen(Encoding.UTF8.GetBytes(json)), text => Example.Bench.Open(text));
        Assert.Contains("at most 2000 are planned", wrong, StringComparison.Ordinal);
    }

    /// <summary>A file as the browser offers it: what it says of itself need not be so.</summary>
    private sealed class Chosen(byte[] bytes, long? claims = null) : IBrowserFile
    {
        public int Opened { get; private set; }

        public string Name => "x.json";

        public DateTimeOffset LastModified => DateTimeOffset.UnixEpoch;

        public long Size => claims ?? bytes.Length;

        public string ContentType => "application/json";

        // As the framework does: what the browser claims is checked, and the stream ends at the claimed size.
        public Stream OpenReadStream(long maxAllowedSize = 512_000, CancellationToken cancellationToken = default)
        {
            Opened++;
            if (Size > maxAllowedSize) throw new IOException("too large");
            return new MemoryStream(bytes, 0, (int)Math.Min(Size, bytes.Length));
        }
    }
}
