namespace Ringwright.Stock.Boards;

/// <summary>How far a search has come.</summary>
/// <param name="Cost">Cost of the best found.</param>
/// <param name="Bound">Proved: nothing costs less.</param>
public readonly record struct StripProgress(long Cost, long Bound);

/// <summary>Finds the cheapest way to cut pieces from sticks.</summary>
public interface IStripOptimiser
{
    /// <summary>Solves <paramref name="problem"/>; always answers with a way of cutting and a proved bound.</summary>
    /// <exception cref="Ringwright.Core.BadInputException">The problem cannot be.</exception>
    /// <exception cref="OperationCanceledException">Stopped through <paramref name="cancel"/>.</exception>
    StripSolution Solve(StripProblem problem, IProgress<StripProgress>? progress = null, CancellationToken cancel = default);
}
