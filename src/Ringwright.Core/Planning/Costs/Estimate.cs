namespace Ringwright.Core.Planning;

/// <summary>A value that is not known exactly: it lies between two others four times in five.</summary>
/// <param name="Low">Less only one time in ten.</param>
/// <param name="Likely">In the middle.</param>
/// <param name="High">More only one time in ten.</param>
public readonly record struct Estimate(double Low, double Likely, double High)
{
    /// <summary>How much of all cases lie between <see cref="Low"/> and <see cref="High"/>.</summary>
    public const double Level = 0.8;

    /// <summary>A value that is known.</summary>
    public static Estimate Exactly(double value) => new(value, value, value);

    /// <summary>A value that may be so many times less or more.</summary>
    public static Estimate Within(double value, double times) => new(value / times, value, value * times);

    /// <summary>All of it so many times.</summary>
    public static Estimate operator *(Estimate estimate, double times) => new(estimate.Low * times, estimate.Likely * times, estimate.High * times);

    /// <summary>
    /// The sum of values that err by themselves: the likely ones are added, the distances to low and high as the root of the sum of
    /// their squares (variance of a sum of independent values; taken for both sides separately).
    /// </summary>
    public static Estimate Sum(IEnumerable<Estimate> all)
    {
        ArgumentNullException.ThrowIfNull(all);
        double likely = 0, below = 0, above = 0;
        foreach (Estimate one in all)
        {
            likely += one.Likely;
            below += (one.Likely - one.Low) * (one.Likely - one.Low);
            above += (one.High - one.Likely) * (one.High - one.Likely);
        }

        return new(Math.Max(0, likely - Math.Sqrt(below)), likely, likely + Math.Sqrt(above));
    }

    /// <summary>The value with no more figures than are known: two.</summary>
    public static double Rounded(double value)
    {
        if (value == 0 || !double.IsFinite(value)) return value;
        double unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        return Math.Round(value / unit) * unit;
    }

    /// <summary>Minutes with no more figures than are known: to 1, 5, 10, 30 or 60 minutes, the coarser the longer.</summary>
    public static double RoundedMinutes(double minutes)
    {
        double step = minutes switch { < 10 => 1, < 60 => 5, < 300 => 10, < 900 => 30, _ => 60 };
        return Math.Round(minutes / step) * step;
    }
}
