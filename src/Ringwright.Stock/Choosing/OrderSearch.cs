namespace Ringwright.Stock.Choosing;

/// <summary>How a search for an order ended.</summary>
internal enum OrderFound
{
    Yes,
    /// <summary>Every order was ruled out.</summary>
    No,
    /// <summary>The limit of steps was reached first.</summary>
    Unknown,
}

/// <summary>
/// An order of given wedges whose joint lines stay within a range. Some joint line is the lowest; started from there, all others are
/// 0 to the range above it. Which joint line comes next depends only on which wedges are placed, so a state that failed once fails always.
/// </summary>
internal sealed class OrderSearch
{
    private readonly ChoosingProblem _problem;
    private readonly long[] _deviation;
    private readonly int[,] _left;
    private readonly UInt128[,] _weight;
    private readonly int[] _byHardness;
    private readonly int[] _classAt;
    private readonly HashSet<UInt128> _failed = [];
    private long _range;
    private int _start;
    private int _stepsLeft;

    public OrderSearch(ChoosingProblem problem, ClassCounts counts)
    {
        _problem = problem;
        long sum = counts.Sum;
        _deviation = [.. problem.Classes.Select(c => problem.Places * c.Excess - sum)];
        // Far from the mean is hard to place, so it comes first while there is room.
        _byHardness = [.. Enumerable.Range(0, problem.Classes.Length).OrderByDescending(c => Math.Abs(_deviation[c]))];
        _left = new int[problem.Parts, problem.Classes.Length];
        _weight = new UInt128[problem.Parts, problem.Classes.Length];
        _classAt = new int[problem.Places];
        UInt128 weight = 1;
        for (int part = 0; part < problem.Parts; part++)
            for (int c = 0; c < problem.Classes.Length; c++)
            {
                _left[part, c] = counts[part, c];
                _weight[part, c] = weight;
                weight *= (UInt128)(counts[part, c] + 1);
            }
    }

    /// <summary>The class at each place, after a search that found an order.</summary>
    public int[] ClassAt => [.. _classAt];

    /// <summary>Steps taken so far, a measure of effort.</summary>
    public long Steps { get; private set; }

    /// <summary>Looks for an order with joint lines within <paramref name="wander"/> grains.</summary>
    public OrderFound Find(long wander, int mostSteps, CancellationToken cancel)
    {
        _range = wander * _problem.Grain * _problem.Places;
        bool sure = true;
        int stepsEach = Math.Max(1, mostSteps / _problem.DistinctStarts);
        for (_start = 0; _start < _problem.DistinctStarts; _start++)
        {
            cancel.ThrowIfCancellationRequested();
            _failed.Clear();
            _stepsLeft = stepsEach;
            bool found = Place(0, 0, 0);
            Steps += stepsEach - _stepsLeft;
            if (found) return OrderFound.Yes;
            sure &= _stepsLeft > 0;
        }

        return sure ? OrderFound.No : OrderFound.Unknown;
    }

    private bool Place(int placed, long line, UInt128 state)
    {
        if (placed == _problem.Places) return true;
        if (_stepsLeft <= 0 || _failed.Contains(state)) return false;
        _stepsLeft--;
        int place = (_start + placed) % _problem.Places;
        int part = _problem.PartOf(place);
        foreach (int c in _byHardness)
        {
            long next = line + _deviation[c];
            if (_left[part, c] == 0 || _problem.Classes[c].Wood != _problem.PlaceWoods[place] || next < 0 || next > _range) continue;
            _left[part, c]--;
            _classAt[place] = c;
            bool found = Place(placed + 1, next, state + _weight[part, c]);
            _left[part, c]++;
            if (found) return true;
        }

        if (_stepsLeft > 0) _failed.Add(state);
        return false;
    }
}
