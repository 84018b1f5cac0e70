namespace Ringwright.Stock.Boards;

/// <summary>First fit, longest pieces first, on sticks of one length: what is done without thinking, and where the search starts.</summary>
internal static class FirstFit
{
    private sealed class Stick(long length, int kinds)
    {
        public long Left { get; set; } = length;

        public int[] Counts { get; } = new int[kinds];
    }

    /// <summary>The sticks for <paramref name="counts"/> pieces; null when a piece does not fit.</summary>
    public static List<Pattern>? Cut(StripItem[] items, int[] counts, StripStock[] stocks, int stock)
    {
        List<Stick> sticks = [];
        foreach (int i in Enumerable.Range(0, items.Length).OrderByDescending(i => items[i].Length))
        {
            int from = 0;
            for (int n = 0; n < counts[i]; n++)
            {
                long Takes(Stick stick) => items[i].Length + (stick.Counts[i] == 0 ? items[i].Start : 0);
                while (from < sticks.Count && sticks[from].Left < Takes(sticks[from])) from++;
                if (from == sticks.Count) sticks.Add(new(stocks[stock].Length, items.Length));
                Stick at = sticks[from];
                if (at.Left < Takes(at)) return null;
                at.Left -= Takes(at);
                at.Counts[i]++;
            }
        }

        return [.. sticks.Select(s => new Pattern(stock, s.Counts))];
    }
}
