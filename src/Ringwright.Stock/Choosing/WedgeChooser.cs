using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Choosing;

/// <summary>
/// The chooser on OR-Tools' CP-SAT. Set first: integer programs find the least worst gap, and under it the least wander that any order
/// could have. Then the order: an exhaustive search within that bound; where one set has no such order, the others in turn. The steps
/// come last and are proved on small rings only. What is not proved within the limits is said so.
/// </summary>
/// <param name="workLimit">
/// Limit of each program in the solver's own count of work, near a second each on a common machine; the same everywhere, so the answer is too.
/// </param>
public sealed class WedgeChooser(double workLimit = WedgeChooser.UsualWorkLimit) : IWedgeChooser
{
    /// <summary>The limit where none is given.</summary>
    public const double UsualWorkLimit = 1;

    /// <inheritdoc/>
    public WedgeChoice Choose(WedgeChoiceInput input, IProgress<ChoiceProgress>? progress = null, CancellationToken cancel = default)
    {
        WedgeChoiceChecks.Check(input);
        var problem = new ChoosingProblem(input);
        var course = new ChoosingCourse(problem, workLimit, progress, cancel);
        return ChoiceReport.Of(problem, course.Run());
    }
}
