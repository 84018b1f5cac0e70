using System.Collections.Immutable;
using Google.OrTools.Sat;
using Ringwright.Core.Planning;
using Ringwright.Stock.Choosing;

namespace Ringwright.Stock.Schedules;

/// <summary>
/// Puts work in the quickest order with a constraint solver: first the least time until all is over, then, within that, everything as early
/// as it can, so that work waits as little as possible. One worker, a fixed seed and limits in the solver's own count of work: the same
/// problem gives the same answer on any machine.
/// </summary>
public static class WorkSolver
{
    /// <summary>The solver's own count of work for the least time: some two seconds on a plain machine.</summary>
    public const double UsualWork = 0.4;

    private const int MostTasks = 600; // more would not be done within a few seconds

    /// <summary>The quickest order found, with a bound that is proved. Never worse than the quick one.</summary>
    /// <param name="problem">The work.</param>
    /// <param name="work">How much the solver may do for each of its two aims.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static WorkSchedule Solve(WorkProblem problem, double work = UsualWork, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        WorkSchedule best = ListScheduler.Of(problem);
        if (problem.Tasks.Length is 0 or > MostTasks) return best;
        if (!best.IsShortest)
        {
            var model = new WorkModel(problem, best.Makespan, best);
            model.Model.Minimize(model.Makespan);
            (ImmutableArray<int>? shorter, int bound) = Run(model, work, cancel);
            best = new(problem, shorter ?? best.Starts, Math.Max(bound, best.LowerBound));
        }

        // Waiting: with the time fixed, the sum of all starts.
        var early = new WorkModel(problem, best.Makespan, best);
        early.Model.Minimize(LinearExpr.Sum(early.Starts));
        return Run(early, work / 2, cancel).Starts is { } sooner ? new(problem, sooner, best.LowerBound) : best;
    }

    private static (ImmutableArray<int>? Starts, int Bound) Run(WorkModel model, double work, CancellationToken cancel)
    {
        SolverRun run = SolverRun.Minimise(model.Model, work, cancel);
        return (run.HasValues ? [.. model.Starts.Select(s => (int)run.Solver.Value(s))] : null, (int)run.Bound);
    }
}
