using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>What to do: which fence, which way, how far, and what to read next.</summary>
internal static class DiagnosisAdvice
{
    public static ImmutableArray<Sentence> Of(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors, SignedPosterior best, FenceCorrection correction, ReadingAgreement agreement)
    {
        var sentences = ImmutableArray.CreateBuilder<Sentence>();
        if (!agreement.IsConsistent) sentences.Add(Disagreement(observations, agreement));
        if (correction.IsWorthwhile)
        {
            sentences.Add(Move(correction, agreement.IsConsistent ? "Move {0}." : "Best guess so far: move {0}."));
            if (agreement.IsConsistent) sentences.Add(Sentence.Of(ring.WedgeAngle is null ? $"Then saw a new ring, in scrap, and read it again: {Next([], ring, priors, best)}" : "Then saw new ones of these wedges, in scrap, and measure them again."));
        }
        else
        {
            sentences.Add(Move(correction, $"Leave the {(correction.IsTilt ? "blade" : "fences")} as {(correction.IsTilt ? "it is" : "they are")}: what the readings ask for is not clearly more than its uncertainty. Best guess so far: move {{0}}."));
            if (ring.WedgeAngle is null) sentences.Add(Sentence.Of($"First {Next(observations, ring, priors, best)}"));
        }

        return sentences.ToImmutable();
    }

    /// <summary>A sentence in whose {0} stands which fence moves which way and how far.</summary>
    private static Sentence Move(FenceCorrection c, string sentence)
    {
        string way = c.Move == FenceMove.AwayFromSquare ? "away from square" : "towards square";
        if (c.IsTilt)
        {
            string part = c.Sled == SledKind.DiscSander ? "the sander’s table" : "the blade";
            return Sentence.Of(sentence.Replace("{0}", $"{part} {way} by {{0}} (give or take {{1}}), to {{2}}; it makes both edges of a stave, so this counts twice", StringComparison.Ordinal),
                Measured.FineAngle(Math.Abs(c.FenceAngle)), Measured.FineAngle(c.FenceAngleSd), Measured.FineAngle(c.FenceAngleAfter));
        }

        string what = c.Sled switch
        {
            SledKind.TwoFences => $"each of the two fences {way} by {{0}} (give or take {{1}}), read {{2}} from its pivot; or one of them by twice that, for only their sum matters",
            SledKind.OneFence => $"the fence {way} by {{0}} (give or take {{1}}), read {{2}} from its pivot; it makes both faces of a wedge, so this counts twice",
            _ => $"the sander's fence {way} by {{0}} (give or take {{1}}), read {{2}} from its pivot; both faces of a wedge are sanded against it, so this counts twice",
        };
        return Sentence.Of(sentence.Replace("{0}", what, StringComparison.Ordinal), Measured.Fine(c.RuleMove), Measured.Fine(c.RuleMoveSd), Measured.Length(c.RuleDistance));
    }

    private static Sentence Disagreement(IReadOnlyList<FitObservation> observations, ReadingAgreement agreement)
    {
        string[] odd = [.. agreement.Odd.Select(i => $"{i + 1} ({ObservationWords.Name(observations[i])})")];
        return odd.Length == 1
            ? Sentence.Of($"Reading {odd[0]} does not go with the others. Take it again before you move a fence.")
            : Sentence.Of($"Readings {string.Join(", ", odd[..^1])} and {odd[^1]} contradict each other. Take them again before you move a fence.");
    }

    /// <summary>The observation that would narrow the closing error most.</summary>
    private static string Next(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors, SignedPosterior best)
    {
        OpenAt open = best.Signs.TooNarrow ? OpenAt.Rim : OpenAt.Centre;
        List<(FitObservation Observation, string Words)> choices =
        [
            (new GatheredGap(open, JointLevel.Middle, 0), $"press all joints but one shut and read that one at the {ObservationWords.End(open)}."),
        ];
        if (ring.Segments % 2 == 0) choices.Add((new HalfRingGap(open, 0), "lay half a ring evenly against a straightedge and read where light shows, or saw one more test half and do the same."));
        if (observations.OfType<GatheredGap>().Any()) choices[0] = (choices[0].Observation, $"gather the opening once more in another joint and read it at the {ObservationWords.End(open)}.");
        return choices.MinBy(c => best.ClosingSdWith(ReadingModel.Of(c.Observation, ring, priors, best.Signs))).Words;
    }
}
