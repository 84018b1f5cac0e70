namespace Ringwright.Store;

/// <summary>What the list of shops shows of one.</summary>
/// <param name="Id">Its number; never given twice.</param>
/// <param name="Name">Its name.</param>
/// <param name="IsCurrent">Whether it is the one in use.</param>
/// <param name="Changed">When it was last changed, UTC.</param>
/// <param name="Removed">When it was removed, UTC; null for one that is there.</param>
public sealed record ShopEntry(long Id, string Name, bool IsCurrent, DateTimeOffset Changed, DateTimeOffset? Removed);
