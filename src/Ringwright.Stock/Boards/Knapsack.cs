namespace Ringwright.Stock.Boards;

/// <summary>
/// The most worth that fits on one stick: a bounded knapsack with whole numbers, exact. First by branching, which is fast where few
/// pieces fit or their worths differ; a search that grows too long is done by dynamic programming over the length instead.
/// </summary>
internal sealed class Knapsack
{
    private const long QuickNodes = 4_000;

    // A node takes about as long as two cells of the table.
    private const long FewestNodes = 2_000;
    private const long MostNodes = 200_000;

    // Beyond this many cells of the table, branching goes on to its end: it needs no memory.
    private const long MostCells = 60_000_000;

    private readonly StripItem[] _items;
    private readonly int[] _order;
    private readonly long[] _values;
    private readonly int[] _limits;
    private readonly int[] _taken;
    private readonly double[] _ratios;
    private int[] _best = [];
    private long _bestValue;
    private long _nodes;
    private long _nodeLimit;

    public Knapsack(StripItem[] items)
    {
        _items = items;
        _order = new int[items.Length];
        _values = new long[items.Length];
        _limits = new int[items.Length];
        _taken = new int[items.Length];
        _ratios = new double[items.Length];
    }

    /// <summary>How many of each kind to take, at most <paramref name="limits"/>, within <paramref name="capacity"/>, and their worth.</summary>
    public (long Value, int[] Counts) Solve(long capacity, ReadOnlySpan<long> values, ReadOnlySpan<int> limits)
    {
        ReadOnlySpan<int> order = Begin(capacity, values, limits);
        long cells = (capacity + 1) * order.Length;
        _nodeLimit = cells > MostCells ? long.MaxValue : Math.Clamp(cells / 2, FewestNodes, MostNodes);
        return Branch(order, 0, capacity, 0) ? (_bestValue, _best) : Table(order, (int)capacity);
    }

    /// <summary>The same within a short time: good, and perhaps not the most; says whether it is.</summary>
    public (long Value, int[] Counts, bool IsMost) Quick(long capacity, ReadOnlySpan<long> values, ReadOnlySpan<int> limits)
    {
        ReadOnlySpan<int> order = Begin(capacity, values, limits);
        _nodeLimit = QuickNodes;
        bool most = Branch(order, 0, capacity, 0);
        return (_bestValue, _best, most);
    }

    // The kinds that can be taken, the dearest for their length first.
    private ReadOnlySpan<int> Begin(long capacity, ReadOnlySpan<long> values, ReadOnlySpan<int> limits)
    {
        int kinds = 0;
        for (int i = 0; i < _items.Length; i++)
        {
            _values[i] = values[i];
            _limits[i] = limits[i];
            if (values[i] > 0 && limits[i] > 0 && _items[i].Start + _items[i].Length <= capacity) _order[kinds++] = i;
        }

        for (int k = 0; k < kinds; k++) _ratios[k] = -(double)_values[_order[k]] / _items[_order[k]].Length;
        Array.Sort(_ratios, _order, 0, kinds);
        _nodes = 0;
        _bestValue = 0;
        _best = new int[_items.Length];
        Array.Clear(_taken);
        return _order.AsSpan(0, kinds);
    }

    // False when the limit was met.
    private bool Branch(ReadOnlySpan<int> order, int at, long left, long value)
    {
        if (++_nodes > _nodeLimit) return false;
        if (value > _bestValue)
        {
            _bestValue = value;
            _taken.CopyTo(_best, 0);
        }

        if (at == order.Length) return true;
        int i = order[at];
        StripItem item = _items[i];
        // What is left, filled with the dearest kind there is, cannot beat the best: neither can what follows.
        if ((Int128)left * _values[i] <= (Int128)(_bestValue - value) * item.Length) return true;
        long fits = left < item.Start ? 0 : (left - item.Start) / item.Length;
        for (int count = (int)Math.Min(fits, _limits[i]); count >= 0; count--)
        {
            _taken[i] = count;
            long rest = count == 0 ? left : left - item.Start - (count * item.Length), worth = value + (count * _values[i]);
            if (at + 1 < order.Length && worth <= _bestValue)
            {
                int next = order[at + 1];
                if ((Int128)rest * _values[next] <= (Int128)(_bestValue - worth) * _items[next].Length)
                {
                    // Fewer of this kind leave more room for cheaper kinds only, unless its first cut costs something.
                    if (item.Start == 0) break;
                    continue;
                }
            }

            if (!Branch(order, at + 1, rest, worth)) return false;
        }

        _taken[i] = 0;
        return true;
    }

    private (long Value, int[] Counts) Table(ReadOnlySpan<int> order, int capacity)
    {
        var best = new long[capacity + 1];
        var next = new long[capacity + 1];
        var counts = new ushort[order.Length][];
        for (int k = 0; k < order.Length; k++)
        {
            counts[k] = new ushort[capacity + 1];
            AddKind(order[k], capacity, best, next, counts[k]);
            (best, next) = (next, best);
        }

        var taken = new int[_items.Length];
        int left = capacity;
        for (int k = order.Length - 1; k >= 0; k--)
        {
            int count = counts[k][left];
            taken[order[k]] = count;
            if (count > 0) left -= (int)(_items[order[k]].Start + (count * _items[order[k]].Length));
        }

        return (best[capacity], taken);
    }

    private static void AddOne(int takes, long value, long[] before, long[] after, ushort[] counts)
    {
        for (int x = takes; x < after.Length; x++)
        {
            long with = before[x - takes] + value;
            if (with <= after[x]) continue;
            after[x] = with;
            counts[x] = 1;
        }
    }

    // For each remainder of the length, a window as wide as the limit slides along; its best is at the front of a queue.
    private void AddKind(int i, int capacity, long[] before, long[] after, ushort[] counts)
    {
        int length = (int)_items[i].Length, start = (int)_items[i].Start, limit = Math.Min(_limits[i], ushort.MaxValue);
        long value = _values[i];
        before.CopyTo(after, 0);
        if (limit == 1)
        {
            AddOne(length + start, value, before, after, counts);
            return;
        }

        var queue = new (int Step, long Value)[(capacity / length) + 2];
        for (int remainder = 0; remainder < Math.Min(length, capacity + 1); remainder++)
        {
            int front = 0, back = 0;
            for (int step = 1, x = remainder + length; x <= capacity; step++, x += length)
            {
                int from = x - length - start;
                if (from >= 0)
                {
                    long entry = before[from] - ((step - 1) * value);
                    while (back > front && queue[back - 1].Value <= entry) back--;
                    queue[back++] = (step - 1, entry);
                }

                while (front < back && queue[front].Step < step - limit) front++;
                if (front == back) continue;
                long with = queue[front].Value + (step * value);
                if (with <= after[x]) continue;
                after[x] = with;
                counts[x] = (ushort)(step - queue[front].Step);
            }
        }
    }
}
