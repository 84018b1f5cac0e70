namespace Ringwright.Store;

/// <summary>How the data file is opened. The starting values are right for a person's own machine.</summary>
public sealed record StoreOptions
{
    /// <summary>How long to wait for another program that is writing; whole seconds, at least one.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>Automatic versions of a piece are at least this far apart; what is saved in between goes into the last one.</summary>
    public TimeSpan VersionSpacing { get; init; } = TimeSpan.FromMinutes(5);

    /// <summary>Copies of the data file are at least this far apart.</summary>
    public TimeSpan CopySpacing { get; init; } = TimeSpan.FromDays(1);

    /// <summary>Copies of the data file that are kept.</summary>
    public int CopiesKept { get; init; } = 7;

    /// <summary>Most pages of 4096 bytes the file may have; null for no bound.</summary>
    internal long? MostPages { get; init; }
}
