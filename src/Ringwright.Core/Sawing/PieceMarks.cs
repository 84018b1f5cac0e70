namespace Ringwright.Core.Sawing;

/// <summary>What should be pencilled on a wedge as it falls, and what a ring needs to know of it.</summary>
/// <param name="Number">1 for the first wedge.</param>
/// <param name="Up">The board's side that is up in the wedge frame: the one that was up when the wedge fell, unless it was turned over since.</param>
/// <param name="RimEdge">The board's edge that is the rim.</param>
/// <param name="MinusCut">Number of the cut that made the -y face.</param>
/// <param name="PlusCut">Number of the cut that made the +y face.</param>
public readonly record struct PieceMarks(int Number, BoardSide Up, BoardEdge RimEdge, int MinusCut, int PlusCut);
