namespace Ringwright.Core.Timber.Colour;

/// <summary>
/// A colour in CIELAB, for daylight D65 and the 2° observer. Equal steps look about equally large. Formulas: CIE 15:2004
/// (with its exact fractions 216/24389 and 24389/27); the primaries of IEC 61966-2-1 as a matrix to XYZ, whose rows sum to
/// the white point X 0.95047, Y 1, Z 1.08883 (ASTM E308).
/// </summary>
/// <param name="L">Lightness, 0 black to 100 white.</param>
/// <param name="A">Green (negative) to red.</param>
/// <param name="B">Blue (negative) to yellow.</param>
public readonly record struct Lab(double L, double A, double B)
{
    private const double Epsilon = 216.0 / 24389, Kappa = 24389.0 / 27;
    private const double Xr = 0.4124564, Xg = 0.3575761, Xb = 0.1804375;
    private const double Yr = 0.2126729, Yg = 0.7151522, Yb = 0.0721750;
    private const double Zr = 0.0193339, Zg = 0.1191920, Zb = 0.9503041;
    private const double WhiteX = Xr + Xg + Xb, WhiteY = Yr + Yg + Yb, WhiteZ = Zr + Zg + Zb;

    // By Cramer's rule, so that both directions undo each other to the last bits.
    private const double Determinant = (Xr * ((Yg * Zb) - (Yb * Zg))) - (Xg * ((Yr * Zb) - (Yb * Zr))) + (Xb * ((Yr * Zg) - (Yg * Zr)));

    /// <summary>The colour of a light.</summary>
    public static Lab From(LinearRgb light)
    {
        double x = Root(((Xr * light.Red) + (Xg * light.Green) + (Xb * light.Blue)) / WhiteX);
        double y = Root(((Yr * light.Red) + (Yg * light.Green) + (Yb * light.Blue)) / WhiteY);
        double z = Root(((Zr * light.Red) + (Zg * light.Green) + (Zb * light.Blue)) / WhiteZ);
        return new((116 * y) - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>The light of this colour; outside 0 to 1 where sRGB cannot show it.</summary>
    public LinearRgb ToLinear()
    {
        double fy = (L + 16) / 116;
        double x = WhiteX * Cube(fy + (A / 500)), y = WhiteY * Cube(fy), z = WhiteZ * Cube(fy - (B / 200));
        return new(
            ((x * ((Yg * Zb) - (Yb * Zg))) - (Xg * ((y * Zb) - (Yb * z))) + (Xb * ((y * Zg) - (Yg * z)))) / Determinant,
            ((Xr * ((y * Zb) - (Yb * z))) - (x * ((Yr * Zb) - (Yb * Zr))) + (Xb * ((Yr * z) - (y * Zr)))) / Determinant,
            ((Xr * ((Yg * z) - (y * Zg))) - (Xg * ((Yr * z) - (y * Zr))) + (x * ((Yr * Zg) - (Yg * Zr)))) / Determinant);
    }

    private static double Root(double t) => t > Epsilon ? Math.Cbrt(t) : ((Kappa * t) + 16) / 116;

    private static double Cube(double f) => f * f * f > Epsilon ? f * f * f : ((116 * f) - 16) / Kappa;
}
