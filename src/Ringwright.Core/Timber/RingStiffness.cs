namespace Ringwright.Core.Timber;

/// <summary>
/// Stiffness of a ring of straight-grained segments, as a body that is equally stiff at every angle around: compliances of wood
/// turned by up to half the wedge angle from the direction around, averaged over the wedge.
/// </summary>
/// <param name="Around">Modulus around the ring, MPa.</param>
/// <param name="Across">Modulus along the radius, MPa.</param>
public readonly record struct RingStiffness(double Around, double Across)
{
    // Wood Handbook FPL-GTR-190, Tables 5-1 and 5-2, means of the hardwoods as remembered: shear moduli as shares of the modulus
    // along the grain, and Poisson's ratios over the stiffer direction.
    private const double ShearWithRadial = 0.09, ShearWithTangential = 0.07, ShearAcross = 0.02;
    private const double PoissonAlong = 0.4, PoissonAcross = 0.7;

    /// <summary>The ring of segments of <paramref name="species"/>.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="cut">How its boards were sawn: the width of a board is the depth of the ring.</param>
    /// <param name="grain">Which way the grain runs.</param>
    /// <param name="halfAngle">Half the wedge angle, radians.</param>
    public static RingStiffness Of(Species species, GrainCut cut, SegmentGrain grain, double halfAngle)
    {
        ArgumentNullException.ThrowIfNull(species);
        double along = species.Modulus.Value;
        if (grain == SegmentGrain.Around)
            return Averaged(along, species.WidthModulus(cut), (cut == GrainCut.FlatSawn ? ShearWithTangential : ShearWithRadial) * along, PoissonAlong, halfAngle);
        // A stave's width lies around the ring, its thickness along the radius.
        return Averaged(species.WidthModulus(cut), species.WidthModulus(cut.Other()), ShearAcross * along, PoissonAcross, halfAngle);
    }

    /// <summary>Averaged over a wedge of half angle <paramref name="a"/>, from the moduli at its middle.</summary>
    /// <param name="around">Modulus around, MPa.</param>
    /// <param name="across">Modulus along the radius, MPa.</param>
    /// <param name="shear">Shear modulus, MPa.</param>
    /// <param name="poisson">Poisson's ratio for a pull in the stiffer direction.</param>
    /// <param name="a">Half the wedge angle, radians.</param>
    public static RingStiffness Averaged(double around, double across, double shear, double poisson, double a)
    {
        // Means of cos⁴, sin⁴ and sin²cos² over −a to a.
        double two = Math.Sin(2 * a) / (4 * a), four = Math.Sin(4 * a) / (32 * a);
        double cos4 = 0.375 + two + four, sin4 = 0.375 - two + four, mixed = 0.125 - four;
        double turned = mixed * ((1 / shear) - (2 * poisson / Math.Max(around, across)));
        return new(1 / ((cos4 / around) + (sin4 / across) + turned), 1 / ((sin4 / around) + (cos4 / across) + turned));
    }
}

/// <summary>Which way the grain of a ring's pieces runs.</summary>
public enum SegmentGrain
{
    /// <summary>Around the ring, as in segments.</summary>
    Around,

    /// <summary>Along the axis, as in staves.</summary>
    Upright,
}

/// <summary>Small helps for <see cref="GrainCut"/>.</summary>
internal static class GrainCuts
{
    public static GrainCut Other(this GrainCut cut) => cut == GrainCut.FlatSawn ? GrainCut.QuarterSawn : GrainCut.FlatSawn;
}
