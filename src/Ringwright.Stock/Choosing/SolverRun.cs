using System.Globalization;
using Google.OrTools.Sat;

namespace Ringwright.Stock.Choosing;

/// <summary>Sets that a model allows.</summary>
/// <param name="Sets">Those found.</param>
/// <param name="Complete">Whether there are no others.</param>
internal sealed record SetList(IReadOnlyList<ClassCounts> Sets, bool Complete);

/// <summary>
/// A run of the solver with one worker, a fixed seed and a limit in its own count of work, so that the answer does not depend on the
/// clock or on what else the machine does.
/// </summary>
/// <param name="Solver">Holds the values, when any were found.</param>
/// <param name="HasValues">Whether a solution was found.</param>
/// <param name="Bound">Proved lower bound of the objective.</param>
internal sealed record SolverRun(CpSolver Solver, bool HasValues, long Bound)
{
    /// <summary>Minimises the model's objective.</summary>
    public static SolverRun Minimise(CpModel model, double workLimit, CancellationToken cancel)
    {
        var (solver, status) = Solve(model, "", null, workLimit, cancel);
        return new(solver, status is CpSolverStatus.Optimal or CpSolverStatus.Feasible, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
    }

    /// <summary>All solutions of a model without objective, up to a number of them.</summary>
    public static SetList Enumerate(CpModel model, Func<Func<IntVar, long>, ClassCounts> read, int most, double workLimit, CancellationToken cancel)
    {
        using var collector = new Collector(read, most);
        var (_, status) = Solve(model, ",enumerate_all_solutions:true", collector, workLimit, cancel);
        return new(collector.Sets, status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible);
    }

    private static (CpSolver, CpSolverStatus) Solve(CpModel model, string more, CpSolverSolutionCallback? callback, double workLimit, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var solver = new CpSolver
        {
            StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{workLimit}{more}"),
        };
        CpSolverStatus status;
        using (cancel.Register(solver.StopSearch)) status = solver.Solve(model, callback);
        cancel.ThrowIfCancellationRequested();
        if (status == CpSolverStatus.ModelInvalid) throw new InvalidOperationException($"The solver refuses the model: {model.Validate()}");
        return (solver, status);
    }

    private sealed class Collector(Func<Func<IntVar, long>, ClassCounts> read, int most) : CpSolverSolutionCallback
    {
        public List<ClassCounts> Sets { get; } = [];

        public override void OnSolutionCallback()
        {
            // One more than wanted proves that the list is not complete.
            if (Sets.Count == most) StopSearch();
            else Sets.Add(read(Value));
        }
    }
}
