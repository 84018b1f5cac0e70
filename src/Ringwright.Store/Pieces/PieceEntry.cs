using System.Collections.Immutable;

namespace Ringwright.Store;

/// <summary>What the library of pieces shows of one.</summary>
/// <param name="Id">Its number; never given twice.</param>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What kind of piece, as in its file; null when the file does not say.</param>
/// <param name="Woods">The woods in it, each once.</param>
/// <param name="Rings">How many rings.</param>
/// <param name="Created">When it was added, UTC.</param>
/// <param name="Changed">When it was last changed, UTC.</param>
/// <param name="Removed">When it was removed, UTC; null for one that is there.</param>
public sealed record PieceEntry(long Id, string Name, string? Kind, ImmutableArray<string> Woods, int Rings, DateTimeOffset Created, DateTimeOffset Changed, DateTimeOffset? Removed);
