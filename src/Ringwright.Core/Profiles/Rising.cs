namespace Ringwright.Core.Profiles;

/// <summary>A function that never falls over the interval it is asked about, with its derivative.</summary>
internal interface IRising
{
    /// <summary>Value and derivative at <paramref name="u"/>.</summary>
    (double Value, double Slope) At(double u);
}

/// <summary>Finds where a rising function takes a value: Newton, kept inside a shrinking bracket, so it always ends.</summary>
internal static class Rising
{
    private const int NewtonSteps = 24;
    private const int MostSteps = 100;
    private const double Close = 1e-15;

    /// <summary>The argument in [<paramref name="low"/>, <paramref name="high"/>] of <paramref name="value"/>; the nearer end when it lies outside.</summary>
    public static double Solve<T>(in T function, double value, double low, double high)
        where T : struct, IRising => Solve(function, value, low, high, function.At(low).Value, function.At(high).Value);

    /// <summary>The same where the values <paramref name="from"/> and <paramref name="to"/> at the ends are known.</summary>
    public static double Solve<T>(in T function, double value, double low, double high, double from, double to)
        where T : struct, IRising
    {
        if (value <= from) return low;
        if (value >= to) return high;
        double u = low + ((high - low) * (value - from) / (to - from));
        for (int step = 0; step < MostSteps; step++)
        {
            (double here, double slope) = function.At(u);
            double miss = here - value;
            if (miss == 0) return u;
            if (miss < 0) low = u;
            else high = u;
            double next = u - (miss / slope);
            // Written so that a flat spot (infinite or NaN step) also falls back to halving.
            if (!(next > low && next < high) || step > NewtonSteps) next = (low + high) / 2;
            if (Math.Abs(next - u) <= Close) return next;
            u = next;
        }

        return u;
    }
}
