using System.Collections.Immutable;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Core.Timber;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Tests.Patterns;

/// <summary>Small pictures made in the test.</summary>
internal static class Pictures
{
    /// <summary>A picture from the colour and opacity of each pixel, counted from its upper left corner.</summary>
    public static PixelPicture Of(int width, int height, Func<int, int, (Srgb Colour, byte Opacity)> pixel)
    {
        var bytes = ImmutableArray.CreateBuilder<byte>(4 * width * height);
        for (int y = 0; y < height; y++)
            for (int x = 0; x < width; x++)
            {
                ((byte r, byte g, byte b), byte opacity) = pixel(x, y);
                bytes.AddRange(r, g, b, opacity);
            }

        return new(width, height, bytes.MoveToImmutable());
    }

    public static PixelPicture Of(int width, int height, Func<int, int, Srgb> colour) => Of(width, height, (x, y) => (colour(x, y), (byte)255));

    /// <summary>The swatch of a wood.</summary>
    public static Srgb Swatch(string wood) => Srgb.Parse(Wood.Named(wood).Hex);
}
