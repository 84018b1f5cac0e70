namespace Ringwright.Core.Timber.Colour;

/// <summary>
/// How different two colours look, by CIEDE2000 with all weights 1. Formulas and step numbers: Sharma, Wu and Dalal, "The
/// CIEDE2000 color-difference formula", Color Research and Application 30 (2005), 21 to 30. About 1 is the least that is
/// noticed side by side.
/// </summary>
public static class ColourDifference
{
    private const double Degree = Math.PI / 180;
    private static readonly double Power25 = Math.Pow(25, 7);

    /// <summary>The difference ΔE00, 0 for the same colour; the order does not matter.</summary>
    public static double Between(Lab first, Lab second)
    {
        (double chroma1, double hue1, double chroma2, double hue2) = Polar(first, second);
        double dL = second.L - first.L, dC = chroma2 - chroma1;
        bool grey = chroma1 * chroma2 == 0;
        double dh = grey ? 0 : Math.IEEERemainder(hue2 - hue1, 360);
        double dH = 2 * Math.Sqrt(chroma1 * chroma2) * Math.Sin(dh / 2 * Degree); // (11)

        double meanL = (first.L + second.L) / 2, meanC = (chroma1 + chroma2) / 2;
        double meanH = grey ? hue1 + hue2 : MeanHue(hue1, hue2);
        double sL = 1 + (0.015 * Square(meanL - 50) / Math.Sqrt(20 + Square(meanL - 50))); // (18)
        double sC = 1 + (0.045 * meanC); // (19)
        double sH = 1 + (0.015 * meanC * HueWeight(meanH)); // (20)

        double l = dL / sL, c = dC / sC, h = dH / sH;
        return Math.Sqrt(Math.Max(0, (l * l) + (c * c) + (h * h) + (Turn(meanC, meanH) * c * h))); // (22)
    }

    // Steps (2) to (7): a* of greyish colours stretched, then chroma and hue angle in degrees, 0 to 360.
    private static (double Chroma1, double Hue1, double Chroma2, double Hue2) Polar(Lab first, Lab second)
    {
        double mean = (Hypotenuse(first.A, first.B) + Hypotenuse(second.A, second.B)) / 2;
        double stretch = 1 + (0.5 * (1 - Saturation(mean)));
        double a1 = stretch * first.A, a2 = stretch * second.A;
        return (Hypotenuse(a1, first.B), Hue(a1, first.B), Hypotenuse(a2, second.B), Hue(a2, second.B));
    }

    private static double Hue(double a, double b)
    {
        if (a == 0 && b == 0) return 0;
        double hue = Math.Atan2(b, a) / Degree;
        return hue < 0 ? hue + 360 : hue;
    }

    // (14)
    private static double MeanHue(double hue1, double hue2)
    {
        double sum = hue1 + hue2;
        if (Math.Abs(hue1 - hue2) <= 180) return sum / 2;
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    // (15)
    private static double HueWeight(double hue) => 1
        - (0.17 * Math.Cos((hue - 30) * Degree))
        + (0.24 * Math.Cos(2 * hue * Degree))
        + (0.32 * Math.Cos(((3 * hue) + 6) * Degree))
        - (0.20 * Math.Cos(((4 * hue) - 63) * Degree));

    // (16), (17) and (21): the turn of the ellipse in blue.
    private static double Turn(double chroma, double hue)
    {
        double angle = 30 * Math.Exp(-Square((hue - 275) / 25));
        return -Math.Sin(2 * angle * Degree) * 2 * Saturation(chroma);
    }

    private static double Saturation(double chroma)
    {
        double power = Math.Pow(chroma, 7);
        return Math.Sqrt(power / (power + Power25));
    }

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static double Square(double x) => x * x;
}
