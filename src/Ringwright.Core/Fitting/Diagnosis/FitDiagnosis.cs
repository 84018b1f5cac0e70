using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>What a dry ring's openings say about its making, and what to change.</summary>
/// <param name="Causes">Possible causes, the likeliest first.</param>
/// <param name="Correction">The change of the fences.</param>
/// <param name="Agreement">Whether the readings go together.</param>
/// <param name="Advice">What to do, in order; the first is the answer: which fence, which way, how far.</param>
public sealed record FitDiagnosis(
    ImmutableArray<FitCause> Causes,
    FenceCorrection Correction,
    ReadingAgreement Agreement,
    ImmutableArray<Sentence> Advice)
{
    /// <summary>What to do before a fence is touched (common practice); null when nothing is to be moved.</summary>
    public string? Caution => !Correction.IsWorthwhile
        ? null
        : $"Before you touch a fence: switch off, let the {(Correction.Sled == SledKind.DiscSander ? "disc" : "blade")} come to a stop and pull the plug. Make the first cut after it in scrap.";

    private const double Noticeable = FitObservation.FeelerSd;

    /// <summary>The closing error: mean and standard deviation, radians.</summary>
    public (double Mean, double Sd) ClosingError => Causes.Where(c => c.Kind == FitCauseKind.WedgeAngle).Select(c => (c.Mean, c.Sd)).Single();

    /// <summary>
    /// Weighs the readings against the stated priors (Gaussian, every combination of signs; see <see cref="ReadingModel"/>
    /// for what each reading should be).
    /// </summary>
    /// <exception cref="BadInputException">No readings, or a value out of range.</exception>
    public static FitDiagnosis Of(DiagnosedRing ring, IReadOnlyList<FitObservation> observations, DiagnosisPriors? priors = null)
    {
        ArgumentNullException.ThrowIfNull(ring);
        ArgumentNullException.ThrowIfNull(observations);
        priors ??= new();
        ring.Check();
        ObservationCheck.All(observations, ring);
        CausePosterior posterior = CausePosterior.Of(observations, observations, ring, priors);
        (double closing, double closingSd) = posterior.Of(0);
        FenceCorrection correction = FenceCorrection.Of(ring, closing, Math.Sqrt((closingSd * closingSd) + OwnScatter(observations, ring, priors)));
        ReadingAgreement agreement = ReadingAgreement.Of(observations, ring, priors, posterior.Best);
        return new(
            [.. CausesOf(posterior, ring).OrderByDescending(c => c.Chance)],
            correction,
            agreement,
            DiagnosisAdvice.Of(observations, ring, priors, posterior.Best, correction, agreement));
    }

    /// <summary>
    /// Variance of what the single wedges' scatter made of this ring's closing error and will not make of the next one's.
    /// An opening holds it; angles of single wedges are weighed with it already.
    /// </summary>
    private static double OwnScatter(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors) =>
        observations.All(o => o is WedgeAngleReading) ? 0 : ring.Segments * priors.ScatterSd * priors.ScatterSd;

    private static IEnumerable<FitCause> CausesOf(CausePosterior posterior, DiagnosedRing ring)
    {
        (double mean, double sd) = posterior.Of(0);
        double radius = mean >= 0 ? ring.RimRadius : ring.JointLength;
        yield return new(FitCauseKind.WedgeAngle, mean, sd, posterior.ChanceBeyond(0, Noticeable / radius), null, CauseSentences.WedgeAngle(mean, sd, ring));
        (mean, sd) = posterior.Of(1);
        yield return new(FitCauseKind.Lean, mean, sd, posterior.ChanceBeyond(1, Noticeable), null, CauseSentences.Lean(mean, sd, ring));
        (mean, sd) = posterior.Of(2);
        yield return new(FitCauseKind.FaceShape, mean, sd, posterior.ChanceBeyond(2, Noticeable), null, CauseSentences.Shape(mean, sd));
        foreach ((int joint, double more, double moreSd) in posterior.Best.Deviations.GroupBy(d => d.Place.Joint).Select(g => g.MaxBy(d => Math.Abs(d.Mean))).Select(d => (d.Place.Joint, d.Mean, d.Sd)))
        {
            double chance = CausePosterior.Above((Noticeable - more) / moreSd) + CausePosterior.Above((Noticeable + more) / moreSd);
            yield return new(FitCauseKind.UnevenWedge, more, moreSd, chance, joint, CauseSentences.Uneven(joint, more, moreSd));
        }
    }
}
