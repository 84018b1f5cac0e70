namespace Ringwright.Core.Fitting;

/// <summary>A wedge and its place in the ring.</summary>
/// <param name="Place">Place around the ring, 1 to N, as the pattern counts.</param>
/// <param name="Wedge">The wedge.</param>
/// <param name="Angle">Its measured angle, rad.</param>
public sealed record PlacedWedge(int Place, CaliperReading Wedge, double Angle);

/// <summary>The wedges chosen and what that brings.</summary>
/// <param name="Ring">The chosen wedges from place 1 on.</param>
/// <param name="LeftOver">Numbers of the wedges left over, ascending.</param>
/// <param name="Before">Figures when wedges are taken as they come, each place getting the next one of its wood.</param>
/// <param name="After">Figures of the chosen ring.</param>
/// <param name="GapSd">Standard deviation which the caliper alone leaves on the worst gap of the chosen ring, mm.</param>
/// <param name="Proof">What is proved.</param>
/// <param name="Sentence">In one sentence what choosing brought, and whether the caliper can tell.</param>
public sealed record WedgeChoice(
    IReadOnlyList<PlacedWedge> Ring, IReadOnlyList<int> LeftOver, RingFigures Before, RingFigures After, double GapSd, ChoiceProof Proof, string Sentence)
{
    /// <summary>By how much choosing lowers the worst gap, mm.</summary>
    public double Gain => Before.WorstGap - After.WorstGap;

    /// <summary>Whether the gain is more than two standard deviations of what the caliper leaves unknown.</summary>
    public bool CaliperCanTell => Gain > 2 * GapSd;
}
