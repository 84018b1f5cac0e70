using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>What gives first.</summary>
public enum WeakPart
{
    /// <summary>A joint between two segments opens.</summary>
    Joint,

    /// <summary>The wood splits across its grain.</summary>
    Split,

    /// <summary>The wood shears along its grain beside a joint.</summary>
    Shear,
}

/// <summary>What drying or swelling does to a ring for a strain of 1: MPa, tension above 0. Any other strain is a product.</summary>
/// <param name="AtHole">Whether the joints are pulled at the hole (drying), not at the rim.</param>
/// <param name="Joint">Pull on the joints where it is largest.</param>
/// <param name="Split">Pull across the grain where it is largest: along the radius, or beside a joint that the grain meets at a slant.</param>
/// <param name="Shear">Shear along the grain beside a joint.</param>
/// <param name="Weak">What gives first.</param>
/// <param name="Strength">What that stands, MPa.</param>
internal readonly record struct RingLoad(bool AtHole, double Joint, double Split, double Shear, WeakPart Weak, double Strength)
{
    public double Stress => Weak switch { WeakPart.Joint => Joint, WeakPart.Split => Split, _ => Shear };

    /// <summary>For a closing strain of <paramref name="closing"/>.</summary>
    /// <param name="hole">Stress around beside the hole for a closing strain of 1.</param>
    /// <param name="rim">The same at the rim.</param>
    /// <param name="radial">Stress along the radius where it is largest.</param>
    /// <param name="closing">The closing strain.</param>
    /// <param name="body">The ring.</param>
    /// <param name="species">Its wood.</param>
    /// <param name="joint">What its joints hold.</param>
    public static RingLoad Of(double hole, double rim, double radial, double closing, RingBody body, Species species, GlueJoint joint)
    {
        bool upright = body.Grain == SegmentGrain.Upright;
        double a = body.HalfAngle;
        double pull = joint.StressKept * Math.Max(0, Math.Max(hole * closing, rim * closing));
        // Upright grain is pulled across everywhere; grain around meets the joint at half the wedge angle.
        double across = pull * (upright ? 1 : Math.Sin(a) * Math.Sin(a));
        double split = Math.Max(joint.StressKept * Math.Max(0, radial * closing), across), shear = upright ? 0 : pull * Math.Sin(2 * a) / 2;
        double byJoint = pull / joint.Tension, bySplit = split / species.TensionAcross.Value, byShear = shear / species.Shear.Value;
        WeakPart weak = byJoint >= Math.Max(bySplit, byShear) ? WeakPart.Joint : bySplit >= byShear ? WeakPart.Split : WeakPart.Shear;
        double strength = weak switch { WeakPart.Joint => joint.Tension, WeakPart.Split => species.TensionAcross.Value, _ => species.Shear.Value };
        return new(hole * closing > rim * closing, pull, split, shear, weak, strength);
    }
}
