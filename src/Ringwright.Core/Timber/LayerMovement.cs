using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>
/// A layer of one piece of wood glued to wood that does not move with it: a solid base under a ring of segments, whose grain around
/// holds its diameter. Shear lag, elastic: u″·λ² = u with λ = T·sqrt(E/(3·G)), the parabolic shear through the layer's own
/// thickness; closed form for a strip across the grain.
/// </summary>
/// <param name="Species">The layer's wood.</param>
/// <param name="Cut">How its board was sawn.</param>
/// <param name="Width">Its size across the grain, mm.</param>
/// <param name="Thickness">Its thickness, mm.</param>
/// <param name="Mismatch">Free strain across its grain against what it is glued to, a share of its width.</param>
/// <param name="Joint">What joints hold, and how much of the stress stays.</param>
public sealed record LayerMovement(Species Species, GrainCut Cut, double Width, double Thickness, double Mismatch, GlueJoint Joint)
{
    // Wood Handbook FPL-GTR-190, chapter 5, from memory: rolling shear strength is 18 to 28 percent of that along the grain.
    private const double RollingShare = 0.22;
    private const double RollingModulus = 0.02;

    /// <summary>The layer glued to wood whose own strain in that direction is <paramref name="neighbour"/>: 0 for a ring of segments.</summary>
    public static LayerMovement Between(Species species, GrainCut cut, double width, double thickness, double from, double to, double neighbour, GlueJoint joint) =>
        new(species, cut, width, thickness, Movement.AcrossWidth(species, cut, from, to) - neighbour, joint);

    /// <summary>What the layer's width would change by if it were free, against what it is glued to, mm.</summary>
    public double FreeChange => Width * Mismatch;

    private double Modulus => Species.WidthModulus(Cut);

    private double ShearModulus => RollingModulus * Species.Modulus.Value;

    private double HalfOverLag => Width / 2 / (Thickness * Math.Sqrt(Modulus / (3 * ShearModulus)));

    /// <summary>Pull across the grain in the middle, MPa; 0 when it is pressed.</summary>
    public double SplitPull => Joint.StressKept * Math.Max(0, -Modulus * Mismatch * (1 - (1 / Math.Cosh(Math.Min(HalfOverLag, 300)))));

    /// <summary>Shear in the wood beside the glue at the edge, MPa.</summary>
    public double EdgeShear => Joint.StressKept * Math.Abs(Mismatch) * Math.Sqrt(3 * Modulus * ShearModulus) * Math.Tanh(HalfOverLag);

    /// <summary>Rolling shear the wood stands, MPa.</summary>
    public double RollingStrength => RollingShare * Species.Shear.Value;

    /// <summary>Whether the wood splits before it shears off at the edge.</summary>
    public bool Splits => SplitPull / Species.TensionAcross.Value >= EdgeShear / RollingStrength;

    /// <summary>The larger stress as a share of what stands it.</summary>
    public double Use => Math.Max(SplitPull / Species.TensionAcross.Value, EdgeShear / RollingStrength);

    /// <summary>Largest width that stands it, mm, at the same thickness; null when the layer stands it, or when none above 5 mm does.</summary>
    public double? WidthThatHolds()
    {
        if (Use <= 1) return null;
        const double least = 5;
        if (least >= Width || (this with { Width = least }).Use > 1) return null;
        return Halving.LastWhere(least, Width, width => (this with { Width = width }).Use <= 1);
    }
}
