namespace Ringwright.Core.Fitting;

/// <summary>An interval that holds a quantity with a stated probability, as much left out below as above.</summary>
/// <param name="Low">Lower end, in the quantity's unit.</param>
/// <param name="High">Upper end, in the quantity's unit.</param>
/// <param name="Level">Probability within.</param>
public readonly record struct CredibleInterval(double Low, double High, double Level)
{
    /// <summary>The interval between the two quantiles that leave out half of the rest each.</summary>
    internal static CredibleInterval Between(Func<double, double> quantile, double level)
    {
        ChanceInput.InnerChance("level of the interval", level);
        return new(quantile((1 - level) / 2), quantile((1 + level) / 2), level);
    }
}
