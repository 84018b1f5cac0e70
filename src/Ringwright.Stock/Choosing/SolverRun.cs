using System.Globalization;
using Google.OrTools.Sat;

namespace Ringwright.Stock.Choosing;

/// <summary>What a run of the solver ended with.</summary>
/// <param name="Solver">Holds the values, when any were found.</param>
/// <param name="HasValues">Whether a solution was found.</param>
/// <param name="Proved">Whether it is proved best.</param>
/// <param name="Bound">Proved lower bound of the objective.</param>
internal sealed record SolverRun(CpSolver Solver, bool HasValues, bool Proved, long Bound)
{
    /// <summary>
    /// Minimises with one worker, a fixed seed and a limit in the solver's own count of work, so that the answer does not depend on
    /// the clock or on what else the machine does.
    /// </summary>
    public static SolverRun Minimise(CpModel model, double workLimit, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var solver = new CpSolver
        {
            StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1,random_seed:1,max_deterministic_time:{workLimit}"),
        };
        CpSolverStatus status;
        using (cancel.Register(solver.StopSearch)) status = solver.Solve(model);
        cancel.ThrowIfCancellationRequested();
        if (status == CpSolverStatus.ModelInvalid) throw new InvalidOperationException($"The solver refuses the model: {model.Validate()}");
        bool hasValues = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        return new(solver, hasValues, status == CpSolverStatus.Optimal, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
    }
}
