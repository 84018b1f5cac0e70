using System.Collections.Immutable;
using Ringwright.Core.Planning;

namespace Ringwright.Stock.Schedules;

/// <summary>The quickest order for a glue plan with these hands, clamps and hours.</summary>
public static class GlueScheduler
{
    /// <summary>The schedule.</summary>
    /// <param name="plan">The glue plan.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static GlueSchedule Of(GluePlan plan, CancellationToken cancel = default)
    {
        (ImmutableArray<GlueTask> tasks, WorkProblem problem) = GlueSchedule.ProblemOf(plan);
        return new(plan, tasks, WorkSolver.Solve(problem, cancel: cancel));
    }
}
