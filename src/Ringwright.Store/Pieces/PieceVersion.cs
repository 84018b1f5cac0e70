namespace Ringwright.Store;

/// <summary>A state of a piece that can be gone back to.</summary>
/// <param name="Id">Its number; greater is later.</param>
/// <param name="Saved">When it was last saved into, UTC.</param>
/// <param name="Name">The name it was given; null for an automatic one.</param>
public sealed record PieceVersion(long Id, DateTimeOffset Saved, string? Name);
