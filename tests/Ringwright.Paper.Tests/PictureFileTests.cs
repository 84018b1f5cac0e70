using System.Buffers.Binary;
using Ringwright.Core;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Paper.Pictures;
using SkiaSharp;

namespace Ringwright.Paper.Tests;

public class PictureFileTests
{
    // 3 across, 2 down, every pixel another colour, one of them half transparent.
    private static readonly SKColor[] Colours =
    [
        new(255, 0, 0), new(0, 255, 0), new(0, 0, 255),
        new(10, 20, 30), new(200, 100, 50, 128), new(255, 255, 255, 0),
    ];

    [Fact]
    public void A_PNG_comes_back_pixel_by_pixel()
    {
        PixelPicture picture = PixelFile.Read(Encoded(SKEncodedImageFormat.Png));
        Assert.Equal((3, 2), (picture.Width, picture.Height));
        Assert.Equal([255, 0, 0, 255], picture.Rgba[..4]);
        Assert.Equal([200, 100, 50, 128], picture.Rgba[16..20]);
        Assert.Equal(0, picture.Rgba[23]);
    }

    // Exif 2.32, tag Orientation (0x0112). In the file red and green are above, blue and white below; 1 is upright, 3 upside
    // down, 6 and 8 lie on their sides, the others are mirror images.
    [Theory]
    [InlineData(1, 32, 16, "RG/BW")]
    [InlineData(2, 32, 16, "GR/WB")]
    [InlineData(3, 32, 16, "WB/GR")]
    [InlineData(4, 32, 16, "BW/RG")]
    [InlineData(5, 16, 32, "RB/GW")]
    [InlineData(6, 16, 32, "BR/WG")]
    [InlineData(7, 16, 32, "WG/BR")]
    [InlineData(8, 16, 32, "GW/RB")]
    public void A_photo_stands_upright(byte rotation, int width, int height, string corners)
    {
        PixelPicture picture = PixelFile.Read(Quarters(rotation));
        Assert.Equal((width, height), (picture.Width, picture.Height));
        int last = width - 1, bottom = (height - 1) * width;
        Assert.Equal(corners, $"{Letter(picture, 0)}{Letter(picture, last)}/{Letter(picture, bottom)}{Letter(picture, bottom + last)}");
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    public void A_file_cut_off_is_told(SKEncodedImageFormat format)
    {
        byte[] whole = Noise(format);
        for (int length = 0; length < whole.Length - 40; length += whole.Length / 37)
            Refused(whole[..length], "");
    }

    [Fact]
    public void Flipped_bytes_never_do_more_than_refuse()
    {
        var random = new Random(4);
        foreach (byte[] whole in (byte[][])[Noise(SKEncodedImageFormat.Png), Noise(SKEncodedImageFormat.Jpeg)])
            for (int i = 0; i < 200; i++)
            {
                byte[] file = [.. whole];
                for (int flips = 0; flips < 3; flips++) file[random.Next(file.Length)] ^= (byte)(1 << random.Next(8));
                try
                {
                    PixelPicture picture = PixelFile.Read(file);
                    Assert.Equal(4 * picture.Width * picture.Height, picture.Rgba.Length);
                }
                catch (BadInputException)
                {
                }
            }
    }

    [Fact]
    public void Other_files_are_told()
    {
        Refused([], "it is empty; give a PNG or JPEG file");
        Refused("not a picture"u8.ToArray(), "it is not a PNG or JPEG picture");
        Refused(Encoded(SKEncodedImageFormat.Webp), "it is not a PNG or JPEG picture");
        Refused(new byte[PixelFile.MostBytes + 1], "give a file of at most 21 MB");
    }

    // A header that promises 60,000 × 60,000 pixels: refused before 14 GB are asked for.
    [Fact]
    public void A_header_that_promises_too_much_is_refused_before_decoding()
    {
        byte[] file = Encoded(SKEncodedImageFormat.Png);
        BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(16), 60_000);
        BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(20), 60_000);
        BinaryPrimitives.WriteUInt32BigEndian(file.AsSpan(29), Crc(file.AsSpan(12, 17)));
        Refused(file, "60000 × 60000 pixels are too many; scale it down to at most 40 million pixels");
    }

    private static void Refused(byte[] file, string part)
    {
        string message = Assert.Throws<BadInputException>(() => PixelFile.Read(file)).Message;
        Assert.StartsWith("picture file: ", message, StringComparison.Ordinal);
        Assert.Contains(part, message, StringComparison.Ordinal);
    }

    private static byte[] Encoded(SKEncodedImageFormat format) => Encode(3, 2, (x, y) => Colours[(3 * y) + x], format);

    private static byte[] Noise(SKEncodedImageFormat format)
    {
        var random = new Random(7);
        return Encode(40, 40, (_, _) => new SKColor((uint)random.Next() | 0xFF000000), format);
    }

    private static byte[] Encode(int width, int height, Func<int, int, SKColor> colour, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        for (int y = 0; y < height; y++)
            for (int x = 0; x < width; x++)
                bitmap.SetPixel(x, y, colour(x, y));
        using SKData data = bitmap.Encode(format, 95);
        return data.ToArray();
    }

    // A JPEG 32 × 16 with an Exif block that says how the camera was held.
    private static byte[] Quarters(byte rotation)
    {
        SKColor[] quarters = [new(255, 0, 0), new(0, 255, 0), new(0, 0, 255), new(255, 255, 255)];
        byte[] jpeg = Encode(32, 16, (x, y) => quarters[(2 * (y / 8)) + (x / 16)], SKEncodedImageFormat.Jpeg);
        byte[] exif =
        [
            0xFF, 0xE1, 0, 34, .. "Exif\0\0"u8, .. "MM\0*"u8, 0, 0, 0, 8, 0, 1, // one entry
            0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, rotation, 0, 0, 0, 0, 0, 0,
        ];
        return [.. jpeg.AsSpan(0, 2), .. exif, .. jpeg.AsSpan(2)];
    }

    private static string Letter(PixelPicture picture, int pixel) => picture.Rgba[(4 * pixel)..((4 * pixel) + 3)] switch
    {
        [> 200, > 200, > 200] => "W",
        [> 200, ..] => "R",
        [_, > 200, _] => "G",
        [_, _, > 200] => "B",
        _ => "?",
    };

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
}
