namespace Ringwright.Core.Fitting;

/// <summary>What the simulated rings showed of the closing error E = 2 pi - sum of wedge angles.</summary>
public sealed class ChainResult
{
    private readonly ErrorHistogram _histogram;

    internal ChainResult(ChainRun run, BlockSums sums, ChainScale scale, ErrorHistogram histogram)
    {
        _histogram = histogram;
        Rings = run.Rings;
        Limit = run.Limit;
        double n = run.Rings;
        double m1 = sums.Sum1 / n;
        double m2 = sums.Sum2 / n - m1 * m1;
        double m3 = sums.Sum3 / n - 3 * m1 * sums.Sum2 / n + 2 * m1 * m1 * m1;
        double m4 = sums.Sum4 / n - 4 * m1 * sums.Sum3 / n + 6 * m1 * m1 * sums.Sum2 / n - 3 * m1 * m1 * m1 * m1;
        Mean = scale.Mean + scale.Sd * m1;
        Sd = scale.Sd * Math.Sqrt(Math.Max(0, m2) * n / (n - 1));
        Skewness = m2 > 0 ? m3 / Math.Pow(m2, 1.5) : 0;
        ExcessKurtosis = m2 > 0 ? m4 / (m2 * m2) - 3 : 0;
        ChanceToClose = sums.Within / n;
        LargestError = sums.Largest;
        WedgesSawnPerRing = sums.Sawn / n;
    }

    /// <summary>Rings simulated.</summary>
    public long Rings { get; }

    /// <summary>The largest |E| that counted as closed, radians.</summary>
    public double Limit { get; }

    /// <summary>Mean of E, radians.</summary>
    public double Mean { get; }

    /// <summary>Standard deviation of E (divisor n - 1), radians.</summary>
    public double Sd { get; }

    /// <summary>Third standardised moment of E, a bare number; 0 for a normal distribution.</summary>
    public double Skewness { get; }

    /// <summary>Fourth standardised moment of E less 3, a bare number; 0 for a normal distribution.</summary>
    public double ExcessKurtosis { get; }

    /// <summary>Share of rings with |E| within the limit.</summary>
    public double ChanceToClose { get; }

    /// <summary>Standard error of <see cref="ChanceToClose"/>, a share, from the finite number of rings: sqrt(p (1 - p) / n).</summary>
    public double ChanceStandardError => Math.Sqrt(ChanceToClose * (1 - ChanceToClose) / Rings);

    /// <summary>Largest |E| among the rings, radians.</summary>
    public double LargestError { get; }

    /// <summary>Wedges sawn for one ring on average; above N when a gauge refuses some.</summary>
    public double WedgesSawnPerRing { get; }

    /// <summary>The |E| that is not exceeded with the given probability, radians.</summary>
    /// <exception cref="BadInputException">The probability is not strictly between 0 and 1.</exception>
    public double ErrorQuantile(double probability)
    {
        ChanceInput.InnerChance("probability of the quantile", probability);
        return _histogram.Quantile(probability, LargestError);
    }
}
