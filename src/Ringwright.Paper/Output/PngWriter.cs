using Ringwright.Paper.Drawings;
using SkiaSharp;

namespace Ringwright.Paper.Output;

/// <summary>Writes a drawing as a picture of dots.</summary>
public static class PngWriter
{
    private const int MostDots = 20_000; // a side; beyond it memory runs out before the picture is of use

    /// <summary>Draws on white paper.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="dotsPerInch">Fineness.</param>
    /// <param name="output">Where to; left open.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side would have no dot or more than 20,000.</exception>
    public static void Write(Drawing drawing, double dotsPerInch, Stream output)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        double dots = dotsPerInch / 25.4;
        SKImageInfo size = new(Dots(drawing.Width * dots), Dots(drawing.Height * dots));
        using SKSurface surface = SKSurface.Create(size);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)dots);
        SkiaPainter.Paint(drawing, surface.Canvas);
        using SKImage image = surface.Snapshot();
        using SKData png = image.Encode(SKEncodedImageFormat.Png, quality: 100);
        png.SaveTo(output);
    }

    private static int Dots(double side)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(side, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(side, MostDots);
        return (int)Math.Round(side);
    }
}
