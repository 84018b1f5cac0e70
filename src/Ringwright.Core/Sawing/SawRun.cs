using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>What came of one board.</summary>
/// <param name="Job">What was asked.</param>
/// <param name="Cuts">Every cut in order.</param>
/// <param name="Wedges">Every wedge in the order of sawing.</param>
/// <param name="Offcuts">What fell before the first wedge, in the board frame: the squaring piece, if any, and the angled offcut.</param>
/// <param name="Remainder">What is left of the board, in the board frame.</param>
/// <param name="ShortestEdgeLeft">Length left on the shortest long edge, mm.</param>
/// <param name="Reason">Why it ended.</param>
/// <param name="Explanation">The same as a sentence with its numbers.</param>
/// <param name="Volumes">Where the wood went.</param>
public sealed record SawRun(
    SawJob Job,
    ImmutableArray<Cut> Cuts,
    ImmutableArray<SawnWedge> Wedges,
    ImmutableArray<ConvexSolid> Offcuts,
    ConvexSolid Remainder,
    double ShortestEdgeLeft,
    StopReason Reason,
    string Explanation,
    SawVolumes Volumes)
{
    /// <summary>x in the board frame, mm, beyond which no cut may go: the length behind it is needed to hold the board.</summary>
    public double NoCutBeyond => Job.Board.Length - Job.Saw.HoldingLength;
}
