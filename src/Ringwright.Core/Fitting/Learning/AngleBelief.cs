using MathNet.Numerics.Distributions;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Belief about a cut's angle error: a stated prior and the measurements since. The posterior is again
/// normal-inverse-gamma (Gelman et al., Bayesian Data Analysis, chapter 3.3, for a regression on one known x).
/// </summary>
/// <param name="Prior">Where it started.</param>
/// <param name="Evidence">What was measured.</param>
public sealed record AngleBelief(AnglePrior Prior, AngleEvidence Evidence = default)
{
    /// <summary>Bias per cut, posterior mean, radians; positive makes wedges too wide.</summary>
    public double Bias => (Prior.BiasWorth * Prior.Bias + Evidence.Score) / BiasWorth;

    /// <summary>What the belief about the bias is worth now, a number of cuts.</summary>
    public double BiasWorth => Prior.BiasWorth + Evidence.Information;

    /// <summary>What the belief about the standard deviation is worth now, a number of cuts.</summary>
    public double SdWorth => Prior.SdWorth + Evidence.Readings;

    /// <summary>Standard deviation per cut, root of the posterior mean variance, radians.</summary>
    public double Sd => Math.Sqrt(SumOfSquares / SdWorth);

    /// <summary>How much the prior still weighs in the bias, 0 to 1.</summary>
    public double PriorBiasWeight => Prior.BiasWorth / BiasWorth;

    /// <summary>How much the prior still weighs in the standard deviation, 0 to 1.</summary>
    public double PriorSdWeight => Prior.SdWorth / SdWorth;

    /// <summary>Prior sum n s^2 plus squares of the readings about the fit plus the pull between prior and data.</summary>
    private double SumOfSquares
    {
        get
        {
            double prior = Prior.SdWorth * Prior.Sd * Prior.Sd + Prior.BiasWorth * Prior.Bias * Prior.Bias;

            // Never below the prior's own share but for rounding.
            return Math.Max(Prior.SdWorth * Prior.Sd * Prior.Sd, prior + Evidence.Square - BiasWorth * Bias * Bias);
        }
    }

    private double DegreesOfFreedom => SdWorth + 2;

    private double Scale => Math.Sqrt(SumOfSquares / DegreesOfFreedom);

    /// <summary>The best single statement for planning: the posterior's bias and standard deviation.</summary>
    public CutError ToCutError() => new(Bias, Sd);

    /// <summary>Interval for the bias per cut, radians: Student t about <see cref="Bias"/>.</summary>
    public CredibleInterval BiasInterval(double level) =>
        CredibleInterval.Between(p => StudentT.InvCDF(Bias, Scale / Math.Sqrt(BiasWorth), DegreesOfFreedom, p), level);

    /// <summary>Interval for the standard deviation per cut, radians: v is inverse gamma, 1/v gamma.</summary>
    public CredibleInterval SdInterval(double level) =>
        CredibleInterval.Between(p => Math.Sqrt(1 / Gamma.InvCDF(DegreesOfFreedom / 2, SumOfSquares / 2, 1 - p)), level);

    /// <summary>
    /// The next cut's error, bias and scatter both unknown, with the fences set afresh: Student t of variance
    /// scale^2 (1 + 1/worth + fence ratio).
    /// </summary>
    public StudentPrediction NextCut() => Predict(Bias, 1, 1);

    /// <summary>
    /// The closing error E of a ring to be made with the fences set afresh, radians: Student t about -2 N bias, of
    /// variance scale^2 ((4 N - 2 runs) + 4 N^2 (1/worth + fence ratio)).
    /// </summary>
    /// <exception cref="BadInputException">Numbers of wedges or runs that cannot be.</exception>
    public StudentPrediction Closing(CutRuns runs)
    {
        runs.Validate();
        return Predict(-2 * runs.Wedges * Bias, runs.VarianceFactor, 2.0 * runs.Wedges);
    }

    internal AngleBelief With(RunRecord record) => this with { Evidence = Evidence + AngleEvidence.Of(record, Prior.FenceVarianceRatio) };

    private StudentPrediction Predict(double mean, double ownVariance, double biasFactor)
    {
        double variance = ownVariance + biasFactor * biasFactor * (1 / BiasWorth + Prior.FenceVarianceRatio);
        return new(mean, Scale * Math.Sqrt(variance), DegreesOfFreedom);
    }
}
