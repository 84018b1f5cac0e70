using System.Collections.Immutable;
using MathNet.Numerics.Distributions;

namespace Ringwright.Core.Fitting;

/// <summary>Whether the readings go together.</summary>
/// <param name="ChiSquare">Sum of squared residuals, each over its variance.</param>
/// <param name="DegreesOfFreedom">Readings less the number of unknowns that they, rather than the priors, decided.</param>
/// <param name="Chance">Chance of a sum at least as large if all readings are as good as they claim; 1 when nothing is left over to judge by.</param>
/// <param name="Odd">
/// Readings (by index) that the others speak against: more than <see cref="Limit"/> standard deviations from what the
/// others foresee. Two that contradict each other are both listed; if the rest agree once one is left out, only that one.
/// </param>
public sealed record ReadingAgreement(double ChiSquare, double DegreesOfFreedom, double Chance, ImmutableArray<int> Odd)
{
    /// <summary>Standard deviations from which a reading counts as contradicted.</summary>
    public const double Limit = 3;

    /// <summary>Whether no reading is contradicted.</summary>
    public bool IsConsistent => Odd.IsEmpty;

    internal static ReadingAgreement Of(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors, SignedPosterior best)
    {
        double chi = 0;
        double free = 0;
        foreach (LinearReading reading in best.Readings)
        {
            (double mean, double variance) = best.Foresee(reading);
            chi += Math.Pow(reading.Value - mean, 2) / reading.Variance;
            free += 1 - (variance / reading.Variance);
        }

        double chance = free < 0.5 ? 1 : 1 - ChiSquared.CDF(free, chi);
        return new(chi, free, chance, Contradicted(observations, ring, priors));
    }

    private static ImmutableArray<int> Contradicted(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors)
    {
        ImmutableArray<int> odd = [.. Enumerable.Range(0, observations.Count).Where(i => IsOdd(observations, i, ring, priors))];
        foreach (int i in odd)
        {
            FitObservation[] rest = [.. observations.Where((_, k) => k != i)];
            if (rest.Length > 1 && !Enumerable.Range(0, rest.Length).Any(k => IsOdd(rest, k, ring, priors))) return [i];
        }

        return odd;
    }

    private static bool IsOdd(IReadOnlyList<FitObservation> observations, int i, DiagnosedRing ring, DiagnosisPriors priors)
    {
        var others = new CausePosterior([.. observations.Where((_, k) => k != i)], ring, priors);
        (double mean, double sd) = others.Foresee(observations[i]);
        return Math.Abs(ReadingModel.Of(observations[i], ring, priors, others.Best.Signs).Value - mean) > Limit * sd;
    }
}
