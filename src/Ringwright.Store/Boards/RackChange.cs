namespace Ringwright.Store;

/// <summary>A change of the rack.</summary>
/// <param name="Id">Its number; greater is later.</param>
/// <param name="Made">When it was made, UTC.</param>
/// <param name="What">What it was, in words.</param>
/// <param name="IsUndone">Whether it was undone.</param>
public sealed record RackChange(long Id, DateTimeOffset Made, string What, bool IsUndone);
