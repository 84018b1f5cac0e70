using System.Collections.Immutable;

namespace Ringwright.Stock.Boards;

/// <summary>
/// Cutting from sticks by column generation: the relaxation's bound, rounded up to what costs can be; whole sticks from its patterns
/// by rounding, by diving and by an integer programme; at last, where few enough patterns could be in anything better, a programme
/// over all of those, which decides. What is not proved within the limit is said so.
/// </summary>
/// <param name="seconds">Limit by the clock, and of each integer programme in the solver's own count of work, near a second each on a common machine.</param>
public sealed class StripOptimiser(double seconds = StripOptimiser.UsualSeconds) : IStripOptimiser
{
    /// <summary>The limit where none is given.</summary>
    public const double UsualSeconds = 10;

    /// <inheritdoc/>
    public StripSolution Solve(StripProblem problem, IProgress<StripProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        problem.Check();
        int[] kinds = [.. Enumerable.Range(0, problem.Items.Length).Where(i => problem.Items[i].Count > 0)];
        if (kinds.Length == 0) return new([], 0, 0);
        using var course = new StripCourse(Scaled(problem, kinds), seconds, progress, cancel);
        course.Run();
        return new([.. course.Best.GroupBy(p => p).Select(g => new StripPattern(g.Key.Stock, Spread(g.Key.Counts, kinds, problem.Items.Length), g.Count()))], course.Cost, course.Bound);
    }

    // In the largest unit in which all pieces are whole: a length of stick between two multiples holds no more than the lower one.
    private static StripProblem Scaled(StripProblem problem, int[] kinds)
    {
        long unit = kinds.Aggregate(0L, (u, i) => Divisor(Divisor(u, problem.Items[i].Length), problem.Items[i].Start));
        return new(
            [.. kinds.Select(i => problem.Items[i] with { Length = problem.Items[i].Length / unit, Start = problem.Items[i].Start / unit })],
            [.. problem.Stocks.Select(s => s with { Length = s.Length / unit })]);
    }

    /// <summary>Greatest common divisor.</summary>
    internal static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);

    private static ImmutableArray<int> Spread(int[] counts, int[] kinds, int all)
    {
        var spread = new int[all];
        for (int k = 0; k < kinds.Length; k++) spread[kinds[k]] = counts[k];
        return [.. spread];
    }
}
