namespace Ringwright.Stock.Boards;

/// <summary>What a piece of each kind is worth, so that no stick holds more worth than it costs: a solution of the dual, hence a bound.</summary>
/// <param name="Each">Worth of one of each kind.</param>
internal sealed record PieceWorths(double[] Each)
{
    /// <summary>By length alone: the cheapest there is.</summary>
    public static PieceWorths ByLength(StripProblem problem)
    {
        double least = problem.Stocks.Min(s => (double)s.Cost / s.Length);
        return new([.. problem.Items.Select(i => least * i.Length)]);
    }

    /// <summary>Worth of a stick with these counts.</summary>
    public double Of(int[] counts)
    {
        double sum = 0;
        for (int i = 0; i < counts.Length; i++) sum += counts[i] * Each[i];
        return sum;
    }

    /// <summary>No way to cut what is wanted costs less.</summary>
    public double Bound(int[] wanted) => Of(wanted);
}
