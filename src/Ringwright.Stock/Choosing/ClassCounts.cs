namespace Ringwright.Stock.Choosing;

/// <summary>How many wedges of each angle class are in each part of the ring.</summary>
internal sealed class ClassCounts(ChoosingProblem problem)
{
    private readonly int[,] _counts = new int[problem.Parts, problem.Classes.Length];

    public int this[int part, int c]
    {
        get => _counts[part, c];
        set => _counts[part, c] = value;
    }

    /// <summary>Sum of the excess angles of all chosen wedges, nanoradians.</summary>
    public long Sum
    {
        get
        {
            long sum = 0;
            for (int part = 0; part < problem.Parts; part++)
                for (int c = 0; c < problem.Classes.Length; c++) sum += _counts[part, c] * problem.Classes[c].Excess;
            return sum;
        }
    }

    public static ClassCounts Of(ChoosingProblem problem, int[] ring)
    {
        var counts = new ClassCounts(problem);
        for (int k = 0; k < ring.Length; k++) counts[problem.PartOf(k), problem.ClassOf[ring[k]]]++;
        return counts;
    }
}
