using System.Collections.Immutable;
using System.Runtime.ExceptionServices;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Many rings sawn, sanded and laid dry in simulation: how wide the worst joint will gape, how likely hand pressure closes it,
/// and which cause is worth improving. Lengths in mm, angles in radians.
/// </summary>
/// <param name="Rings">Rings simulated.</param>
/// <param name="Seed">Seed of the first ring; the same seed gives the same forecast, whatever the number of threads.</param>
/// <param name="Band">Worst joint gap of each ring under a band, ascending.</param>
/// <param name="Gathered">Worst joint gap of each ring closed joint by joint, ascending.</param>
/// <param name="ClosingMean">Mean closing error.</param>
/// <param name="ClosingSd">Standard deviation of the closing error.</param>
/// <param name="Expected">The closed form of the same, to compare with.</param>
/// <param name="Unsettled">Rings whose dry fit did not settle; they count as gaping.</param>
/// <param name="Causes">What each cause contributes, the largest first.</param>
public sealed record FitForecast(
    int Rings, ulong Seed, ImmutableArray<double> Band, ImmutableArray<double> Gathered, double ClosingMean, double ClosingSd,
    ClosingBudget Expected, int Unsettled, ImmutableArray<CauseShare> Causes)
{
    /// <summary>Most rings of one forecast.</summary>
    public const int MostRings = 100_000;

    /// <summary>Chance that all joints stay within <paramref name="gap"/> mm under a band.</summary>
    public double ChanceUnderBand(double gap) => (double)Band.Count(g => g <= gap) / Rings;

    /// <summary>Chance that the last joint stays within <paramref name="gap"/> mm, closed joint by joint.</summary>
    public double ChanceJointByJoint(double gap) => (double)Gathered.Count(g => g <= gap) / Rings;

    /// <summary>The gap that the share <paramref name="level"/> of the rings does not exceed, mm.</summary>
    public static double Quantile(ImmutableArray<double> ascending, double level) =>
        ascending[Math.Clamp((int)Math.Ceiling(level * ascending.Length) - 1, 0, ascending.Length - 1)];

    /// <summary>Simulates.</summary>
    /// <param name="plan">The ring's plan.</param>
    /// <param name="shop">The shop it was planned for.</param>
    /// <param name="rings">Rings to simulate, 20 to <see cref="MostRings"/>.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="progress">Told the finished part, 0 to 1.</param>
    /// <param name="cancellation">Stops between two rings.</param>
    /// <exception cref="BadInputException">Too few or too many rings, or a ring that the simulation cannot saw.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static FitForecast Of(RingPlan plan, Shop shop, int rings, ulong seed, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (rings is < 20 or > MostRings) throw new BadInputException("rings", $"{rings} cannot be simulated", $"20 to {MostRings} can");
        ErrorCause[] active = [.. Enum.GetValues<ErrorCause>().Where(c => c is not (ErrorCause.None or ErrorCause.All) && IsPresent(c, plan, shop))];
        // A cause's share needs fewer rings than the tail of the gap.
        int fewer = Math.Min(rings, Math.Max(20, rings / 4));
        var work = new Work(rings + (active.Length * fewer), progress, cancellation);
        RingGaps[] all = work.Simulate(plan, shop, rings, seed, ErrorCause.All);
        double median = Median(all.AsSpan(0, fewer));
        double variance = Variance(all.AsSpan(0, fewer));
        ImmutableArray<CauseShare> shares =
        [
            .. active.Select(cause =>
            {
                RingGaps[] without = work.Simulate(plan, shop, fewer, seed, ErrorCause.All & ~cause);
                return new CauseShare(cause, variance == 0 ? 0 : Math.Max(0, 1 - (Variance(without) / variance)), median, Median(without));
            }).OrderByDescending(s => s.MedianGap - s.MedianGapWithout),
        ];
        return new(rings, seed, Sorted(all.Select(g => g.Band)), Sorted(all.Select(g => g.Gathered)), all.Average(g => g.Closing), Math.Sqrt(Variance(all)),
            ClosingBudget.Of(plan, shop), all.Count(g => !g.Settled), shares);
    }

    private static bool IsPresent(ErrorCause cause, RingPlan plan, Shop shop) => cause switch
    {
        ErrorCause.Setting => shop.Hands.SettingSd.Radians > 0,
        ErrorCause.CutToCut => shop.Hands.AngleSd.Radians > 0,
        ErrorCause.Bias => shop.Hands.AngleBias.Radians != 0,
        ErrorCause.Sanding => ClosingBudget.SandingTurn(plan.Glued, shop) > 0,
        ErrorCause.Stop => shop.Hands.StopSd.Millimetres > 0,
        ErrorCause.Kerf => shop.Saw.KerfSd.Millimetres > 0,
        _ => shop.Saw.Lean.Radians != 0,
    };

    private static ImmutableArray<double> Sorted(IEnumerable<double> gaps) => [.. gaps.Order()];

    private static double Median(ReadOnlySpan<RingGaps> rings)
    {
        double[] gaps = new double[rings.Length];
        for (int i = 0; i < gaps.Length; i++) gaps[i] = rings[i].Band;
        Array.Sort(gaps);
        return gaps[gaps.Length / 2];
    }

    private static double Variance(ReadOnlySpan<RingGaps> rings)
    {
        double sum = 0;
        foreach (RingGaps ring in rings) sum += ring.Closing;
        double mean = sum / rings.Length;
        double squares = 0;
        foreach (RingGaps ring in rings) squares += (ring.Closing - mean) * (ring.Closing - mean);
        return squares / (rings.Length - 1);
    }

    private readonly record struct RingGaps(double Band, double Gathered, double Closing, bool Settled);

    /// <summary>Simulates rings on all cores; a ring's result depends on its seed alone.</summary>
    private sealed class Work(int total, IProgress<double>? progress, CancellationToken cancellation)
    {
        private int _done;

        public RingGaps[] Simulate(RingPlan plan, Shop shop, int rings, ulong seed, ErrorCause causes)
        {
            var results = new RingGaps[rings];
            DryFitSolver Ring(int i, DryFitSolver solver)
            {
                results[i] = One(plan, shop, seed + (1_000_003UL * (ulong)i), causes, solver);
                int done = Interlocked.Increment(ref _done);
                if (done % 16 == 0 || done == total) progress?.Report((double)done / total);
                return solver;
            }

            try
            {
                Parallel.For(0, rings, new ParallelOptions { CancellationToken = cancellation }, () => new DryFitSolver(), (i, _, solver) => Ring(i, solver), _ => { });
            }
            catch (AggregateException e) when (e.InnerException is BadInputException bad)
            {
                ExceptionDispatchInfo.Throw(bad);
            }

            return results;
        }

        private static RingGaps One(RingPlan plan, Shop shop, ulong seed, ErrorCause causes, DryFitSolver solver)
        {
            DryFitSummary summary = solver.Solve(RingJobs.Pieces(plan, shop, seed, causes).AsSpan());
            double gathered = solver.Gathered().Gap.Worst;
            return new(summary.Settled ? summary.WorstGap : double.PositiveInfinity, gathered, summary.ClosingError, summary.Settled);
        }
    }
}

/// <summary>What one cause contributes.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Share">By how much the variance of the closing error falls without it, as share of the whole.</param>
/// <param name="MedianGap">Worst joint gap under a band in half of the rings, mm.</param>
/// <param name="MedianGapWithout">The same without this cause, mm.</param>
public sealed record CauseShare(ErrorCause Cause, double Share, double MedianGap, double MedianGapWithout);
