using System.Collections.Immutable;

namespace Ringwright.Core.Timber.Colour;

/// <summary>
/// Amounts of light on the primaries of sRGB, 0 none to 1 full. Light adds up here as it does in the eye, so colours are
/// averaged here and nowhere else. Transfer curve: IEC 61966-2-1:1999.
/// </summary>
/// <param name="Red">Light of the red primary.</param>
/// <param name="Green">Light of the green primary.</param>
/// <param name="Blue">Light of the blue primary.</param>
public readonly record struct LinearRgb(double Red, double Green, double Blue)
{
    private static readonly ImmutableArray<double> Curve = [.. Enumerable.Range(0, 256).Select(i => Decoded(i / 255.0))];

    /// <summary>The light of one 8-bit channel.</summary>
    public static double Decoded(byte channel) => Curve[channel];

    /// <summary>The nearest colour of eight bits a channel; light that a screen cannot show is cut off at 0 and 1.</summary>
    public Srgb ToSrgb() => new(Encoded(Red), Encoded(Green), Encoded(Blue));

    /// <summary>The sum of two lights.</summary>
    public static LinearRgb operator +(LinearRgb a, LinearRgb b) => new(a.Red + b.Red, a.Green + b.Green, a.Blue + b.Blue);

    /// <summary>The multiple of a light.</summary>
    public static LinearRgb operator *(double s, LinearRgb a) => new(s * a.Red, s * a.Green, s * a.Blue);

    private static double Decoded(double v) => v <= 0.04045 ? v / 12.92 : Math.Pow((v + 0.055) / 1.055, 2.4);

    private static byte Encoded(double light)
    {
        double v = light <= 0.0031308 ? 12.92 * light : (1.055 * Math.Pow(light, 1 / 2.4)) - 0.055;
        return (byte)Math.Round(255 * Math.Clamp(v, 0, 1));
    }
}
