namespace Ringwright.Stock.Boards;

/// <summary>
/// Column generation (Gilmore and Gomory 1961, 1963): the linear master tells what a piece is worth, a knapsack finds the stick whose
/// pieces are worth most against its cost, until none is worth more than it costs. Bounds are exact: worths are rounded to whole
/// numbers and scaled so that no stick is worth more than it costs (Farley 1990), whatever the linear solver's rounding.
/// </summary>
internal sealed class ColumnGeneration(StripItem[] items, StripStock[] stocks, PatternPool pool, Func<bool> late) : IDisposable
{
    /// <summary>Parts of a unit of cost in which worths are counted.</summary>
    public const long Scale = 1_000_000;

    private const int MostAtOnce = 12;

    private readonly Knapsack _knapsack = new(items);
    private readonly LinearMaster _master = new(items.Length);

    /// <summary>The outcome for the counts wanted.</summary>
    /// <param name="Bound">Proved: no cost is lower; a fraction of unrounded cost.</param>
    /// <param name="Sticks">How many of each pattern the relaxation cuts, in the pool's order.</param>
    /// <param name="Worths">Worth of a piece of each kind, in parts of <see cref="Scale"/>, at the best bound.</param>
    /// <param name="Dearest">For these, most worth found on a stick against its cost, as a fraction.</param>
    public sealed record Outcome(double Bound, double[] Sticks, long[] Worths, (long Worth, long Cost) Dearest);

    /// <summary>Generates patterns until nothing more is gained for <paramref name="wanted"/>, or <paramref name="enough"/> holds of the bound and the master's cost.</summary>
    public Outcome Run(int[] wanted, Func<double, double, bool> enough, CancellationToken cancel)
    {
        _master.Want(wanted);
        double best = 0;
        long[] worths = new long[items.Length];
        (long, long) dearest = (1, 1);
        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            while (_master.Count < pool.All.Count) _master.Add(pool.All[_master.Count], stocks[pool.All[_master.Count].Stock].Cost);
            if (_master.Solve() is not double[] duals) break;
            long[] whole = [.. duals.Select(d => (long)Math.Round(d * Scale))];
            (bool gained, (long Worth, long Cost)? top) = Price(whole, wanted);
            if (top is { } most && Bound(whole, wanted, most) is double bound && bound > best) (best, worths, dearest) = (bound, whole, most);
            if (!gained || enough(best, _master.Cost)) break;
        }

        return new(best, [.. Enumerable.Range(0, _master.Count).Select(_master.Sticks)], worths, dearest);
    }

    /// <inheritdoc/>
    public void Dispose() => _master.Dispose();

    /// <summary>The pattern worth most against its cost, of at most <paramref name="limits"/> of each kind.</summary>
    public Pattern Dearest(long[] worths, int[] limits)
    {
        Pattern? best = null;
        (long Worth, long Cost) top = (0, 1);
        for (int s = 0; s < stocks.Length; s++)
        {
            (long worth, int[] counts) = _knapsack.Solve(stocks[s].Length, worths, limits);
            if (best is not null && !Dearer((worth, stocks[s].Cost), top)) continue;
            (best, top) = (new Pattern(s, counts), (worth, stocks[s].Cost));
        }

        return best!;
    }

    /// <summary>The least that anything costs when a piece is worth <paramref name="worths"/> and no stick is dearer than <paramref name="top"/>.</summary>
    private static double Bound(long[] worths, int[] wanted, (long Worth, long Cost) top)
    {
        Int128 sum = 0;
        for (int i = 0; i < worths.Length; i++) sum += (Int128)worths[i] * wanted[i];
        if (top.Worth <= 0) return 0;
        Int128 scaled = sum * top.Cost;
        (Int128 whole, Int128 rest) = Int128.DivRem(scaled, top.Worth);
        return (double)whole + ((double)rest / top.Worth);
    }

    // Quickly first; only when that gains nothing must the dearest stick be known for sure.
    private (bool Gained, (long Worth, long Cost)? Top) Price(long[] worths, int[] wanted)
    {
        bool gained = false, sure = true;
        (long Worth, long Cost) top = (0, 1);
        for (int s = 0; s < stocks.Length; s++)
        {
            (long worth, int[] counts, bool most) = _knapsack.Quick(stocks[s].Length, worths, wanted);
            sure &= most;
            if (Dearer((worth, stocks[s].Cost), top)) top = (worth, stocks[s].Cost);
            gained |= Gain(s, worth, counts) && Others(s, counts, worths, wanted);
        }

        if (sure || gained) return (gained, sure ? top : null);
        for (int s = 0; s < stocks.Length; s++)
        {
            (long worth, int[] counts) = _knapsack.Solve(stocks[s].Length, worths, wanted);
            if (Dearer((worth, stocks[s].Cost), top)) top = (worth, stocks[s].Cost);
            gained |= Gain(s, worth, counts);
        }

        return (gained, top);
    }

    private bool Gain(int stock, long worth, int[] counts) => worth > stocks[stock].Cost * Scale && pool.Add(new(stock, counts));

    // The dearest stick of what that one left, and so on: many patterns for one run of the linear solver.
    private bool Others(int stock, int[] first, long[] worths, int[] wanted)
    {
        int[] left = [.. wanted], counts = first;
        for (int more = 1; more < MostAtOnce && !late(); more++)
        {
            for (int i = 0; i < left.Length; i++) left[i] = counts[i] > 0 ? 0 : left[i];
            (long worth, counts, _) = _knapsack.Quick(stocks[stock].Length, worths, left);
            if (worth <= stocks[stock].Cost * Scale) break;
            pool.Add(new(stock, counts));
        }

        return true;
    }

    private static bool Dearer((long Worth, long Cost) a, (long Worth, long Cost) b) => (Int128)a.Worth * b.Cost > (Int128)b.Worth * a.Cost;
}
