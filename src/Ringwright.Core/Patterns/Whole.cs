namespace Ringwright.Core.Patterns;

/// <summary>Whole numbers out of positions, steady against rounding.</summary>
internal static class Whole
{
    // Far more than the rounding of sums of a few hundred, far less than any part of a segment that matters.
    private const double Tiny = 1e-9;

    /// <summary>The remainder from 0 up to but not including <paramref name="of"/>, also for negative values.</summary>
    public static int Modulo(int value, int of) => ((value % of) + of) % of;

    /// <summary>The whole number at or below; a value that misses one by rounding counts as it.</summary>
    public static int Floor(double value) => (int)Math.Floor(value + Tiny);

    /// <summary>The nearest whole number; halves go up.</summary>
    public static int Nearest(double value) => Floor(value + 0.5);

    /// <summary>Whether <paramref name="a"/> is at most <paramref name="b"/>, rounding forgiven.</summary>
    public static bool AtMost(double a, double b) => a <= b + Tiny;
}
