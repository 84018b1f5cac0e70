using Ringwright.Core.Rings;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.JobSheets;

/// <summary>
/// From a gap of the dry ring to the fence. Closing error E = gap / distance over which the joint opens; each of the 2 N
/// faces takes E / (2 N) (design, section 6; arc = radius · angle, small angles).
/// </summary>
/// <param name="Glued">The wedges.</param>
/// <param name="Mitre">The fence's angle now, rad.</param>
/// <param name="RuleDistance">Where the fence is measured, mm.</param>
internal readonly record struct GapCorrection(WedgeGeometry Glued, double Mitre, double RuleDistance)
{
    /// <summary>One joint open by <paramref name="gap"/> mm at the rim, all others shut: E = gap / R, R to the rim's corners.</summary>
    public FenceCorrection AtRim(double gap) => Of(gap / Glued.Reach);

    /// <summary>Joints open by <paramref name="gap"/> mm in all at their inner ends, rims touching: −E = gap / length of a joint.</summary>
    public FenceCorrection AtCentre(double gap) => Of(-gap / (Glued.OuterCorner - Glued.InnerCorner));

    private FenceCorrection Of(double closing) => new(Mitre, closing / (2 * Glued.Segments), RuleDistance);
}
