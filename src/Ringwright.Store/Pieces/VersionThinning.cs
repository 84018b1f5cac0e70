namespace Ringwright.Store;

/// <summary>
/// Which automatic versions are kept: all of the last day, then the last of each day for thirty days, then the last of each
/// week. Versions with a name, the first and the newest are always kept. Days are counted in UTC.
/// </summary>
public static class VersionThinning
{
    private static readonly TimeSpan AllFor = TimeSpan.FromDays(1), DailyFor = TimeSpan.FromDays(30);

    /// <summary>The versions that need not be kept.</summary>
    /// <param name="versions">All versions of one piece, in any order.</param>
    /// <param name="now">The time it is.</param>
    public static IEnumerable<PieceVersion> Surplus(IEnumerable<PieceVersion> versions, DateTimeOffset now)
    {
        PieceVersion[] inOrder = [.. versions.OrderBy(v => v.Id)];
        for (int i = 1; i < inOrder.Length - 1; i++)
        {
            PieceVersion version = inOrder[i];
            if (version.Name is null && Slot(version.Saved, now) is long slot && Slot(inOrder[i + 1].Saved, now) == slot) yield return version;
        }
    }

    // Versions in the same slot stand for each other; null for those that each stand for themselves. Weeks follow the days.
    private static long? Slot(DateTimeOffset saved, DateTimeOffset now)
    {
        long day = saved.UtcTicks / TimeSpan.TicksPerDay;
        if (now - saved <= AllFor) return null;
        return now - saved <= DailyFor ? day : -1 - (day / 7);
    }
}
