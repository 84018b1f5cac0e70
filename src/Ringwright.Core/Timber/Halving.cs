namespace Ringwright.Core.Timber;

/// <summary>Search by halving.</summary>
internal static class Halving
{
    // 24 halvings leave less than a ten-millionth of the interval.
    private const int Steps = 24;

    /// <summary>The last place from <paramref name="low"/>, where <paramref name="holds"/> is true, towards <paramref name="high"/> at which it still is, if it turns once.</summary>
    public static double LastWhere(double low, double high, Func<double, bool> holds)
    {
        for (int i = 0; i < Steps; i++)
        {
            double middle = (low + high) / 2;
            if (holds(middle)) low = middle;
            else high = middle;
        }

        return low;
    }
}
