namespace Ringwright.Store;

/// <summary>An automatic copy of the data file.</summary>
/// <param name="Number">Counts up from the first one.</param>
/// <param name="Taken">When it was taken, UTC.</param>
/// <param name="Path">Its file.</param>
public sealed record DataCopy(int Number, DateTimeOffset Taken, string Path);
