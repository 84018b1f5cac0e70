using System.Collections.Immutable;
using Ringwright.Core;

namespace Ringwright.Stock.Boards;

/// <summary>Pieces that are cut alike. Lengths are whole numbers in any one unit, kerf included.</summary>
/// <param name="Length">Length that each piece takes, above 0.</param>
/// <param name="Count">How many are wanted, 0 or more.</param>
public readonly record struct StripItem(long Length, int Count)
{
    /// <summary>Length that their first cut takes on every stick that has some of them, 0 or more.</summary>
    public long Start { get; init; }
}

/// <summary>Sticks that can be had in any number.</summary>
/// <param name="Length">Length that pieces can take of one: without trim and the rest to hold. Above 0.</param>
/// <param name="Cost">What one costs, above 0.</param>
public readonly record struct StripStock(long Length, long Cost);

/// <summary>How pieces are to be cut from sticks for the least cost: the one-dimensional cutting stock problem with several stock lengths.</summary>
/// <param name="Items">The pieces.</param>
/// <param name="Stocks">The sticks.</param>
public sealed record StripProblem(ImmutableArray<StripItem> Items, ImmutableArray<StripStock> Stocks)
{
    /// <summary>Longest length, so that sums stay whole numbers.</summary>
    public const long Longest = 1L << 40;

    /// <summary>Throws for the first thing that cannot be.</summary>
    /// <exception cref="BadInputException">A length, count or cost is out of range, there is no stick, or a piece fits on none.</exception>
    public void Check()
    {
        if (Stocks.IsDefaultOrEmpty) throw new BadInputException("sticks", "there is none", "give at least one length that can be had");
        if (Items.IsDefault) throw new BadInputException("pieces", "the list is missing", "an empty list will do");
        for (int s = 0; s < Stocks.Length; s++)
            if (Stocks[s] is not { Length: > 0 and <= Longest, Cost: > 0 and <= Longest })
                throw new BadInputException($"stick {s + 1}", $"a length of {Stocks[s].Length} at a cost of {Stocks[s].Cost} cannot be", "both must be above 0");
        long most = Stocks.Max(s => s.Length);
        for (int i = 0; i < Items.Length; i++)
        {
            StripItem item = Items[i];
            if (item.Length is <= 0 or > Longest || item.Start is < 0 or > Longest || item.Count is < 0 or > 1_000_000)
                throw new BadInputException($"piece {i + 1}", $"{item.Count} of length {item.Length} cannot be", "a length above 0 and a count from 0 to 1000000 can");
            if (item.Count > 0 && item.Start + item.Length > most)
                throw new BadInputException($"piece {i + 1}", $"its {item.Start + item.Length} are more than the longest stick's {most}", "a longer stick is needed");
        }
    }
}

/// <summary>Sticks that are cut alike.</summary>
/// <param name="Stock">Which stick.</param>
/// <param name="Counts">Pieces of each kind from one.</param>
/// <param name="Times">How many are cut so.</param>
public sealed record StripPattern(int Stock, ImmutableArray<int> Counts, int Times);

/// <summary>How to cut, and how far below it anything better is ruled out.</summary>
/// <param name="Patterns">The sticks; together they give at least the pieces wanted.</param>
/// <param name="Cost">Their cost.</param>
/// <param name="Bound">Proved: no way of cutting costs less.</param>
public sealed record StripSolution(ImmutableArray<StripPattern> Patterns, long Cost, long Bound)
{
    /// <summary>Whether it is proved to be the best.</summary>
    public bool IsProved => Cost == Bound;

    /// <summary>By what share of the cost something better could at most be cheaper; 0 when proved.</summary>
    public double Gap => Cost == 0 ? 0 : (double)(Cost - Bound) / Cost;
}
