using MathNet.Numerics.Distributions;

namespace Ringwright.Core.Fitting;

/// <summary>
/// A quantity not yet seen, predicted from what was learned: Student's t, wider than a normal because bias and scatter
/// are themselves known only so well.
/// </summary>
/// <param name="Mean">Centre, radians.</param>
/// <param name="Scale">Scale, radians.</param>
/// <param name="DegreesOfFreedom">A bare number above 2.</param>
public sealed record StudentPrediction(double Mean, double Scale, double DegreesOfFreedom)
{
    /// <summary>Standard deviation: scale sqrt(n / (n - 2)), radians.</summary>
    public double Sd => Scale * Math.Sqrt(DegreesOfFreedom / (DegreesOfFreedom - 2));

    /// <summary>P(|quantity| &lt;= limit); for a closing error the chance that the ring closes.</summary>
    /// <param name="limit">Radians.</param>
    /// <exception cref="BadInputException">The limit is negative or not finite.</exception>
    public double ChanceWithin(double limit)
    {
        ChanceInput.NotNegative("limit", limit);
        return StudentT.CDF(Mean, Scale, DegreesOfFreedom, limit) - StudentT.CDF(Mean, Scale, DegreesOfFreedom, -limit);
    }

    /// <summary>Interval that holds the quantity with the given probability, radians.</summary>
    /// <exception cref="BadInputException">The level is not strictly between 0 and 1.</exception>
    public CredibleInterval Interval(double level) =>
        CredibleInterval.Between(p => StudentT.InvCDF(Mean, Scale, DegreesOfFreedom, p), level);
}
