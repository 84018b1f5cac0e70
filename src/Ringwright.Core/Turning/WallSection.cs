using System.Collections.Immutable;

namespace Ringwright.Core.Turning;

/// <summary>
/// The cut through a turned ring along the axis: radii of wood at levels from the bottom up. Between levels outer and inner
/// wall run straight. A level may come twice, with the wood below it first and the wood above it second: a floor, a step.
/// </summary>
/// <param name="Levels">From the bottom up, never falling; the first and the last are the ring's faces.</param>
public sealed record WallSection(ImmutableArray<WallLevel> Levels);

/// <summary>Where there is wood at one height. Lengths in mm.</summary>
/// <param name="Z">Height on the lathe's axis.</param>
/// <param name="Outer">Outer radius, more than <paramref name="Inner"/>.</param>
/// <param name="Inner">Inner radius; 0 where the piece is solid.</param>
public readonly record struct WallLevel(double Z, double Outer, double Inner)
{
    /// <summary>Between two levels, where the walls run straight.</summary>
    /// <param name="below">The one.</param>
    /// <param name="above">The other.</param>
    /// <param name="share">How much of the way to it: 0 to 1.</param>
    public static WallLevel Between(WallLevel below, WallLevel above, double share) => new(
        below.Z + (share * (above.Z - below.Z)),
        below.Outer + (share * (above.Outer - below.Outer)),
        below.Inner + (share * (above.Inner - below.Inner)));
}
