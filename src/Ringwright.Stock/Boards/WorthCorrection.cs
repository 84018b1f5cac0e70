namespace Ringwright.Stock.Boards;

/// <summary>
/// Sequential value correction (Mukhacheva, Belov and others 2000): sticks are filled one after another by what pieces are worth, and
/// pieces that were left on sticks with much waste are worth more the next time. Fast, and strong on the few sticks that rounding leaves.
/// </summary>
internal sealed class WorthCorrection
{
    private const int Seed = 20_000;

    private readonly StripItem[] _items;
    private readonly StripStock[] _stocks;
    private readonly ColumnGeneration _columns;
    private readonly long[] _start;
    private readonly double[] _worths;
    private readonly Random _random = new(Seed);

    /// <param name="items">The pieces.</param>
    /// <param name="stocks">The sticks.</param>
    /// <param name="columns">Finds the stick worth most.</param>
    /// <param name="worths">What a piece of each kind is worth at first.</param>
    public WorthCorrection(StripItem[] items, StripStock[] stocks, ColumnGeneration columns, long[] worths)
    {
        (_items, _stocks, _columns) = (items, stocks, columns);
        // A kind that is worth nothing must be cut all the same.
        _start = [.. worths.Select(w => Math.Max(1, w))];
        _worths = [.. _start.Select(w => (double)w)];
    }

    /// <summary>Adds sticks to <paramref name="sticks"/> until nothing is left, or <paramref name="dear"/> holds of their cost.</summary>
    /// <returns>Whether nothing is left.</returns>
    public bool Fill(List<Pattern> sticks, int[] left, Func<long, bool> dear)
    {
        long cost = sticks.Sum(s => _stocks[s.Stock].Cost);
        while (left.Any(n => n > 0))
        {
            Pattern stick = _columns.Dearest([.. _worths.Select(w => (long)w)], left);
            cost += _stocks[stick.Stock].Cost;
            if (dear(cost)) return false;
            Correct(stick, left);
            sticks.Add(stick);
            for (int i = 0; i < left.Length; i++) left[i] -= stick.Counts[i];
        }

        return true;
    }

    // On a stick with waste its pieces have to pay for more than their length; the fewer of a kind are left, the more that weighs.
    private void Correct(Pattern stick, int[] left)
    {
        long used = 0, length = _stocks[stick.Stock].Length;
        for (int i = 0; i < left.Length; i++)
            if (stick.Counts[i] > 0) used += _items[i].Start + (stick.Counts[i] * _items[i].Length);
        for (int i = 0; i < left.Length; i++)
        {
            if (stick.Counts[i] == 0) continue;
            double weight = (0.2 + _random.NextDouble()) * stick.Counts[i] / (stick.Counts[i] + left[i]);
            _worths[i] = ((1 - weight) * _worths[i]) + (weight * _start[i] * length / used);
        }
    }
}
