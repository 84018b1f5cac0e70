namespace Ringwright.Core.Profiles;

/// <summary>
/// Slopes at the knots of a cubic spline that never leaves the range between neighbouring values. They start as those of the
/// twice differentiable spline with parabolic end spans, and are then limited as in F. N. Fritsch and R. E. Carlson, "Monotone
/// piecewise cubic interpolation", SIAM J. Numer. Anal. 17 (1980), with the box of J. M. Hyman, "Accurate monotonicity preserving
/// cubic interpolation", SIAM J. Sci. Stat. Comput. 4 (1983).
/// </summary>
internal static class MonotoneTangents
{
    /// <summary>
    /// Hyman's box reaches to 3 chord slopes, where the cubic may stand still inside a span; short of it the curve keeps moving
    /// and has a tangent everywhere.
    /// </summary>
    private const double Box = 2.5;

    /// <summary>Slopes at the knots for <paramref name="values"/>, one more than the <paramref name="steps"/> between them.</summary>
    public static double[] Of(ReadOnlySpan<double> steps, ReadOnlySpan<double> values)
    {
        double[] chords = new double[steps.Length];
        for (int i = 0; i < chords.Length; i++) chords[i] = (values[i + 1] - values[i]) / steps[i];
        double[] slopes = Spline(steps, chords);
        slopes[0] = LimitEnd(slopes[0], chords[0]);
        slopes[^1] = LimitEnd(slopes[^1], chords[^1]);
        for (int i = 1; i < chords.Length; i++) slopes[i] = Limit(slopes[i], chords[i - 1], chords[i]);
        return slopes;
    }

    /// <summary>Slopes before limiting: C2 inside, the first and last span a parabola. Thomas' algorithm; the rows dominate.</summary>
    internal static double[] Spline(ReadOnlySpan<double> steps, ReadOnlySpan<double> chords)
    {
        int last = chords.Length;
        if (last == 1) return [chords[0], chords[0]];
        double[] slopes = new double[last + 1], upper = new double[last + 1];
        upper[0] = 1;
        slopes[0] = 2 * chords[0];
        for (int i = 1; i < last; i++)
        {
            double before = 1 / steps[i - 1], after = 1 / steps[i];
            double pivot = (2 * (before + after)) - (before * upper[i - 1]);
            upper[i] = after / pivot;
            slopes[i] = ((3 * ((chords[i - 1] * before) + (chords[i] * after))) - (before * slopes[i - 1])) / pivot;
        }

        slopes[last] = ((2 * chords[last - 1]) - slopes[last - 1]) / (1 - upper[last - 1]);
        for (int i = last - 1; i >= 0; i--) slopes[i] -= upper[i] * slopes[i + 1];
        return slopes;
    }

    private static double LimitEnd(double slope, double chord) => slope * chord <= 0 ? 0 : Shorter(slope, Box * chord);

    // Where the spline would turn back although the values go on, the harmonic mean of the chords (Fritsch and Butland,
    // SIAM J. Sci. Stat. Comput. 5, 1984) keeps the curve moving.
    private static double Limit(double slope, double before, double after)
    {
        if (before * after <= 0) return 0;
        if (slope * after <= 0) slope = 2 * before * after / (before + after);
        return Shorter(slope, Box * Shorter(before, after));
    }

    private static double Shorter(double a, double b) => Math.Abs(a) <= Math.Abs(b) ? a : b;
}
