namespace Ringwright.Core.Timber;

/// <summary>
/// Stresses in a flat ring that was closed over a gap: for each unit of closing strain ε (gap angle over 2π), in MPa. The ring wants
/// to open when ε is above 0; closed, it is pulled at the rim and pressed at the hole, and the other way round below 0.
/// Equally stiff at every angle, with one modulus around and one along the radius, plane stress, elastic, edges free.
/// <para>
/// With F = r·σr, equilibrium and compatibility give r·F″ + F′ − k²·F/r = E·ε, k² = E around / E across, which is solved by
/// r^k, r^−k and E·ε·r/(1 − k²). For k = 1 it is the ring with initial stress of Timoshenko and Goodier, Theory of Elasticity, "Pure
/// bending of curved bars", which has no bounded limit for a full disc; wood, with k above 1.5, has one.
/// </para>
/// </summary>
/// <param name="Hole">Inner radius over outer radius, 0 (full disc) to less than 1.</param>
/// <param name="Around">Modulus around, MPa.</param>
/// <param name="Across">Modulus along the radius, MPa.</param>
public readonly record struct RingStress(double Hole, double Around, double Across)
{
    // Nearer to 1 than this the isotropic solution is closer than the rounding of the other.
    private const double NearlyEqual = 1e-6;

    /// <summary>The root of the ratio of the moduli.</summary>
    public double K { get; } = Math.Sqrt(Around / Across);

    /// <summary>Stress in a full disc's centre, in both directions, for k above 1.</summary>
    public double Centre => Around / (1 - (K * K));

    private bool IsIsotropic => Math.Abs(K - 1) < NearlyEqual;

    private double Growing => (1 - Math.Pow(Hole, K + 1)) / (1 - Math.Pow(Hole, 2 * K));

    private double Falling => (Math.Pow(Hole, K + 1) - Math.Pow(Hole, 2 * K)) / (1 - Math.Pow(Hole, 2 * K));

    /// <summary>Stress around the ring at the radius <paramref name="rho"/> (over the outer radius), above 0 and up to 1.</summary>
    public double Hoop(double rho)
    {
        if (IsIsotropic) return IsotropicMean(rho, -1) + (Around / 2);
        return Centre * (1 - (K * ((Growing * Math.Pow(rho, K - 1)) - (Falling * Math.Pow(rho, -K - 1)))));
    }

    /// <summary>Stress along the radius at <paramref name="rho"/> (over the outer radius), above 0 and up to 1.</summary>
    public double Radial(double rho) => IsIsotropic
        ? IsotropicMean(rho, 1)
        : Centre * (1 - (Growing * Math.Pow(rho, K - 1)) - (Falling * Math.Pow(rho, -K - 1)));

    /// <summary>Where the stress along the radius is largest, over the outer radius; 0 for a full disc.</summary>
    public double RadialPeak()
    {
        if (IsIsotropic) return Math.Sqrt(2 * Hole * Hole * Math.Log(1 / Hole) / (1 - (Hole * Hole)));
        return Math.Pow((K + 1) * Falling / ((K - 1) * Growing), 1 / (2 * K));
    }

    // E/2 · [b² ln(r/b) − a² ln(r/a) ± (a²b²/r²) ln(b/a)]/(b² − a²), with b = 1.
    private double IsotropicMean(double rho, int sign)
    {
        if (!(Hole > 0)) throw new InvalidOperationException("A full disc that is equally stiff in all directions has no bounded stress.");
        double a2 = Hole * Hole, log = Math.Log(1 / Hole);
        return Around / 2 * (Math.Log(rho) - (a2 * Math.Log(rho / Hole)) + (sign * a2 / (rho * rho) * log)) / (1 - a2);
    }
}
