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
    private int[] _ring = [];

    public SettledRing Run()
    {
        int[] taken = _ring = AsTheyCome();
        Report("worst gap", 0);
        // Not from the wedges as they come, or their order on the bench would decide between equals.
        _ring = AsSorted();
        long gapBound = SettleGap();
        if (RingLevels.GapOf(problem, taken) < RingLevels.GapOf(problem, _ring)) _ring = taken;
        Report("joint lines", 1.0 / 3);
        (_ring, long wanderBound) = new WanderStage(problem, workLimit, cancel).Settle(_ring);
        Report("size steps", 2.0 / 3);
        (_ring, long stepBound) = new StepStage(problem, workLimit, cancel).Settle(_ring);
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

    private int[] AsSorted()
    {
        var left = Enumerable.Range(0, problem.Wedges.Length).ToList();
        return [.. problem.PlaceWoods.Select(wood =>
        {
            int next = left.First(i => problem.Wedges[i].Wood == wood);
            left.Remove(next);
            return next;
        })];
    }

    // Ends with a ring of the least gap, in any order.
    private long SettleGap()
    {
        var joined = problem.Joined();
        var (counts, bound) = LeastGap(joined, 1);
        if (problem.Parts == 2)
        {
            // One half at least is off by half of what the whole ring is off, and that is over (level − 1) grains.
            bound = (bound - 1) / 2 + 1;
            int[] whole = counts is null ? _ring : new RingFiller(joined).InAnyOrder(counts);
            if (HalvesDeal.Find(problem, whole, bound * problem.Grain) is { } dealt)
            {
                _ring = dealt;
                return bound;
            }

            (counts, bound) = LeastGap(problem, bound);
        }

        if (counts is not null) _ring = new RingFiller(problem).InAnyOrder(counts);
        return bound;
    }

    private (ClassCounts? Counts, long Bound) LeastGap(ChoosingProblem of, long floor)
    {
        var model = new SetModel(of);
        var run = model.LeastGap(floor, RingLevels.GapOf(of, _ring), ClassCounts.Of(of, _ring), workLimit, cancel);
        return (run.HasValues ? model.CountsOf(run.Solver) : null, Math.Max(floor, run.Bound));
    }

    private void Report(string stage, double share) =>
        progress?.Report(new(stage, share, RingFigures.Of([.. _ring.Select(i => problem.Wedges[i].Reading)], problem.Input).WorstGap));
}
