using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>What one change of moisture does to a ring of one wood. Stresses in MPa, tension above 0.</summary>
/// <param name="Ring">The ring and its wood.</param>
/// <param name="From">Moisture when glued, percent.</param>
/// <param name="To">Moisture after, percent.</param>
/// <param name="Strain">Free strain of the depth against the direction around.</param>
public readonly record struct MovementCase(RingMovement Ring, double From, double To, double Strain)
{
    /// <summary>Cut open at one joint the ring would gape by this angle, radians; below 0 it would overlap.</summary>
    public double Gap => 2 * Math.PI * Closing;

    /// <summary>The gap over a full turn.</summary>
    public double Closing => Ring.Body.ClosingPerStrain * Strain;

    /// <summary>Whether the joints are pulled at the hole (drying), not at the rim.</summary>
    public bool AtHole => Load.AtHole;

    /// <summary>Pull on the joints where it is largest.</summary>
    public double JointPull => Load.Joint * Size;

    /// <summary>Pull across the grain where it is largest: along the radius, or beside a joint that the grain meets at a slant.</summary>
    public double SplitPull => Load.Split * Size;

    /// <summary>Shear along the grain beside a joint.</summary>
    public double ShearPull => Load.Shear * Size;

    /// <summary>What gives first.</summary>
    public WeakPart Weak => Load.Weak;

    /// <summary>The stress on what gives first, MPa.</summary>
    public double Stress => Load.Stress * Size;

    /// <summary>The strength of what gives first, MPa.</summary>
    public double Strength => Load.Strength;

    /// <summary>The largest stress as a share of what stands it.</summary>
    public double Use => Stress / Strength;

    private RingLoad Load => Strain < 0 ? Ring.Shrinking : Ring.Growing;

    private double Size => Math.Abs(Strain);
}

/// <summary>A ring of one wood and what each unit of strain does to it: computed once, then any change of moisture is a product.</summary>
public sealed class RingMovement
{
    /// <summary>Works the ring out.</summary>
    /// <param name="body">The ring as turned.</param>
    /// <param name="species">Its wood.</param>
    /// <param name="cut">How its boards were sawn.</param>
    /// <param name="joint">What its joints hold.</param>
    public RingMovement(RingBody body, Species species, GrainCut cut, GlueJoint joint)
    {
        ArgumentNullException.ThrowIfNull(species);
        ArgumentNullException.ThrowIfNull(joint);
        (Body, Species, Cut, Joint) = (body, species, cut, joint);
        Stiffness = RingStiffness.Of(species, cut, body.Grain, body.HalfAngle);
        Unit = new(body.Inner / body.Outer, Stiffness.Around, Stiffness.Across);
        PeakAt = Math.Max(Unit.RadialPeak(), body.NearHole);
        RadialAtPeak = Unit.Radial(PeakAt);
        (double hole, double rim) = (Unit.Hoop(body.NearHole), Unit.Hoop(1));
        Growing = RingLoad.Of(hole, rim, RadialAtPeak, body.ClosingPerStrain, body, species, joint);
        Shrinking = RingLoad.Of(hole, rim, RadialAtPeak, -body.ClosingPerStrain, body, species, joint);
    }

    /// <summary>The ring as turned.</summary>
    public RingBody Body { get; }

    /// <summary>Its wood.</summary>
    public Species Species { get; }

    /// <summary>How its boards were sawn.</summary>
    public GrainCut Cut { get; }

    /// <summary>What its joints hold.</summary>
    public GlueJoint Joint { get; }

    /// <summary>How stiff it is.</summary>
    public RingStiffness Stiffness { get; }

    /// <summary>Its stresses for a closing strain of 1.</summary>
    public RingStress Unit { get; }

    /// <summary>Where the stress along the radius is read, as a share of the outer radius.</summary>
    public double PeakAt { get; }

    internal double RadialAtPeak { get; }

    internal RingLoad Growing { get; }

    internal RingLoad Shrinking { get; }

    /// <summary>What happens when the wood goes from one moisture to another, percent.</summary>
    public MovementCase Between(double from, double to)
    {
        double across = Movement.AcrossWidth(Species, Cut, from, to);
        // A stave's width lies around; its thickness, sawn the other way, is the depth.
        double strain = Body.Grain == SegmentGrain.Around ? across : Movement.AcrossWidth(Species, Cut.Other(), from, to) - across;
        return new(this, from, to, strain);
    }

    /// <summary>The worse of the driest and the wettest that <paramref name="range"/> brings.</summary>
    public MovementCase Worst(MoistureRange range)
    {
        MovementCase dry = Between(range.GluedHigh, range.HomeLow), wet = Between(range.GluedLow, range.HomeHigh);
        return dry.Use >= wet.Use ? dry : wet;
    }
}
