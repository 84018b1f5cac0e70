using System.Runtime.InteropServices;
using Ringwright.Core;
using Ringwright.Core.Patterns.Pictures;
using SkiaSharp;

namespace Ringwright.Paper.Pictures;

/// <summary>Reads picture files: PNG and JPEG, turned upright as the camera noted it, colours brought to sRGB.</summary>
public static class PixelFile
{
    /// <summary>Largest file, bytes.</summary>
    public const int MostBytes = 20 * 1024 * 1024;

    /// <summary>Most pixels.</summary>
    public const long MostPixels = 40_000_000;

    private const string Where = "picture file";

    // One at a time: a picture of the most pixels takes some hundred MB while it is read.
    private static readonly Lock Reading = new();

    /// <summary>The pixels of a file. Its size is read and checked before anything is decoded. Thread-safe; one file is decoded at a time.</summary>
    /// <exception cref="BadInputException">The file is too large, of another kind, or damaged.</exception>
    public static PixelPicture Read(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Length == 0) throw new BadInputException(Where, "it is empty", "give a PNG or JPEG file");
        if (file.Length > MostBytes) throw new BadInputException(Where, $"{file.Length / 1e6:0.#} MB are too many", $"give a file of at most {MostBytes / 1e6:0} MB");
        lock (Reading) return Checked(file);
    }

    private static PixelPicture Checked(byte[] file)
    {
        using var data = SKData.CreateCopy(file);
        using SKCodec? codec = SKCodec.Create(data);
        if (codec is null || codec.EncodedFormat is not (SKEncodedImageFormat.Png or SKEncodedImageFormat.Jpeg))
            throw new BadInputException(Where, "it is not a PNG or JPEG picture, or its start is damaged", "save the picture as PNG or JPEG");
        return Upright(Decoded(codec), codec.Info.Width, codec.Info.Height, codec.EncodedOrigin);
    }

    private static byte[] Decoded(SKCodec codec)
    {
        (long width, long height) = (codec.Info.Width, codec.Info.Height);
        if (width * height > MostPixels)
            throw new BadInputException(Where, $"{width} × {height} pixels are too many", $"scale it down to at most {MostPixels / 1_000_000} million pixels");
        using var srgb = SKColorSpace.CreateSrgb();
        var info = new SKImageInfo((int)width, (int)height, SKColorType.Rgba8888, SKAlphaType.Unpremul, srgb);
        byte[] pixels = new byte[info.BytesSize64];
        var pinned = GCHandle.Alloc(pixels, GCHandleType.Pinned);
        try
        {
            SKCodecResult result = codec.GetPixels(info, pinned.AddrOfPinnedObject());
            if (result != SKCodecResult.Success)
                throw new BadInputException(Where, result == SKCodecResult.IncompleteInput ? "it ends in the middle of the picture" : "its pixels cannot be read", "save or copy the picture again");
        }
        finally
        {
            pinned.Free();
        }

        return pixels;
    }

    private static PixelPicture Upright(byte[] pixels, int width, int height, SKEncodedOrigin origin)
    {
        if (origin is SKEncodedOrigin.TopLeft) return new(width, height, ImmutableCollectionsMarshal.AsImmutableArray(pixels));
        bool lying = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        (int across, int down) = lying ? (height, width) : (width, height);
        byte[] upright = new byte[pixels.Length];
        Span<int> from = MemoryMarshal.Cast<byte, int>(pixels.AsSpan()), to = MemoryMarshal.Cast<byte, int>(upright.AsSpan());
        for (int y = 0; y < down; y++)
            for (int x = 0; x < across; x++)
            {
                (int column, int row) = Source(origin, x, y, width - 1, height - 1);
                to[(y * across) + x] = from[(row * width) + column];
            }

        return new(across, down, ImmutableCollectionsMarshal.AsImmutableArray(upright));
    }

    // Where the pixel (x, y) of the upright picture stands in the file. The name of an origin says which sides of the upright
    // picture the file's first row and first column are (Exif, tag Orientation).
    private static (int Column, int Row) Source(SKEncodedOrigin origin, int x, int y, int right, int bottom) => origin switch
    {
        SKEncodedOrigin.TopRight => (right - x, y),
        SKEncodedOrigin.BottomRight => (right - x, bottom - y),
        SKEncodedOrigin.BottomLeft => (x, bottom - y),
        SKEncodedOrigin.LeftTop => (y, x),
        SKEncodedOrigin.RightTop => (y, bottom - x),
        SKEncodedOrigin.RightBottom => (right - y, bottom - x),
        SKEncodedOrigin.LeftBottom => (right - y, x),
        _ => (x, y),
    };
}
