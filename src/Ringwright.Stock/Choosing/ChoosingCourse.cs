using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Choosing;

/// <summary>A ring and how far below it anything better is ruled out.</summary>
/// <param name="Taken">The wedges taken as they come.</param>
/// <param name="Ring">The ring chosen.</param>
/// <param name="Bound">Proved lower bounds of its levels, each for rings as good in the levels before it.</param>
internal sealed record SettledRing(int[] Taken, int[] Ring, RingLevels Bound);

/// <summary>The three stages of a choice: gap, wander, steps.</summary>
internal sealed class ChoosingCourse(ChoosingProblem problem, double workLimit, IProgress<ChoiceProgress>? progress, CancellationToken cancel)
{
    private const int OrderSteps = 200_000;
    private const int StepMoves = 60_000;
    // Beyond this many wedge-place pairs the program for steps proves nothing worth its time.
    private const int MostPairsForSteps = 120;

    private int[] _ring = [];

    public SettledRing Run()
    {
        int[] taken = _ring = AsTheyCome();
        Report("worst gap", 0);
        var (counts, gapBound) = SettleGap();
        Report("joint lines", 1.0 / 3);
        long wanderBound = SettleWander(counts);
        Report("size steps", 2.0 / 3);
        long stepBound = SettleSteps();
        _ring = RingImages.Standard(problem, _ring);
        Report("done", 1);
        return new(taken, _ring, new(gapBound, wanderBound, stepBound));
    }

    private int[] AsTheyCome()
    {
        var wedges = problem.Wedges.Select((w, i) => (w.Reading, Index: i)).ToDictionary(w => w.Reading.Number, w => w.Index);
        var left = problem.Input.Wedges.ToList();
        return [.. Enumerable.Range(0, problem.Places).Select(k =>
        {
            var next = left.First(w => problem.Input.Suits(w, k));
            left.Remove(next);
            return wedges[next.Number];
        })];
    }

    // Ends with a ring of the least gap, in any order.
    private (ClassCounts Counts, long Bound) SettleGap()
    {
        long gap = RingLevels.GapOf(problem, _ring);
        var model = new SetModel(problem);
        var run = model.LeastGap(ClassCounts.Of(problem, _ring), gap, workLimit, cancel);
        if (!run.HasValues) return (ClassCounts.Of(problem, _ring), Math.Max(1, run.Bound));
        var counts = model.CountsOf(run.Solver);
        _ring = new RingFiller(problem, counts).InAnyOrder();
        return (counts, Math.Max(1, run.Bound));
    }

    private long SettleWander(ClassCounts counts)
    {
        long gap = RingLevels.GapOf(problem, _ring);
        long most = RingLevels.WanderOf(problem, _ring);
        var model = new SetModel(problem);
        var run = model.LeastWanderBound(gap, most, counts, workLimit, cancel);
        if (run.HasValues) counts = model.CountsOf(run.Solver);
        long bound = Math.Max(1, run.Bound);
        Keep(BestOrder(counts, bound));
        if (RingLevels.WanderOf(problem, _ring) == bound) return bound;
        var order = new OrderModel(problem, gap);
        run = order.LeastWander(bound, _ring, workLimit, cancel);
        if (run.HasValues) Keep(order.RingOf(run.Solver));
        return Math.Max(bound, run.Bound);
    }

    private long SettleSteps()
    {
        _ring = StepSearch.Improve(problem, _ring, StepMoves, cancel);
        if (problem.Wedges.Length * problem.Places > MostPairsForSteps) return 0;
        var levels = RingLevels.Of(problem, _ring);
        var order = new OrderModel(problem, levels.Gap);
        var run = order.LeastSteps(levels.Wander, _ring, workLimit, cancel);
        if (run.HasValues) _ring = order.RingOf(run.Solver);
        return Math.Max(0, run.Bound);
    }

    // The least range for which an order is found: up by doubling, then down by halving.
    private int[] BestOrder(ClassCounts counts, long bound)
    {
        var search = new OrderSearch(problem, counts);
        var filler = new RingFiller(problem, counts);
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
        if (RingLevels.WanderOf(problem, ring) < RingLevels.WanderOf(problem, _ring)) _ring = ring;
    }

    private void Report(string stage, double share) =>
        progress?.Report(new(stage, share, RingFigures.Of([.. _ring.Select(i => problem.Wedges[i].Reading)], problem.Input).WorstGap));
}
