using System.Buffers.Binary;
using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using Ringwright.Core;
using Ringwright.Paper.Pictures;

namespace Ringwright.Web.Tests.Security;

/// <summary>Pictures that are made to hurt whoever opens them: refused in one sentence, in bounded memory.</summary>
public class PictureBombTests
{
    private const long MuchMemory = 64L * 1024 * 1024;

    [Fact]
    public void A_header_of_100000_by_100000_is_refused_before_anything_is_decoded() =>
        Refused(Png(100_000, 100_000, 6, Deflated(new byte[1000])), "100000 × 100000 pixels are too many");

    [Fact]
    public void The_largest_header_there_can_be_is_refused() =>
        Refused(Png(int.MaxValue, int.MaxValue, 6, []), "");

    [Fact]
    public void A_long_and_thin_one_is_refused() => Refused(Png(41_000_000, 1, 0, Deflated(new byte[1000])), "");

    // A picture whose rows are wound: it has to be held whole while it is read.
    [Fact]
    public void An_interlaced_header_of_100000_by_100000_is_refused() =>
        Refused(Png(100_000, 100_000, 6, Deflated(new byte[1000]), interlaced: true), "too many");

    [Fact]
    public void A_promise_without_pixels_is_refused()
    {
        // 36 million pixels in a file of some bytes: as many as may be, and none of them there.
        Refused(Png(6000, 6000, 6, Deflated(new byte[16])), "", 400L * 1024 * 1024);
        Refused(Png(6000, 6000, 6, Deflated(new byte[16]), interlaced: true), "", 700L * 1024 * 1024);
    }

    [Theory]
    [InlineData("zTXt")]
    [InlineData("iTXt")]
    [InlineData("iCCP")]
    public void A_note_that_swells_when_it_is_unpacked_takes_no_memory(string kind)
    {
        // 512 MB of nothing, packed into half a MB.
        byte[] packed = Deflated(512);
        byte[] note = kind == "iTXt" ? [.. "n\0"u8, 1, 0, 0, 0, .. packed] : [.. "n\0\0"u8, .. packed];
        byte[] file = Png(2, 2, 6, Deflated(new byte[18]), note: (kind, note));
        long used = Used(() =>
        {
            try
            {
                Assert.Equal(16, PixelFile.Read(file).Rgba.Length);
            }
            catch (BadInputException)
            {
            }
        });
        Assert.True(used < MuchMemory, $"{used / 1e6:0} MB");
    }

    [Fact]
    public void A_moving_picture_is_refused()
    {
        // Two frames of a GIF of 65,535 × 65,535.
        byte[] frame = [0x2C, 0, 0, 0, 0, 0xFF, 0xFF, 0xFF, 0xFF, 0, 2, 2, 0x4C, 1, 0];
        Refused([.. "GIF89a"u8, 0xFF, 0xFF, 0xFF, 0xFF, 0x80, 0, 0, 0, 0, 0, 255, 255, 255, .. frame, .. frame, 0x3B], "it is not a PNG or JPEG picture");
    }

    [Theory]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100000\" height=\"100000\"><script>alert(1)</script></svg>")]
    [InlineData("<?xml version=\"1.0\"?><!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]><svg>&b;</svg>")]
    [InlineData("BM\u0036\u0000\u0000\u0000\u0000\u0000\u0000\u0000\u0036")]
    [InlineData("%PDF-1.4")]
    [InlineData("PK\u0003\u0004")]
    public void Another_kind_of_file_with_a_pictures_name_is_refused(string content) => Refused(Encoding.Latin1.GetBytes(content), "it is not a PNG or JPEG picture");

    [Fact]
    public void The_largest_jpeg_header_there_can_be_is_refused()
    {
        byte[] file =
        [
            0xFF, 0xD8, 0xFF, 0xC0, 0, 17, 8, 0xFF, 0xDC, 0xFF, 0xDC, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1,
            0xFF, 0xDA, 0, 12, 3, 1, 0, 2, 0x11, 3, 0x11, 0, 63, 0, 0, 0xFF, 0xD9,
        ];
        Refused(file, "65500 × 65500 pixels are too many");
    }

    private static void Refused(byte[] file, string words, long most = MuchMemory)
    {
        string message = "";
        long used = Used(() => message = Assert.Throws<BadInputException>(() => PixelFile.Read(file)).Message);
        Assert.StartsWith("picture file: ", message, StringComparison.Ordinal);
        Assert.Contains(words, message, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', message);
        Assert.True(used < most, $"{used / 1e6:0} MB for a file of {file.Length} bytes");
    }

    // Of this process, native memory too; its highest mark is never less than what is used.
    private static long Used(Action action)
    {
        using var process = Process.GetCurrentProcess();
        GC.Collect();
        process.Refresh();
        long before = process.PeakWorkingSet64, now = process.WorkingSet64;
        action();
        process.Refresh();
        return process.PeakWorkingSet64 > before ? process.PeakWorkingSet64 - now : 0;
    }

    private static byte[] Png(int width, int height, byte colours, byte[] pixels, bool interlaced = false, (string Kind, byte[] Bytes)? note = null)
    {
        byte[] size = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(size, width);
        BinaryPrimitives.WriteInt32BigEndian(size.AsSpan(4), height);
        (size[8], size[9], size[12]) = (8, colours, (byte)(interlaced ? 1 : 0));
        return [0x89, .. "PNG\r\n\u001a\n"u8, .. Chunk("IHDR", size), .. note is { } n ? Chunk(n.Kind, n.Bytes) : [], .. Chunk("IDAT", pixels), .. Chunk("IEND", [])];
    }

    private static byte[] Chunk(string kind, byte[] bytes)
    {
        byte[] chunk = new byte[bytes.Length + 12];
        BinaryPrimitives.WriteInt32BigEndian(chunk, bytes.Length);
        Encoding.ASCII.GetBytes(kind, chunk.AsSpan(4));
        bytes.CopyTo(chunk, 8);
        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(bytes.Length + 8), Crc(chunk.AsSpan(4, bytes.Length + 4)));
        return chunk;
    }

    // CRC-32 of PNG chunks (ISO 3309), bit by bit.
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        uint crc = uint.MaxValue;
        foreach (byte b in bytes)
        {
            crc ^= b;
            for (int bit = 0; bit < 8; bit++) crc = (crc >> 1) ^ ((crc & 1) * 0xEDB88320);
        }

        return ~crc;
    }

    private static byte[] Deflated(byte[] bytes)
    {
        using var into = new MemoryStream();
        using (var zip = new ZLibStream(into, CompressionLevel.SmallestSize, leaveOpen: true)) zip.Write(bytes);
        return into.ToArray();
    }

    private static byte[] Deflated(int megabytes)
    {
        using var into = new MemoryStream();
        using (var zip = new ZLibStream(into, CompressionLevel.Optimal, leaveOpen: true))
        {
            byte[] nothing = new byte[1024 * 1024];
            for (int i = 0; i < megabytes; i++) zip.Write(nothing);
        }

        return into.ToArray();
    }
}
