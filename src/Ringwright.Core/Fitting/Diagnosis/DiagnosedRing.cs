using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

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

    /// <summary>The wedge angle that is wanted, radians; 2 pi/N unless told, when only some of a ring's segments are looked at.</summary>
    public double? WedgeAngle { get; init; }

    /// <summary>Whether the setting is the blade's tilt, as for staves, and not a fence's angle.</summary>
    public bool IsTilt { get; init; }

    /// <summary>What part of a change of the setting turns a joint about the ring's axis: 1 for wedges, less for staves.</summary>
    public double Counts { get; init; } = 1;

    /// <summary>
    /// Those segments of a planned ring that are sawn with one setting: its wedges of one width, or its staves, whose joints turn
    /// with the tilt or, where the staves lie flatter than 45 degrees, more with the mitre.
    /// </summary>
    /// <param name="plan">The ring's plan.</param>
    /// <param name="sled">The sled of the shop.</param>
    /// <param name="batch">Which of its batches.</param>
    public static DiagnosedRing Of(RingPlan plan, Sled sled, int batch)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sled);
        if (plan.Stave is { } stave) return Staves(plan, stave, sled);
        if (plan.Batches.Length == 1) return Of(plan, sled);
        RingPlan alone = plan.Alone(batch);
        WedgeGeometry wedge = alone.Glued;
        return Of(alone, sled) with
        {
            Segments = alone.Batches[0].Places.Length,
            TipRadius = wedge.ApexRadius == 0 ? wedge.InnerCorner : new Vector2D(wedge.ApexRadius + wedge.InnerApothem, wedge.Tip / 2).Length,
            WedgeAngle = wedge.WedgeAngle,
        };
    }

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
    internal double Setting => FenceAngle ?? Wanted / 2;

    /// <summary>The wedge angle wanted, told or 2 pi/N.</summary>
    internal double Wanted => WedgeAngle ?? 2 * Math.PI / Segments;

    internal void Check()
    {
        Require(Segments >= (WedgeAngle is null ? 3 : 1), "segments", Segments, "give at least 3");
        Require(RimRadius > 0 && double.IsFinite(RimRadius), "rim radius", RimRadius, "give more than 0 mm");
        Require(TipRadius >= 0 && TipRadius < RimRadius, "inner radius", TipRadius, "give at least 0 mm and less than the rim radius");
        Require(Thickness > 0 && double.IsFinite(Thickness), "thickness", Thickness, "give more than 0 mm");
        Require(RuleDistance > 0 && double.IsFinite(RuleDistance), "distance of the rule from the pivot", RuleDistance, "give more than 0 mm");
        Require(Setting is > 0 and < Math.PI / 2, "fence angle", Setting, "give an angle between 0 and 90 degrees, in radians");
    }

    // Each cut is made at the one setting, the panel turned over between them.
    private static DiagnosedRing Staves(RingPlan plan, StaveGeometry stave, Sled sled)
    {
        bool tilt = stave.TiltCounts >= stave.MitreCounts;
        return new()
        {
            Segments = plan.Ring.Around,
            RimRadius = stave.OuterApothem(stave.WideEnd) / Math.Cos(stave.HalfAngle),
            TipRadius = Math.Max(0, stave.InnerApothem(stave.WideEnd) / Math.Cos(stave.HalfAngle)),
            Thickness = stave.Top - stave.Bottom,
            Sled = sled.Kind == SledKind.DiscSander ? SledKind.DiscSander : SledKind.OneFence,
            RuleDistance = sled.RuleDistance.Millimetres,
            FenceAngle = tilt ? stave.Tilt : stave.Mitre,
            IsTilt = tilt,
            Counts = tilt ? stave.TiltCounts : stave.MitreCounts,
        };
    }

    private static void Require(bool holds, string what, double value, string right)
    {
        if (!holds) throw new BadInputException($"Diagnosis, {what}", FormattableString.Invariant($"{value:0.###} cannot be used"), right);
    }
}
