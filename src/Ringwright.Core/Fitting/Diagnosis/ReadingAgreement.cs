using System.Collections.Immutable;
using MathNet.Numerics.Distributions;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>Whether the readings go together.</summary>
/// <param name="ChiSquare">Squared distance of the readings from what their noise and the priors foresee.</param>
/// <param name="DegreesOfFreedom">Readings that went into it, with those that were only understood.</param>
/// <param name="Chance">Chance of a distance at least as large if readings and priors are as good as they claim.</param>
/// <param name="Odd">
/// Readings (by index) that the others speak against: more than <see cref="Limit"/> standard deviations from what the
/// others foresee. Two that contradict each other are both listed; if the rest agree once one is left out, only that one.
/// </param>
public sealed record ReadingAgreement(double ChiSquare, int DegreesOfFreedom, double Chance, ImmutableArray<int> Odd)
{
    /// <summary>Standard deviations from which a reading counts as contradicted.</summary>
    public const double Limit = 3;

    /// <summary>Whether no reading is contradicted.</summary>
    public bool IsConsistent => Odd.IsEmpty;

    /// <summary>How far the readings go together, in words.</summary>
    public Sentence Sentence => IsConsistent
        ? Chance < Doubtful
            ? Sentence.Of("No reading stands out, but together they are stranger than their uncertainty explains: honest readings would be so in {0} of cases.", Measured.Share(Chance))
            : Sentence.Of("The readings go together: honest readings would differ more in {0} of cases.", Measured.Share(Chance))
        : Sentence.Of("The readings do not go together: honest readings would differ more only in {0} of cases.", Measured.Share(Chance));

    private const double Doubtful = 0.02;

    internal static ReadingAgreement Of(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors, SignedPosterior best) => new(
        best.Surprise,
        best.Readings.Count,
        1 - ChiSquared.CDF(best.Readings.Count, best.Surprise),
        Contradicted(observations, ring, priors));

    /// <summary>All that the others speak against; if one alone can be left out so that the rest agree, only the one whose absence makes them agree best.</summary>
    private static ImmutableArray<int> Contradicted(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors)
    {
        ImmutableArray<int> odd = [.. Enumerable.Range(0, observations.Count).Where(i => IsOdd(observations, i, observations, ring, priors))];
        if (observations.Count < 3) return odd;
        (int Index, double Surprise)[] single =
        [
            .. odd.Select(i => (i, Others: Without(observations, i)))
                .Where(o => !Enumerable.Range(0, o.Others.Length).Any(k => IsOdd(o.Others, k, observations, ring, priors)))
                .Select(o => (o.i, CausePosterior.Of(o.Others, observations, ring, priors).Best.Surprise)),
        ];
        return single.Length == 0 ? odd : [single.MinBy(s => s.Surprise).Index];
    }

    private static FitObservation[] Without(IReadOnlyList<FitObservation> observations, int i) => [.. observations.Where((_, k) => k != i)];

    private static bool IsOdd(IReadOnlyList<FitObservation> observations, int i, IReadOnlyList<FitObservation> all, DiagnosedRing ring, DiagnosisPriors priors)
    {
        CausePosterior others = CausePosterior.Of(Without(observations, i), all, ring, priors);
        (double mean, double sd) = others.Foresee(observations[i]);
        return Math.Abs(ReadingModel.Of(observations[i], ring, priors, others.Best.Signs).Value - mean) > Limit * sd;
    }
}
