namespace Ringwright.Stock.Boards;

/// <summary>
/// All patterns that a way of cutting for a cost sought could use. Worths that make no stick dearer than it costs give a bound; a
/// pattern whose cost is above its worth by more than what is left between that bound and the cost sought cannot be in it. Two kinds of
/// worths rule out more than one: what the relaxation says, and length, by which no stick may waste more than there is in all.
/// </summary>
internal sealed class NearPatterns(StripItem[] items, StripStock[] stocks, int[] wanted, PieceWorths dual, PieceWorths plain)
{
    private readonly double[] _worths = dual.Each;
    private readonly int[] _order = [.. Enumerable.Range(0, items.Length).OrderByDescending(i => dual.Each[i] / items[i].Length)];

    /// <summary>Those patterns as far as they are full, or null when there are more than <paramref name="most"/>.</summary>
    public List<Pattern>? All(long sought, int most, CancellationToken cancel)
    {
        double slack = sought - dual.Bound(wanted), plainSlack = sought - plain.Bound(wanted);
        List<Pattern> found = [];
        var taken = new int[items.Length];
        long nodes = 0;
        for (int s = 0; s < stocks.Length; s++)
            if (!Branch(s, 0, stocks[s].Length, 0)) return null;
        return found;

        bool Branch(int stock, int at, long left, double worth)
        {
            if ((++nodes & 0xFFF) == 0) cancel.ThrowIfCancellationRequested();
            if (nodes > 200L * most) return false;
            double need = stocks[stock].Cost - slack;
            if (at == _order.Length)
            {
                if (worth < need - 1e-9 || stocks[stock].Cost - plain.Of(taken) > plainSlack + 1e-9 || !IsFull(left)) return true;
                found.Add(new(stock, [.. taken]));
                return found.Count <= most;
            }

            int i = _order[at];
            if (worth + (left * (_worths[i] / items[i].Length)) < need - 1e-9) return true;
            long fits = left < items[i].Start ? 0 : (left - items[i].Start) / items[i].Length;
            for (int count = (int)Math.Min(fits, wanted[i]); count >= 0; count--)
            {
                taken[i] = count;
                long rest = count == 0 ? left : left - items[i].Start - (count * items[i].Length);
                if (!Branch(stock, at + 1, rest, worth + (count * _worths[i]))) return false;
            }

            taken[i] = 0;
            return true;
        }

        // A stick with room for one piece more is never needed: with the piece it serves as well.
        bool IsFull(long left)
        {
            for (int i = 0; i < items.Length; i++)
                if (taken[i] < wanted[i] && items[i].Length + (taken[i] == 0 ? items[i].Start : 0) <= left) return false;
            return true;
        }
    }
}
