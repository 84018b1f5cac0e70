namespace Ringwright.Stock.Choosing;

/// <summary>
/// Second stage: with the worst gap held, the set and order with the least wander. A bound first; a set that reaches it; an order of
/// that set within it. Where the order cannot be had, the other sets in turn.
/// </summary>
internal sealed class WanderStage(ChoosingProblem problem, double workLimit, CancellationToken cancel)
{
    private const int OrderSteps = 50_000;
    private const int OrderStepsInAll = 1_000_000;
    private const int MostSets = 400;
    // Listing is repeated after each find, so it gets a part of the work.
    private const int ListingShare = 4;

    private int[] _ring = [];
    private long _stepsLeft = OrderStepsInAll;

    private long Wander => RingLevels.WanderOf(problem, _ring);

    /// <summary>The ring and a proved bound of its wander in grains, starting from a ring of the least gap.</summary>
    public (int[] Ring, long Bound) Settle(int[] ring)
    {
        _ring = ring;
        long gap = RingLevels.GapOf(problem, ring);
        var (counts, bound) = JoinedBound(gap);
        if (problem.Parts == 2) (counts, bound) = SplitBound(gap, bound, counts);
        Keep(BestOrder(counts, bound));
        while (Wander > bound && TryOtherSets(gap, ref bound))
        {
        }

        return (_ring, bound);
    }

    // Halves taken together: fast, and what holds for the whole set holds for its halves.
    private (ClassCounts Counts, long Bound) JoinedBound(long gap)
    {
        var held = ClassCounts.Of(problem.Joined(), _ring);
        long allowed = gap * problem.Grain;
        var (counts, bound) = Joined(problem.Parts * allowed, 1, held);
        if (problem.Parts == 1) return (counts ?? held, bound);
        // Where both halves are off to their limit, hardly any split will do; half of that leaves room.
        return (Joined(allowed, bound, held).Counts ?? counts ?? held, bound);
    }

    private (ClassCounts? Counts, long Bound) Joined(long gapLimit, long floor, ClassCounts held)
    {
        var model = new SetModel(problem.Joined());
        var run = model.LeastWanderBound(gapLimit, floor, Wander, held, workLimit, cancel);
        return (run.HasValues ? model.CountsOf(run.Solver) : null, Math.Max(floor, run.Bound));
    }

    // The wedges of the joined bound dealt to halves, if that can be; otherwise set and halves at once.
    private (ClassCounts Counts, long Bound) SplitBound(long gap, long floor, ClassCounts whole)
    {
        long allowed = gap * problem.Grain;
        if (HalvesDeal.Find(problem, new RingFiller(problem.Joined()).InAnyOrder(whole), allowed) is { } dealt)
            return (ClassCounts.Of(problem, dealt), floor);
        var held = ClassCounts.Of(problem, _ring);
        var model = new SetModel(problem);
        var run = model.LeastWanderBound(allowed, floor, Wander, held, workLimit, cancel);
        return (run.HasValues ? model.CountsOf(run.Solver) : held, Math.Max(floor, run.Bound));
    }

    // Sets that could still be better: a better order among them, or none. True while there may be more to find.
    private bool TryOtherSets(long gap, ref long bound)
    {
        long aim = Wander - 1;
        var list = new SetModel(problem).Sets(gap * problem.Grain, aim, MostSets, workLimit / ListingShare, cancel);
        bool ruledOut = list.Complete;
        foreach (var counts in list.Sets)
        {
            var search = new OrderSearch(problem, counts);
            var found = _stepsLeft > 0 ? search.Find(aim, OrderSteps, cancel) : OrderFound.Unknown;
            _stepsLeft -= search.Steps;
            ruledOut &= found == OrderFound.No;
            if (found != OrderFound.Yes) continue;
            Keep(new RingFiller(problem).Fill(search.ClassAt));
            return true;
        }

        if (ruledOut) bound = Wander;
        return false;
    }

    // The least range for which an order of one set is found: up by doubling, then down by halving.
    private int[] BestOrder(ClassCounts counts, long bound)
    {
        var search = new OrderSearch(problem, counts);
        var filler = new RingFiller(problem);
        long below = bound - 1, reach = 1;
        while (search.Find(below + reach, OrderSteps, cancel) != OrderFound.Yes)
        {
            below += reach;
            reach *= 2;
        }

        int[] best = filler.Fill(search.ClassAt);
        for (long found = RingLevels.WanderOf(problem, best); found - below > 1;)
        {
            long middle = below + (found - below) / 2;
            if (search.Find(middle, OrderSteps, cancel) != OrderFound.Yes) below = middle;
            else found = RingLevels.WanderOf(problem, best = filler.Fill(search.ClassAt));
        }

        return best;
    }

    private void Keep(int[] ring)
    {
        if (RingLevels.WanderOf(problem, ring) < Wander) _ring = ring;
    }
}
