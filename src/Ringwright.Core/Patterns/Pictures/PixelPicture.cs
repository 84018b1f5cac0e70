using System.Collections.Immutable;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>A decoded picture. Immutable.</summary>
public sealed class PixelPicture
{
    /// <summary>Takes the pixels as they are, without copying.</summary>
    /// <param name="width">Pixels across.</param>
    /// <param name="height">Pixels down.</param>
    /// <param name="rgba">
    /// sRGB red, green, blue and opacity of each pixel, rows from the top, each from the left; colours not multiplied by opacity.
    /// </param>
    /// <exception cref="BadInputException">There are no pixels, or not as many bytes as the size says.</exception>
    public PixelPicture(int width, int height, ImmutableArray<byte> rgba)
    {
        if (width < 1 || height < 1) throw new BadInputException("picture", $"{width} × {height} pixels make no picture", "give at least 1 × 1");
        if (rgba.IsDefault || rgba.Length != 4L * width * height)
            throw new BadInputException("picture", $"{(rgba.IsDefault ? 0 : rgba.Length)} bytes do not make {width} × {height} pixels", $"give {4L * width * height}");
        Width = width;
        Height = height;
        Rgba = rgba;
    }

    /// <summary>Pixels across.</summary>
    public int Width { get; }

    /// <summary>Pixels down.</summary>
    public int Height { get; }

    /// <summary>Red, green, blue, opacity of each pixel.</summary>
    public ImmutableArray<byte> Rgba { get; }
}
