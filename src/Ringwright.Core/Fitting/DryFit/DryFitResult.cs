using System.Collections.Immutable;

namespace Ringwright.Core.Fitting;

/// <summary>What a dry fit comes to, without its details. Lengths in mm, angles in radians.</summary>
/// <param name="Settled">Whether the iteration settled; if not, the numbers describe the last ring it reached and deserve no trust.</param>
/// <param name="Steps">Steps taken, each with everything linearised anew; more than one try counts together.</param>
/// <param name="ClosingError">2 pi less the sum of the wedge angles at mid height: positive when the wedges are too narrow in angle.</param>
/// <param name="BandLength">Length of the band around the outer corners at mid height.</param>
/// <param name="WorstGap">Widest opening of any joint.</param>
/// <param name="WorstJoint">The joint it is in; joint i lies between wedge i and the next, counted from 0.</param>
/// <param name="WorstCorner">The end of the joint it is at.</param>
public readonly record struct DryFitSummary(
    bool Settled,
    int Steps,
    double ClosingError,
    double BandLength,
    double WorstGap,
    int WorstJoint,
    JointCorners WorstCorner);

/// <summary>A dry-fitted ring in full. Lengths in mm, angles in radians; the ring lies about the origin.</summary>
/// <param name="Summary">The result in short.</param>
/// <param name="Wedges">The wedges as given.</param>
/// <param name="Poses">Where each wedge lies.</param>
/// <param name="Joints">The opening of each joint; joint i lies between wedge i and the next.</param>
/// <param name="ClosingErrorBottom">2 pi less the sum of the wedge angles on the table.</param>
/// <param name="ClosingErrorTop">2 pi less the sum of the wedge angles on the upper side.</param>
/// <param name="Gathered">The other extreme: the whole opening gathered in one joint.</param>
/// <param name="CentreOverlap">
/// How deep tips of wedges that are not neighbours overlap at the centre: nothing but rounding (below a micrometre) in a
/// ring that settled; in one that did not, a measure of how far it is from one that could be laid.
/// </param>
public sealed record DryFitResult(
    DryFitSummary Summary,
    ImmutableArray<FitWedge> Wedges,
    ImmutableArray<WedgePose> Poses,
    ImmutableArray<JointGap> Joints,
    double ClosingErrorBottom,
    double ClosingErrorTop,
    GatheredJoint Gathered,
    double CentreOverlap);
