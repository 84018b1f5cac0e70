namespace Ringwright.Core.Fitting;

/// <summary>How far a choice has come.</summary>
/// <param name="Stage">What is being settled: the gap, the joint lines, or the steps.</param>
/// <param name="Share">Stages done, 0 to 1.</param>
/// <param name="WorstGap">Worst gap of the best ring so far, mm.</param>
public sealed record ChoiceProgress(string Stage, double Share, double WorstGap);

/// <summary>Chooses the best N of N + spares measured wedges and their order around the ring.</summary>
public interface IWedgeChooser
{
    /// <summary>
    /// The ring with the least worst gap; of these, with the least wander of its joint lines; of these, with the least sum of size steps
    /// between neighbours. The same readings give the same ring, whatever the machine's load.
    /// </summary>
    /// <exception cref="BadInputException">Readings or ring that cannot be.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    WedgeChoice Choose(WedgeChoiceInput input, IProgress<ChoiceProgress>? progress = null, CancellationToken cancel = default);
}
