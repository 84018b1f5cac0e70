namespace Ringwright.Core.Fitting;

/// <summary>
/// The error made once when a fence is set: common to every cut made against it, so fully correlated.
/// With two fences each wedge gets one error of each, a + b; with one (board flipped, or both faces sanded against
/// the same fence) it gets twice the same, 2 a.
/// </summary>
/// <param name="Sd">Standard deviation of setting one fence, radians.</param>
/// <param name="Fences">Fences that are set: 1 or 2.</param>
public sealed record FenceSetting(double Sd, int Fences)
{
    /// <summary>Variance of a wedge's angle from setting the fences: 4 s^2 for one fence, 2 s^2 for two, radians squared.</summary>
    public double WedgeVariance => Sd * Sd * (Fences == 1 ? 4 : 2);

    internal void Validate()
    {
        ChanceInput.NotNegative("standard deviation of setting a fence", Sd);
        if (Fences is not (1 or 2))
            throw new BadInputException("fences that are set", $"there are {Fences}", "give 1 or 2");
    }
}
