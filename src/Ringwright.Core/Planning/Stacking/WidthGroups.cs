using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>One way to rip the boards of a stack: few widths and a little more wood, or many and none.</summary>
/// <param name="Widths">The widths to rip, mm, ascending.</param>
/// <param name="Extra">Wood ripped beyond what the rings need, mm³.</param>
/// <param name="GroupOf">Which width each ring takes, in the order of the rings.</param>
public sealed record WidthChoice(ImmutableArray<double> Widths, double Extra, ImmutableArray<int> GroupOf);

/// <summary>
/// Finds the least wood for every number of widths. Each ring takes the narrowest width that is at least its own, so an
/// optimal grouping cuts the sorted widths into runs: exact by dynamic programming over the runs.
/// </summary>
public static class WidthGroups
{
    /// <summary>The best choice for 1, 2, … widths, until nothing is wasted or <paramref name="most"/> widths are reached.</summary>
    /// <param name="needed">Width each ring needs, mm.</param>
    /// <param name="perWidth">Wood for each millimetre of width, mm²: strip length times board thickness.</param>
    /// <param name="most">Most widths to try.</param>
    public static ImmutableArray<WidthChoice> All(IReadOnlyList<double> needed, IReadOnlyList<double> perWidth, int most = 12)
    {
        ArgumentNullException.ThrowIfNull(needed);
        ArgumentNullException.ThrowIfNull(perWidth);
        if (needed.Count == 0) return [];
        int[] order = [.. Enumerable.Range(0, needed.Count).OrderBy(i => needed[i])];
        double[] widths = [.. order.Select(i => needed[i])];
        var runs = new Runs(widths, [.. order.Select(i => perWidth[i])]);
        int distinct = widths.Distinct().Count();
        var table = new RunTable(runs, Math.Min(most, distinct));
        return [.. Enumerable.Range(1, Math.Min(most, distinct)).Select(k => Choice(table.Ends(k), widths, order, table.Least(k)))];
    }

    private static WidthChoice Choice(int[] ends, double[] widths, int[] order, double extra)
    {
        var groups = new int[order.Length];
        for (int group = 0, i = 0; group < ends.Length; group++)
            for (; i < ends[group]; i++) groups[order[i]] = group;
        return new([.. ends.Select(e => widths[e - 1])], extra, [.. groups]);
    }

    // Waste of a run of sorted rings that all take the width of its last.
    private sealed class Runs
    {
        private readonly double[] _widths;
        private readonly double[] _sum;
        private readonly double[] _sumWidth;

        public Runs(double[] widths, double[] perWidth)
        {
            _widths = widths;
            (_sum, _sumWidth) = (new double[widths.Length + 1], new double[widths.Length + 1]);
            for (int i = 0; i < widths.Length; i++)
            {
                _sum[i + 1] = _sum[i] + perWidth[i];
                _sumWidth[i + 1] = _sumWidth[i] + (perWidth[i] * widths[i]);
            }
        }

        public int Count => _widths.Length;

        public double Waste(int from, int to) => Math.Max(0, (_widths[to - 1] * (_sum[to] - _sum[from])) - (_sumWidth[to] - _sumWidth[from]));
    }

    private sealed class RunTable
    {
        private readonly double[,] _least;
        private readonly int[,] _from;
        private readonly int _count;

        public RunTable(Runs runs, int most)
        {
            _count = runs.Count;
            (_least, _from) = (new double[most + 1, _count + 1], new int[most + 1, _count + 1]);
            for (int end = 1; end <= _count; end++) _least[0, end] = double.PositiveInfinity;
            for (int k = 1; k <= most; k++)
                for (int end = 1; end <= _count; end++) Fill(runs, k, end);
        }

        public double Least(int k) => _least[k, _count];

        public int[] Ends(int k)
        {
            var ends = new int[k];
            for (int end = _count; k > 0; k--)
            {
                ends[k - 1] = end;
                end = _from[k, end];
            }

            return [.. ends.Where(e => e > 0)];
        }

        private void Fill(Runs runs, int k, int end)
        {
            _least[k, end] = double.PositiveInfinity;
            for (int from = 0; from < end; from++)
            {
                double waste = _least[k - 1, from] + runs.Waste(from, end);
                if (waste >= _least[k, end]) continue;
                (_least[k, end], _from[k, end]) = (waste, from);
            }
        }
    }
}
