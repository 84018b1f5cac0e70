using Ringwright.Core.Pieces;

namespace Ringwright.Store;

/// <summary>A piece as it was saved.</summary>
/// <param name="Version">The version it is.</param>
/// <param name="Piece">The document.</param>
/// <param name="Draft">What was typed, as the app wrote it; null when only the document was saved.</param>
public sealed record PieceState(long Version, Piece Piece, string? Draft);
