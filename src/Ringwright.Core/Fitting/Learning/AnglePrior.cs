namespace Ringwright.Core.Fitting;

/// <summary>
/// What is believed of a cut's angle error before anything is measured, and what that belief is worth. A
/// normal-inverse-gamma distribution: v ~ InverseGamma((n + 2)/2, n s^2/2), so of mean s^2, and bias given v ~
/// Normal(m, v/k).
/// </summary>
/// <param name="Bias">Believed mean error per cut m, radians.</param>
/// <param name="BiasWorth">Cuts k that the belief about the bias is worth, above 0.</param>
/// <param name="Sd">Believed standard deviation per cut s (root of the mean variance), radians.</param>
/// <param name="SdWorth">Cuts n that the belief about the standard deviation is worth, above 0.</param>
/// <param name="FenceVarianceRatio">
/// How far setting the fences afresh moves the mean error of a cut, as variance in units of one cut's variance. 0 for a
/// sled whose fences are never moved: then all records speak of the same bias.
/// </param>
public sealed record AnglePrior(double Bias, double BiasWorth, double Sd, double SdWorth, double FenceVarianceRatio = 0)
{
    internal void Validate()
    {
        ChanceInput.Finite("believed bias per cut", Bias);
        ChanceInput.Positive("worth of the believed bias", BiasWorth);
        ChanceInput.Positive("believed standard deviation per cut", Sd);
        ChanceInput.Positive("worth of the believed standard deviation", SdWorth);
        ChanceInput.NotNegative("variance ratio of setting the fences", FenceVarianceRatio);
    }
}
