namespace Ringwright.Core.Turning.Speed;

/// <summary>
/// Largest tension around in turning rings and discs, MPa; densities in kg/m³, radii in mm. Elastic, equally stiff in all
/// directions. Carvill, Mechanical Engineer's Data Handbook, 1.2.7 (thin ring, disc); annulus: Timoshenko and Goodier, "Rotating
/// disks", from memory.
/// </summary>
public static class RotatingStress
{
    /// <summary>Poisson's ratio taken for wood pulled along its grain (Wood Handbook FPL-GTR-190, Table 5-2, middling, from memory).</summary>
    public const double Poisson = 0.4;

    /// <summary>A thin ring: ρ·v².</summary>
    /// <param name="density">kg/m³.</param>
    /// <param name="rimSpeed">Speed at the mean radius, m/s.</param>
    public static double ThinRing(double density, double rimSpeed) => density * rimSpeed * rimSpeed * 1e-6;

    /// <summary>A full disc, in its centre: (3 + ν)/8·ρ·v², v at the rim.</summary>
    public static double Disc(double density, double outer, double turns, double poisson = Poisson) =>
        (3 + poisson) / 8 * ThinRing(density, RimSpeed(outer, turns));

    /// <summary>A ring, at its hole: ρ·v²·((3 + ν) + (1 − ν)·(a/b)²)/4, v at the rim. Twice the full disc's for the smallest hole.</summary>
    public static double Ring(double density, double outer, double inner, double turns, double poisson = Poisson)
    {
        double hole = inner / outer;
        return ThinRing(density, RimSpeed(outer, turns)) * (3 + poisson + ((1 - poisson) * hole * hole)) / 4;
    }

    /// <summary>Speed at the radius <paramref name="radius"/> mm, m/s, at <paramref name="turns"/> a minute.</summary>
    public static double RimSpeed(double radius, double turns) => radius * 1e-3 * turns * 2 * Math.PI / 60;

    /// <summary>Turns a minute at which a ring's largest tension reaches <paramref name="stress"/> MPa; taken with a hole, however small.</summary>
    public static double TurnsFor(double stress, double density, double outer, double inner, double poisson = Poisson) =>
        1000 * Math.Sqrt(stress / Ring(density, outer, inner, 1000, poisson));
}

/// <summary>The rim-speed rule of woodturners: diameter in inches times turns a minute between 6000 and 9000. Common practice.</summary>
public static class RimRule
{
    /// <summary>Lower product: for a blank that is not yet round.</summary>
    public const double Low = 6000;

    /// <summary>Upper product: for sound, round work.</summary>
    public const double High = 9000;

    /// <summary>Turns a minute at which diameter in inches times turns is <paramref name="product"/>.</summary>
    /// <param name="diameter">mm.</param>
    /// <param name="product"><see cref="Low"/> to <see cref="High"/>.</param>
    public static double Turns(double diameter, double product) => product * Measures.MeasureStyle.MillimetresPerInch / diameter;
}
