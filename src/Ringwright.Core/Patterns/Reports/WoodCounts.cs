using System.Collections.Immutable;

namespace Ringwright.Core.Patterns.Reports;

/// <summary>How many pieces of one wood.</summary>
/// <param name="Wood">The wood's name as it was first written.</param>
/// <param name="Pieces">Number of segments.</param>
public sealed record WoodCount(string Wood, int Pieces);

/// <summary>Pieces of each wood, those of the most used wood first.</summary>
/// <param name="InAll">In the whole piece.</param>
/// <param name="PerRing">In each ring, from the bottom up.</param>
public sealed record WoodCounts(ImmutableArray<WoodCount> InAll, ImmutableArray<ImmutableArray<WoodCount>> PerRing)
{
    /// <summary>Counts the woods of a laid pattern; upper and lower case are the same wood.</summary>
    public static WoodCounts Of(ImmutableArray<ImmutableArray<string>> rows) => new(Count(rows.SelectMany(r => r)), [.. rows.Select(r => Count(r))]);

    private static ImmutableArray<WoodCount> Count(IEnumerable<string> woods) =>
        [.. woods.GroupBy(w => w.Trim(), StringComparer.OrdinalIgnoreCase).Select(g => new WoodCount(g.Key, g.Count()))
            .OrderByDescending(c => c.Pieces).ThenBy(c => c.Wood, StringComparer.OrdinalIgnoreCase)];
}
