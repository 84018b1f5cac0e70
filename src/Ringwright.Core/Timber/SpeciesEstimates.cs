namespace Ringwright.Core.Timber;

/// <summary>Values that no table gives, worked out from those that are known, and saying so.</summary>
internal static class SpeciesEstimates
{
    // Wood Handbook FPL-GTR-190, Table 5-11a, hardwoods at 12 percent, from memory: property = A·G^B.
    private const string FromWeight = "from the weight by Wood Handbook FPL-GTR-190, Table 5-11a, hardwoods at 12 percent (from memory)";

    /// <summary>Ovendry mass by volume at 12 percent moisture, from a density at 12 percent in kg/m³.</summary>
    public static double Gravity(double density) => density / 1120;

    /// <summary>Density at 12 percent in kg/m³ from ovendry mass by volume at 12 percent.</summary>
    public static double Density(double gravity) => 1120 * gravity;

    /// <summary>
    /// Ovendry mass by volume at 12 percent from that by green volume: Gb/(1 − 0.265·a·Gb), a = (30 − 12)/30. Wood Handbook
    /// FPL-GTR-190, chapter 4, from memory.
    /// </summary>
    public static double GravityFromGreen(double green) => green / (1 - (0.265 * 0.6 * green));

    /// <summary>
    /// Change for one percent of moisture from shrinkage as a share: 1/(30/S − 20), which is Wood Handbook equation 13-3 at 10
    /// percent. It gives back the printed coefficients of 92 of 107 single species to five decimals.
    /// </summary>
    public static Sourced Change(Sourced shrinkage) =>
        new(1 / ((30 / shrinkage.Value) - 20), $"from the shrinkage by Wood Handbook FPL-GTR-190, eq. 13-3 at 10 percent; shrinkage: {shrinkage.Source}");

    public static Sourced Modulus(double density) => Power(16_500, density, 0.7);

    public static Sourced Shear(double density) => Power(21.9, density, 1.13);

    public static Sourced TensionAcross(double density) => Power(10.1, density, 1.3);

    // Means of 13 hardwoods of Table 5-1 as remembered.
    private const string MeanRatio = "mean of 13 hardwoods in Wood Handbook FPL-GTR-190, Table 5-1 (from memory)";

    public static Sourced RadialStiffness { get; } = new(0.12, MeanRatio);

    public static Sourced TangentialStiffness { get; } = new(0.06, MeanRatio);

    private static Sourced Power(double factor, double density, double exponent) => new(factor * Math.Pow(Gravity(density), exponent), FromWeight);
}
