namespace Ringwright.Core.Fitting;

/// <summary>
/// Monte Carlo of the closing error, cut by cut. Use <see cref="ClosureStatistics"/> where it has the answer; the chain
/// is for what has no closed form (wedges picked by a gauge) and as a check that assumes nothing about the sum.
/// </summary>
public static class AngularChain
{
    /// <summary>Histograms reach this many standard deviations; what lies beyond shares one bin.</summary>
    private const double HistogramReach = 12;

    /// <summary>A gauge that passes fewer wedges than this is a mistake, and sawing for it would not end.</summary>
    private const double LeastPassing = 0.01;

    /// <summary>Simulates rings; the result depends on making, rings, seed and limit, never on the number of threads.</summary>
    /// <param name="making">How the rings are made.</param>
    /// <param name="run">How many rings, the seed and the limit.</param>
    /// <param name="progress">Told the finished part, 0 to 1, about a hundred times; never called by two threads at once.</param>
    /// <param name="cancellation">Stops the simulation between two blocks of rings.</param>
    /// <exception cref="BadInputException">An input out of range, or a gauge that hardly any wedge passes.</exception>
    /// <exception cref="OperationCanceledException">Cancelled; nothing is returned.</exception>
    public static ChainResult Simulate(
        RingMaking making, ChainRun run, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(making);
        ArgumentNullException.ThrowIfNull(run);
        making.Validate();
        run.Validate();
        CheckGauge(making);
        return new Simulation(making, run, ScaleOf(making), progress, cancellation).Run();
    }

    private static ChainScale ScaleOf(RingMaking making)
    {
        // Exact cuts still need a unit that is wide against the rounding of the sum.
        double least = 1e-9 * Math.Max(Math.Abs(making.MeanClosingError), 1e-3);
        return new(making.MeanClosingError, Math.Max(Math.Sqrt(making.ClosingVariance), least));
    }

    private static void CheckGauge(RingMaking making)
    {
        if (making.GaugeLimit is not { } limit)
            return;
        if (making.Setting is { Sd: > 0 })
            throw new BadInputException("limit of the wedge gauge", "it is given together with an error of setting the fences", "leave one of them out: a fence set badly enough would have every wedge refused");
        RingMaking wedge = new(CutRuns.OneRun(1), making.Cut);
        double passing = ClosureStatistics.Of(wedge).ChanceToClose(limit);
        if (passing < LeastPassing)
            throw new BadInputException("limit of the wedge gauge", $"only {passing:P2} of the wedges would pass", "give a wider limit or smaller cut errors");
    }

    private sealed class Simulation(
        RingMaking making, ChainRun run, ChainScale scale, IProgress<double>? progress, CancellationToken cancellation)
    {
        private readonly BlockSums[] _sums = new BlockSums[run.Blocks];
        private readonly ErrorHistogram _total = NewHistogram(scale);
        private readonly ChainBlock _block = new(making, run.Seed);
        private readonly Lock _gate = new();
        private int _done;
        private int _reported;

        internal ChainResult Run()
        {
            ParallelOptions options = new()
            {
                CancellationToken = cancellation,
                MaxDegreeOfParallelism = run.Threads == 0 ? Environment.ProcessorCount : run.Threads,
            };
            Parallel.For(0, run.Blocks, options, () => new Worker(NewHistogram(scale)), Work, Merge);

            // Rounded sums are added in the order of the blocks, not of the threads.
            BlockSums sums = _sums.Aggregate((a, b) => a + b);
            return new(run, sums, scale, _total);
        }

        private static ErrorHistogram NewHistogram(ChainScale scale) => new(Math.Abs(scale.Mean) + HistogramReach * scale.Sd);

        private Worker Work(int block, ParallelLoopState state, Worker worker)
        {
            Span<double> closing = worker.Closing.AsSpan(0, run.RingsOf(block));
            long sawn = _block.Simulate((ulong)block, closing, worker.Cuts);
            _sums[block] = ChainTally.Sum(closing, scale, run.Limit, sawn);
            worker.Histogram.Add(closing);
            Report();
            return worker;
        }

        private void Merge(Worker worker)
        {
            lock (_gate)
                _total.Add(worker.Histogram);
        }

        private void Report()
        {
            int done = Interlocked.Increment(ref _done);
            if (progress is null || Percent(done) == Percent(done - 1))
                return;
            lock (_gate)
            {
                // A later report may have overtaken this one on another thread.
                if (done <= _reported)
                    return;
                _reported = done;
                progress.Report((double)done / run.Blocks);
            }
        }

        private int Percent(int done) => (int)(100L * done / run.Blocks);
    }

    private sealed record Worker(ErrorHistogram Histogram)
    {
        internal double[] Closing { get; } = new double[ChainBlock.Rings];

        internal LaneBuffer Cuts { get; } = new(CutErrorSource.BatchLength);
    }
}
