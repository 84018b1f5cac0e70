using Ringwright.Stock.Boards;

namespace Ringwright.Stock.Tests.Boards;

/// <summary>The least cost found by trying every way to fill every stick: slow, plain, and for small problems only.</summary>
internal static class EveryWay
{
    public static long Least(StripProblem problem) => Least(problem, [.. problem.Items.Select(i => i.Count)], []);

    private static long Least(StripProblem problem, int[] left, Dictionary<string, long> known)
    {
        if (left.All(n => n == 0)) return 0;
        string key = string.Join(',', left);
        if (known.TryGetValue(key, out long before)) return before;
        long best = long.MaxValue / 2;
        foreach (StripStock stock in problem.Stocks)
            foreach (int[] counts in Fillings(problem, left, 0, stock.Length).Where(c => c.Any(n => n > 0)))
                best = Math.Min(best, stock.Cost + Least(problem, [.. left.Zip(counts, (l, c) => l - c)], known));
        return known[key] = best;
    }

    private static IEnumerable<int[]> Fillings(StripProblem problem, int[] left, int item, long room)
    {
        if (item == left.Length) return [new int[left.Length]];
        return Enumerable.Range(0, left[item] + 1)
            .Select(n => (Count: n, Takes: n == 0 ? 0 : problem.Items[item].Start + (n * problem.Items[item].Length)))
            .Where(n => n.Takes <= room)
            .SelectMany(n => Fillings(problem, left, item + 1, room - n.Takes).Select(rest =>
            {
                int[] with = [.. rest];
                with[item] = n.Count;
                return with;
            }));
    }
}
