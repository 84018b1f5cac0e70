namespace Ringwright.Stock.Choosing;

/// <summary>
/// Third stage, which only breaks ties: with gap and wander held, the least sum of size steps. Annealing finds; for small rings an
/// exhaustive search over all sets left proves.
/// </summary>
internal sealed class StepStage(ChoosingProblem problem, double workLimit, CancellationToken cancel)
{
    private const int Moves = 60_000;
    private const int TourSteps = 400_000;
    private const int MostSets = 100;
    private const int MostPlacesToProve = 10;

    /// <summary>The ring and a proved bound of its sum of steps in micrometres.</summary>
    public (int[] Ring, long Bound) Settle(int[] ring)
    {
        ring = StepSearch.Improve(problem, ring, Moves, cancel);
        if (problem.Places > MostPlacesToProve || problem.Wedges.Length > TourSearch.MostWedges) return (ring, SpreadBound());
        var levels = RingLevels.Of(problem, ring);
        var list = new SetModel(problem).Sets(levels.Gap * problem.Grain, levels.Wander, MostSets, workLimit, cancel);
        var search = new TourSearch(problem, ring, levels, TourSteps, cancel);
        foreach (var counts in list.Sets) search.Through(counts);
        return (search.Best, list.Complete && search.Exhausted ? search.Steps : SpreadBound());
    }

    // Around the ring, sizes go at least once from the smallest to the largest and back.
    private long SpreadBound() => 2 * Math.Max(Spread(w => w.Rim), Spread(w => w.Tip));

    private long Spread(Func<MeasuredWedge, long> size)
    {
        long[] sizes = [.. problem.Wedges.Select(size).Order()];
        return Enumerable.Range(0, sizes.Length - problem.Places + 1).Min(i => sizes[i + problem.Places - 1] - sizes[i]);
    }
}
