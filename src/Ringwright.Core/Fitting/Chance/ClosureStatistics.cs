namespace Ringwright.Core.Fitting;

/// <summary>
/// The closing error E = 2 pi - sum of wedge angles of a ring made with known errors, in closed form.
/// E is exactly normal when cut errors are normal, and an exact finite mixture of normals when some cuts are badly seated.
/// </summary>
public sealed class ClosureStatistics
{
    private readonly NormalMixture _distribution;

    private ClosureStatistics(RingMaking making)
    {
        Making = making;
        _distribution = NormalMixture.OfClosingError(making);
    }

    /// <summary>What the numbers are for.</summary>
    public RingMaking Making { get; }

    /// <summary>Mean of E, radians; below zero the ring is too full and opens at the centre.</summary>
    public double Mean => Making.MeanClosingError;

    /// <summary>Variance of E, radians squared.</summary>
    public double Variance => Making.ClosingVariance;

    /// <summary>Standard deviation of E, radians.</summary>
    public double Sd => Math.Sqrt(Variance);

    /// <summary>Works out the distribution of E.</summary>
    /// <exception cref="BadInputException">An input out of range, or a wedge gauge, which has no closed form.</exception>
    public static ClosureStatistics Of(RingMaking making)
    {
        ArgumentNullException.ThrowIfNull(making);
        making.Validate();
        if (making.GaugeLimit is not null)
            throw new BadInputException("limit of the wedge gauge", "there is no closed form for wedges picked by a gauge", "simulate this ring instead");
        return new(making);
    }

    /// <summary>P(|E| &lt;= limit).</summary>
    /// <param name="limit">Largest closing error that still closes, radians.</param>
    /// <exception cref="BadInputException">The limit is negative or not finite.</exception>
    public double ChanceToClose(double limit)
    {
        ChanceInput.NotNegative("closing error that still closes", limit);
        return _distribution.Within(limit);
    }

    /// <summary>Chance that every joint stays within the allowance.</summary>
    /// <exception cref="BadInputException">The allowance is out of range.</exception>
    public double ChanceToClose(JointAllowance allowance)
    {
        ArgumentNullException.ThrowIfNull(allowance);
        return ChanceToClose(allowance.ClosingLimit(Making.Runs.Wedges));
    }

    /// <summary>The |E| that is not exceeded with the given probability, radians.</summary>
    /// <exception cref="BadInputException">The probability is not strictly between 0 and 1.</exception>
    public double ErrorQuantile(double probability)
    {
        ChanceInput.InnerChance("probability of the quantile", probability);
        return _distribution.AbsoluteQuantile(probability);
    }

    /// <summary>The widest joint gap that is not exceeded with the given probability, mm.</summary>
    /// <param name="probability">Strictly between 0 and 1.</param>
    /// <param name="radius">Distance from the axis at which the gap is read, mm.</param>
    /// <param name="sharing">Whether the error is gathered in one joint or shared by all.</param>
    /// <exception cref="BadInputException">An input out of range.</exception>
    public double GapQuantile(double probability, double radius, GapSharing sharing) =>
        new JointAllowance(0, radius, sharing).GapOf(ErrorQuantile(probability), Making.Runs.Wedges);
}
