namespace Ringwright.Stock.Choosing;

/// <summary>
/// What is compared, first to last: worst gap and range of the joint lines in whole grains (rounded up, at least 1), sum of size steps
/// in micrometres.
/// </summary>
internal readonly record struct RingLevels(long Gap, long Wander, long Steps)
{
    public static RingLevels Of(ChoosingProblem problem, int[] ring) =>
        new(GapOf(problem, ring), WanderOf(problem, ring), StepsOf(problem, ring));

    public static long GapOf(ChoosingProblem problem, int[] ring)
    {
        long worst = 0;
        for (int part = 0; part < problem.Parts; part++)
        {
            long excess = problem.NominalExcess;
            for (int k = part * problem.PartSize; k < (part + 1) * problem.PartSize; k++) excess += problem.Wedges[ring[k]].Excess;
            worst = Math.Max(worst, Math.Abs(excess));
        }

        return Grains(worst, problem.Grain);
    }

    public static long WanderOf(ChoosingProblem problem, int[] ring)
    {
        long sum = 0;
        foreach (int wedge in ring) sum += problem.Wedges[wedge].Excess;
        long line = 0, least = 0, most = 0;
        foreach (int wedge in ring)
        {
            // N times the excess over the mean: whole numbers without rounding.
            line += problem.Places * problem.Wedges[wedge].Excess - sum;
            least = Math.Min(least, line);
            most = Math.Max(most, line);
        }

        return Grains(most - least, problem.Places * problem.Grain);
    }

    public static long Grains(long value, long grain) => Math.Max(1, (value + grain - 1) / grain);

    private static long StepsOf(ChoosingProblem problem, int[] ring)
    {
        long steps = 0;
        for (int k = 0; k < ring.Length; k++) steps += problem.Wedges[ring[k]].StepTo(problem.Wedges[ring[(k + 1) % ring.Length]]);
        return steps;
    }
}
