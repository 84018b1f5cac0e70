namespace Ringwright.Core.Fitting;

/// <summary>
/// The angular error of one cut or sanded face, radians: normal about a common bias, and now and then worse when the
/// piece did not sit. Errors of different cuts are independent. A positive error makes the wedge wider.
/// </summary>
/// <param name="Bias">Mean error of a well-seated cut, radians.</param>
/// <param name="Sd">Standard deviation of a well-seated cut, radians.</param>
/// <param name="MisSeating">What happens when the piece does not sit, or null when it always does.</param>
public sealed record CutError(double Bias, double Sd, MisSeating? MisSeating = null)
{
    /// <summary>Mean of one cut's error over both kinds of cuts, radians.</summary>
    public double Mean => Bias + (MisSeating is { } bad ? bad.Probability * bad.Shift : 0);

    /// <summary>Variance of one cut's error, radians squared: p-weighted variances plus p (1 - p) shift^2.</summary>
    public double Variance => MisSeating is { Probability: double p } bad
        ? (1 - p) * Sd * Sd + p * bad.Sd * bad.Sd + p * (1 - p) * bad.Shift * bad.Shift
        : Sd * Sd;

    internal void Validate()
    {
        ChanceInput.Finite("bias per cut", Bias);
        ChanceInput.NotNegative("standard deviation per cut", Sd);
        MisSeating?.Validate();
    }
}

/// <summary>A cut made while the piece did not sit against fence or stop: a chip under it, a slip.</summary>
/// <param name="Probability">Chance that a cut is such a one, 0 to 1.</param>
/// <param name="Shift">How far the mean error moves from <see cref="CutError.Bias"/>, radians.</param>
/// <param name="Sd">Standard deviation of such a cut, radians.</param>
public sealed record MisSeating(double Probability, double Shift, double Sd)
{
    internal void Validate()
    {
        ChanceInput.Chance("chance of a badly seated cut", Probability);
        ChanceInput.Finite("shift of a badly seated cut", Shift);
        ChanceInput.NotNegative("standard deviation of a badly seated cut", Sd);
    }
}
