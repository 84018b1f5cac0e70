using System.Globalization;
using Google.OrTools.Sat;

namespace Ringwright.Stock.Boards;

/// <summary>The integer programme over known patterns (CP-SAT): whole sticks, one worker and a fixed seed, so that the answer is the same everywhere.</summary>
internal static class IntegerMaster
{
    /// <summary>What came of it.</summary>
    /// <param name="Times">How often each pattern is cut; null when nothing was found.</param>
    /// <param name="Exhausted">Whether it is proved that these patterns hold nothing better.</param>
    public sealed record Outcome(int[]? Times, bool Exhausted);

    /// <summary>The cheapest way within the bounds of <paramref name="between"/>.</summary>
    public static Outcome Solve(IReadOnlyList<Pattern> patterns, int[] wanted, StripStock[] stocks, (long Bound, long Most) between, int[]? hint, SearchLimit limit, CancellationToken cancel)
    {
        if (between.Most < between.Bound) return new(null, true);
        var model = new CpModel();
        IntVar[] times = [.. patterns.Select((p, j) => model.NewIntVar(0, Most(p, wanted), $"t{j}"))];
        for (int i = 0; i < wanted.Length; i++)
        {
            int[] having = [.. Enumerable.Range(0, patterns.Count).Where(j => patterns[j].Counts[i] > 0)];
            model.Add(LinearExpr.WeightedSum(having.Select(j => times[j]), having.Select(j => (long)patterns[j].Counts[i])) >= wanted[i]);
        }

        var cost = LinearExpr.WeightedSum(times, patterns.Select(p => stocks[p.Stock].Cost));
        model.AddLinearConstraint(cost, between.Bound, between.Most);
        model.Minimize(cost);
        if (hint is not null)
            for (int j = 0; j < hint.Length; j++) model.AddHint(times[j], hint[j]);
        // Probing takes longer here than it spares.
        var solver = new CpSolver { StringParameters = limit.Parameters + ",cp_model_probing_level:0" };
        CpSolverStatus status;
        using (cancel.Register(solver.StopSearch)) status = solver.Solve(model);
        cancel.ThrowIfCancellationRequested();
        bool found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        return new(found ? [.. times.Select(t => (int)solver.Value(t))] : null, status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible);
    }

    private static int Most(Pattern pattern, int[] wanted)
    {
        int most = 0;
        for (int i = 0; i < wanted.Length; i++)
            if (pattern.Counts[i] > 0) most = Math.Max(most, (wanted[i] + pattern.Counts[i] - 1) / pattern.Counts[i]);
        return most;
    }
}

/// <summary>How long one run of the solver may take: in its own count of work, and by the clock.</summary>
internal readonly record struct SearchLimit(double Work, double Seconds)
{
    public string Parameters => string.Create(CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{Work:0.######},max_time_in_seconds:{Math.Max(0.01, Seconds):0.###}");
}
