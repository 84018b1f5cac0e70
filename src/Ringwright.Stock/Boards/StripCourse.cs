using System.Diagnostics;

namespace Ringwright.Stock.Boards;

/// <summary>One run of the optimiser: the best found so far and the bound, and the stages that bring them together.</summary>
internal sealed class StripCourse : IDisposable
{
    private const int Dives = 12;
    private const int FirstDives = 2;
    private static readonly double[] Ups = [1e-6, 0.2, 0.4, 0.5];
    private static readonly double[] Leans = [0, 0.03, 0.1, 0.3, 1];
    private const int Finishes = 4;
    private const int Roundings = 25;
    private const int MostNear = 40_000;
    private const int FewNear = 3_000;
    private const double FewWork = 0.5;
    private const int MostToSpread = 2_000; // pieces
    private const int ShortSpread = 500; // moves for each piece
    private const int LongSpread = 5_000;
    private const int MostForEarly = 400; // patterns; more make the first programme slow

    private readonly StripItem[] _items;
    private readonly StripStock[] _stocks;
    private readonly int[] _wanted;
    private readonly long _step;
    private readonly PatternPool _pool = new();
    private readonly ColumnGeneration _columns;
    private readonly PieceWorths _byLength;
    private readonly long _started = Stopwatch.GetTimestamp();
    private readonly double _seconds;
    private readonly IProgress<StripProgress>? _progress;
    private readonly CancellationToken _cancel;

    public StripCourse(StripProblem problem, double seconds, IProgress<StripProgress>? progress, CancellationToken cancel)
    {
        _items = [.. problem.Items];
        _stocks = [.. problem.Stocks];
        _wanted = [.. problem.Items.Select(i => i.Count)];
        _step = _stocks.Aggregate(0L, (step, s) => StripOptimiser.Divisor(step, s.Cost));
        _byLength = PieceWorths.ByLength(problem);
        _columns = new(_items, _stocks, _pool, () => Left <= 0);
        _seconds = seconds;
        _progress = progress;
        _cancel = cancel;
    }

    /// <summary>The sticks of the cheapest way found.</summary>
    public List<Pattern> Best { get; private set; } = [];

    public long Cost { get; private set; } = long.MaxValue;

    public long Bound { get; private set; }

    private bool IsDone => Cost <= Bound || Left <= 0;

    private double Left => _seconds - Stopwatch.GetElapsedTime(_started).TotalSeconds;

    public void Run()
    {
        Start();
        if (IsDone) return;
        Even(ShortSpread);
        if (IsDone) return;
        ColumnGeneration.Outcome relaxed = _columns.Run(_wanted, (bound, cost) => RoundUp(bound) >= Cost || RoundUp(bound) >= RoundUp(cost * (1 - 1e-9)) || Left <= 0, _cancel);
        Raise(RoundUp(relaxed.Bound));
        if (IsDone) return;
        RoundDown(relaxed);
        if (IsDone) return;
        if (_pool.All.Count <= MostForEarly) Programme(0.05);
        for (int dive = 0; dive < FirstDives && !IsDone; dive++) Dive(relaxed, dive);
        while (!IsDone && Decide(relaxed, FewNear, FewWork))
        {
        }

        if (IsDone) return;
        Even(LongSpread);
        if (IsDone) return;
        Programme(1);
        for (int dive = FirstDives; dive < Dives && !IsDone; dive++) Dive(relaxed, dive);
        if (IsDone) return;
        relaxed = _columns.Run(_wanted, (_, _) => Left <= 0, _cancel);
        Raise(RoundUp(relaxed.Bound));
        while (!IsDone && Decide(relaxed, MostNear, _seconds))
        {
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _columns.Dispose();

    private void Start()
    {
        for (int s = 0; s < _stocks.Length; s++)
            if (FirstFit.Cut(_items, _wanted, _stocks, s) is { } sticks) Take(sticks);
        // Every kind has a stick, so that the first relaxation can be covered.
        for (int i = 0; i < _items.Length; i++)
        {
            int s = Enumerable.Range(0, _stocks.Length).First(s => _stocks[s].Length >= _items[i].Start + _items[i].Length);
            var counts = new int[_items.Length];
            counts[i] = (int)Math.Min(_wanted[i], (_stocks[s].Length - _items[i].Start) / _items[i].Length);
            _pool.Add(new(s, counts));
        }

        Raise(RoundUp(_byLength.Bound(_wanted)));
        // As full as can be, stick after stick; these sticks are good ones for the relaxation to begin with.
        foreach (double lean in Leans)
            if (!IsDone) Take(Filled([], [.. _wanted], [.. _items.Select(i => (long)(i.Length * 1000.0 * (1 + (lean * i.Length / _stocks.Max(s => s.Length)))))]));
        if (Cost == long.MaxValue) Take(Filled([], [.. _wanted], [.. _items.Select(i => i.Length)]));
    }

    // Whole sticks of the relaxation first, now and then a few less; the rest by what pieces are worth, which learns from each go.
    private void RoundDown(ColumnGeneration.Outcome relaxed)
    {
        var random = new Random(_wanted.Length);
        // The more long pieces are worth above their share, the earlier they go.
        WorthCorrection[] corrections = [.. Leans.Select(lean => new WorthCorrection(_items, _stocks, _columns, [.. relaxed.Worths.Select((w, i) => (long)(w * (1 + (lean * _items[i].Length / _stocks.Max(s => s.Length)))))]))];
        int[] order = [.. Enumerable.Range(0, relaxed.Sticks.Length).Where(j => relaxed.Sticks[j] > 1e-6).OrderByDescending(j => relaxed.Sticks[j])];
        for (int go = 0; go < Roundings && !IsDone; go++)
        {
            List<Pattern> sticks = [];
            int[] left = [.. _wanted];
            int lacking = go < Ups.Length ? 0 : go % 4 * 2;
            foreach (int j in order)
            {
                int less = lacking > 0 && random.Next(order.Length) <= lacking ? 1 : 0;
                for (int n = (int)Math.Floor(relaxed.Sticks[j] + (go < Ups.Length ? Ups[go] : 1e-6)) - less; n > 0 && IsUseful(_pool.All[j], left); n--) Cut(_pool.All[j], sticks, left);
            }

            if (corrections[go % corrections.Length].Fill(sticks, left, cost => cost >= Cost)) Take(sticks);
            _cancel.ThrowIfCancellationRequested();
        }
    }

    // Sticks that are all alike: as many as the bound says, the pieces spread evenly.
    private void Even(int moves)
    {
        if (_stocks.Length > 1 || _items.Any(i => i.Start > 0) || _wanted.Sum(n => (long)n) > MostToSpread) return;
        int[] kinds = [.. Enumerable.Range(0, _items.Length).SelectMany(i => Enumerable.Repeat(i, _wanted[i]))];
        int sticks = (int)(Bound / _stocks[0].Cost);
        if (new EvenSearch([.. kinds.Select(i => _items[i].Length)], _stocks[0].Length, sticks).Find(moves * kinds.Length, _cancel) is not { } places) return;
        int[][] counts = [.. Enumerable.Range(0, sticks).Select(_ => new int[_items.Length])];
        for (int piece = 0; piece < kinds.Length; piece++) counts[places[piece]][kinds[piece]]++;
        Take([.. counts.Select(c => new Pattern(0, c))]);
    }

    // The largest fraction is cut, the rest is relaxed anew with patterns made for it. Each dive after the first leans another way.
    private void Dive(ColumnGeneration.Outcome relaxed, int number)
    {
        List<Pattern> sticks = [];
        int[] left = [.. _wanted];
        while (left.Any(n => n > 0) && Left > 0)
        {
            int[] order = [.. Enumerable.Range(0, relaxed.Sticks.Length).Where(j => relaxed.Sticks[j] > 1e-6 && IsUseful(_pool.All[j], left)).OrderByDescending(j => Math.Min(1, relaxed.Sticks[j]) * Lean(number, j)).ThenBy(j => j)];
            if (order.Length == 0) break;
            int cut = 0;
            foreach (int j in order)
            {
                int times = Math.Max((int)Math.Floor(relaxed.Sticks[j] + 1e-6), cut == 0 ? 1 : 0);
                for (; times > 0 && IsUseful(_pool.All[j], left); times--, cut++) Cut(_pool.All[j], sticks, left);
            }

            if (left.All(n => n == 0)) break;
            Finish(relaxed.Worths, sticks, left);
            if (IsDone) return;
            relaxed = _columns.Run(left, (_, _) => Left <= 0, _cancel);
        }

        Finish(relaxed.Worths, sticks, left);
    }

    private void Finish(long[] worths, List<Pattern> sticks, int[] left)
    {
        var correction = new WorthCorrection(_items, _stocks, _columns, worths);
        for (int go = 0; go < Finishes && !IsDone; go++)
        {
            List<Pattern> all = [.. sticks];
            if (correction.Fill(all, [.. left], cost => cost >= Cost)) Take(all);
        }
    }

    // From 0.5 to 1.5, scattered, and the same every time.
    private static double Lean(int dive, int pattern) => dive == 0 ? 1 : 0.5 + ((uint)((pattern + 1) * 2_654_435_761L * (dive + 1)) / (double)uint.MaxValue);

    // Over all patterns that anything cheaper could use; proves, finds, or gives up. True when it is worth another go.
    private bool Decide(ColumnGeneration.Outcome relaxed, int most, double work)
    {
        double scale = (double)relaxed.Dearest.Cost / relaxed.Dearest.Worth;
        var dual = new PieceWorths([.. relaxed.Worths.Select(w => w * scale)]);
        if (new NearPatterns(_items, _stocks, _wanted, dual, _byLength).All(Bound, most, _cancel) is not { } near) return false;
        IntegerMaster.Outcome outcome = IntegerMaster.Solve(near, _wanted, _stocks, (Bound, Bound), null, new(Math.Min(work, _seconds), Left), _cancel);
        if (outcome.Times is int[] times) Take(Chosen(near, times));
        else if (outcome.Exhausted) Raise(Bound + _step);
        else return false;
        return true;
    }

    private void Programme(double work)
    {
        int[] hint = [.. _pool.All.Select(p => Best.Count(b => b.Equals(p)))];
        IntegerMaster.Outcome outcome = IntegerMaster.Solve(_pool.All, _wanted, _stocks, (Bound, Cost - _step), hint, new(Math.Min(work, _seconds), Left), _cancel);
        if (outcome.Times is int[] times) Take(Chosen(_pool.All, times));
    }

    private static List<Pattern> Chosen(IReadOnlyList<Pattern> patterns, int[] times) =>
        [.. patterns.Zip(times).SelectMany(p => Enumerable.Repeat(p.First, p.Second))];

    private List<Pattern> Filled(List<Pattern> sticks, int[] left, long[] worths)
    {
        // A kind that is worth nothing must be cut all the same.
        long[] positive = [.. worths.Select(w => Math.Max(1, w))];
        while (left.Any(n => n > 0))
        {
            _cancel.ThrowIfCancellationRequested();
            Pattern stick = _columns.Dearest(positive, left);
            do Cut(stick, sticks, left);
            while (Enumerable.Range(0, left.Length).All(i => stick.Counts[i] <= left[i]));
        }

        return sticks;
    }

    private static bool IsUseful(Pattern pattern, int[] left)
    {
        for (int i = 0; i < left.Length; i++)
            if (pattern.Counts[i] > 0 && left[i] > 0) return true;
        return false;
    }

    private static void Cut(Pattern pattern, List<Pattern> sticks, int[] left)
    {
        sticks.Add(pattern);
        for (int i = 0; i < left.Length; i++) left[i] = Math.Max(0, left[i] - pattern.Counts[i]);
    }

    private void Take(List<Pattern> sticks)
    {
        foreach (Pattern stick in sticks) _pool.Add(stick);
        long cost = sticks.Sum(s => _stocks[s.Stock].Cost);
        if (cost >= Cost) return;
        (Best, Cost) = (sticks, cost);
        _progress?.Report(new(Cost, Bound));
    }

    private void Raise(long bound)
    {
        Bound = Math.Min(Cost, Math.Max(Bound, bound));
        _progress?.Report(new(Cost, Bound));
    }

    // Costs are whole multiples of a step; the hair allows for the division of whole numbers far larger.
    private long RoundUp(double bound) => (long)Math.Ceiling((bound / _step) - 1e-9) * _step;
}
