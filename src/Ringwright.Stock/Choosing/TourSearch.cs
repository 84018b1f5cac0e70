namespace Ringwright.Stock.Choosing;

/// <summary>
/// All orders of given wedges whose joint lines stay within a range, for the least sum of size steps. Like <see cref="OrderSearch"/> it
/// starts from the lowest joint line; two beginnings with the same wedges and the same last one go on alike, so only the shorter does.
/// </summary>
internal sealed class TourSearch(ChoosingProblem problem, int[] best, RingLevels levels, int mostSteps, CancellationToken cancel)
{
    /// <summary>The most wedges it can tell apart.</summary>
    public const int MostWedges = 64;

    private readonly long _range = levels.Wander * problem.Grain * problem.Places;
    private readonly int[] _order = new int[problem.Places];
    private readonly Dictionary<(UInt128 Used, int Last), long> _shortest = [];
    private readonly int[,] _left = new int[problem.Parts, problem.Classes.Length];
    private long[] _deviation = [];
    private int _start;
    private int _stepsLeft = mostSteps;

    /// <summary>The best ring so far.</summary>
    public int[] Best { get; private set; } = best;

    /// <summary>Its sum of steps, micrometres.</summary>
    public long Steps { get; private set; } = levels.Steps;

    /// <summary>Whether no order was left out for want of time.</summary>
    public bool Exhausted => _stepsLeft > 0;

    /// <summary>Searches the orders of one set.</summary>
    public void Through(ClassCounts counts)
    {
        long sum = counts.Sum;
        _deviation = [.. problem.Classes.Select(c => problem.Places * c.Excess - sum)];
        for (int part = 0; part < problem.Parts; part++)
            for (int c = 0; c < problem.Classes.Length; c++) _left[part, c] = counts[part, c];
        for (_start = 0; _start < problem.DistinctStarts; _start++)
            foreach (int first in Enumerable.Range(0, problem.Wedges.Length))
            {
                cancel.ThrowIfCancellationRequested();
                _shortest.Clear();
                Try(first, 0, 0, 0, 0);
            }
    }

    private void Try(int wedge, int placed, UInt128 used, long line, long steps)
    {
        int place = (_start + placed) % problem.Places;
        int part = problem.PartOf(place), c = problem.ClassOf[wedge];
        line += _deviation[c];
        bool fits = _left[part, c] > 0 && problem.Classes[c].Wood == problem.PlaceWoods[place] && line >= 0 && line <= _range;
        if (!fits || _stepsLeft-- <= 0) return;
        _left[part, c]--;
        _order[placed] = wedge;
        // The half a wedge went to is part of the state: it decides what is left for the halves.
        GoOn(placed + 1, used | (UInt128.One << (part * MostWedges + wedge)), line, steps);
        _left[part, c]++;
    }

    private void GoOn(int placed, UInt128 used, long line, long steps)
    {
        int last = _order[placed - 1];
        // The way home is never shorter than straight home.
        if (steps + StepBetween(last, _order[0]) >= Steps) return;
        if (placed == problem.Places)
        {
            Steps = steps + StepBetween(last, _order[0]);
            Best = [.. Enumerable.Range(0, placed).Select(k => _order[(k - _start + placed) % placed])];
            return;
        }

        if (_shortest.TryGetValue((used, last), out long known) && known <= steps) return;
        _shortest[(used, last)] = steps;
        for (int wedge = 0; wedge < problem.Wedges.Length; wedge++)
            if (((used >> wedge | used >> (MostWedges + wedge)) & 1) == 0) Try(wedge, placed, used, line, steps + StepBetween(last, wedge));
    }

    private long StepBetween(int one, int other) => problem.Wedges[one].StepTo(problem.Wedges[other]);
}
