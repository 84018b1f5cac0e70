namespace Ringwright.Stock.Boards;

/// <summary>
/// Sticks of one length, their number given: pieces are moved and exchanged between them until none is too full. Simulated annealing
/// (Kirkpatrick and others 1983) of the length that is too much; good where many pieces of many lengths have a little room to spare.
/// </summary>
internal sealed class EvenSearch
{
    private const int Seed = 55;
    private const double Hot = 0.02, Cold = 1e-5; // parts of a stick

    private readonly long _length;
    private readonly long[] _pieces;
    private readonly int[] _stickOf;
    private readonly long[] _loads;
    private readonly Random _random = new(Seed);

    /// <param name="pieces">Length of each piece.</param>
    /// <param name="length">Length of a stick.</param>
    /// <param name="sticks">Their number.</param>
    public EvenSearch(long[] pieces, long length, int sticks)
    {
        (_length, _pieces) = (length, pieces);
        _stickOf = new int[pieces.Length];
        _loads = new long[sticks];
    }

    /// <summary>Which stick each piece is on, none too full; null when not found in <paramref name="moves"/> moves.</summary>
    public int[]? Find(int moves, CancellationToken cancel)
    {
        Spread();
        double heat = Hot * _length, cooling = Math.Pow(Cold / Hot, 1.0 / moves);
        long over = _loads.Sum(Over);
        for (int n = 0; n < moves && over > 0; n++, heat *= cooling)
        {
            if ((n & 0xFFFF) == 0) cancel.ThrowIfCancellationRequested();
            int one = _random.Next(_pieces.Length), other = _random.Next(_pieces.Length + _loads.Length);
            // A place beyond the pieces is an empty place on that stick.
            int from = _stickOf[one], to = other < _pieces.Length ? _stickOf[other] : other - _pieces.Length;
            long more = _pieces[one] - (other < _pieces.Length ? _pieces[other] : 0);
            if (from == to) continue;
            long change = Over(_loads[from] - more) + Over(_loads[to] + more) - Over(_loads[from]) - Over(_loads[to]);
            if (change > 0 && _random.NextDouble() >= Math.Exp(-change / heat)) continue;
            _loads[from] -= more;
            _loads[to] += more;
            _stickOf[one] = to;
            if (other < _pieces.Length) _stickOf[other] = from;
            over += change;
        }

        return over == 0 ? _stickOf : null;
    }

    private long Over(long load) => Math.Max(0, load - _length);

    // Longest first, each to the emptiest stick.
    private void Spread()
    {
        var emptiest = new PriorityQueue<int, (long, int)>(Enumerable.Range(0, _loads.Length).Select(b => (b, (0L, b))));
        Array.Clear(_loads);
        foreach (int piece in Enumerable.Range(0, _pieces.Length).OrderByDescending(p => _pieces[p]))
        {
            int stick = emptiest.Dequeue();
            _stickOf[piece] = stick;
            _loads[stick] += _pieces[piece];
            emptiest.Enqueue(stick, (_loads[stick], stick));
        }
    }
}
