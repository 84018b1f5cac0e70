using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>The ring on the table and the sled it came from.</summary>
public sealed record DiagnosedRing
{
    /// <summary>Number of wedges.</summary>
    public required int Segments { get; init; }

    /// <summary>Distance of the joints' rim ends from the centre, mm.</summary>
    public required double RimRadius { get; init; }

    /// <summary>Distance of the joints' inner ends from the centre, mm; 0 for wedges sawn to a point.</summary>
    public required double TipRadius { get; init; }

    /// <summary>Thickness of the board, the height of the ring, mm.</summary>
    public required double Thickness { get; init; }

    /// <summary>What gave the faces their angle.</summary>
    public required SledKind Sled { get; init; }

    /// <summary>Distance from a fence's pivot at which its offset is read with a rule, mm.</summary>
    public required double RuleDistance { get; init; }

    /// <summary>What the fences are set to now, radians from square; pi/N unless told.</summary>
    public double? FenceAngle { get; init; }

    /// <summary>The ring of a plan as it lies glued, sawn or sanded with the sled of a shop.</summary>
    public static DiagnosedRing Of(RingPlan plan, Sled sled)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sled);
        return new()
        {
            Segments = plan.Ring.Around,
            RimRadius = plan.Glued.Reach,
            TipRadius = plan.Glued.InnerCorner,
            Thickness = plan["board-thickness"].Value,
            Sled = sled.Kind,
            RuleDistance = sled.RuleDistance.Millimetres,
            FenceAngle = plan["mitre"].Value,
        };
    }

    /// <summary>
    /// The closing error E, radians, of a ring with all joints but one pressed shut, rims in line, that stands open by
    /// <paramref name="gap"/> mm: the faces stand at E about the centre, so E = gap / R at the rim (wedges too narrow); or
    /// their rims touch and E = −gap / (R − r) at the centre (too wide).
    /// </summary>
    public double ClosingError(OpenAt at, double gap) => at == OpenAt.Rim ? gap / RimRadius : -gap / JointLength;

    /// <summary>Length of a joint, mm.</summary>
    internal double JointLength => RimRadius - TipRadius;

    /// <summary>The fence angle, told or pi/N.</summary>
    internal double Setting => FenceAngle ?? Math.PI / Segments;

    internal void Check()
    {
        Require(Segments >= 3, "segments", Segments, "give at least 3");
        Require(RimRadius > 0 && double.IsFinite(RimRadius), "rim radius", RimRadius, "give more than 0 mm");
        Require(TipRadius >= 0 && TipRadius < RimRadius, "inner radius", TipRadius, "give at least 0 mm and less than the rim radius");
        Require(Thickness > 0 && double.IsFinite(Thickness), "thickness", Thickness, "give more than 0 mm");
        Require(RuleDistance > 0 && double.IsFinite(RuleDistance), "distance of the rule from the pivot", RuleDistance, "give more than 0 mm");
        Require(Setting is > 0 and < Math.PI / 2, "fence angle", Setting, "give an angle between 0 and 90 degrees, in radians");
    }

    private static void Require(bool holds, string what, double value, string right)
    {
        if (!holds) throw new BadInputException($"Diagnosis, {what}", FormattableString.Invariant($"{value:0.###} cannot be used"), right);
    }
}
