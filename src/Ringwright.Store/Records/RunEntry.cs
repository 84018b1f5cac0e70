using Ringwright.Core.Pieces;

namespace Ringwright.Store;

/// <summary>A run in the record.</summary>
/// <param name="Id">Its number; never given twice.</param>
/// <param name="Added">When it was added, UTC.</param>
/// <param name="Run">What was measured.</param>
/// <param name="Removed">When it was removed, UTC; null for one that counts.</param>
public sealed record RunEntry(long Id, DateTimeOffset Added, LoggedRun Run, DateTimeOffset? Removed);
