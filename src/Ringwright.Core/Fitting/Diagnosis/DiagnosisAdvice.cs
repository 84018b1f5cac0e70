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
        sentences.Add(Move(correction, correction.IsWorthwhile ? "Move" : "Best guess so far: move"));
        if (!correction.IsWorthwhile) sentences.Add(Sentence.Of($"That is not clearly more than its uncertainty: leave the fences, and first {Next(observations, ring, priors, best)}"));
        return sentences.ToImmutable();
    }

    private static Sentence Move(FenceCorrection c, string move)
    {
        string way = c.Move == FenceMove.AwayFromSquare ? "away from square" : "towards square";
        string what = c.Sled switch
        {
            SledKind.TwoFences => $"{move} each of the two fences {way} by {{0}} (give or take {{1}}), read {{2}} from its pivot; or one of them by twice that, for only their sum matters.",
            SledKind.OneFence => $"{move} the fence {way} by {{0}} (give or take {{1}}), read {{2}} from its pivot; it makes both faces of a wedge, so this counts twice.",
            _ => $"{move} the sander's fence {way} by {{0}} (give or take {{1}}), read {{2}} from its pivot; both faces of a wedge are sanded against it, so this counts twice.",
        };
        return Sentence.Of(what, Measured.Fine(c.RuleMove), Measured.Fine(c.RuleMoveSd), Measured.Length(c.RuleDistance));
    }

    private static Sentence Disagreement(IReadOnlyList<FitObservation> observations, ReadingAgreement agreement)
    {
        string[] odd = [.. agreement.Odd.Select(i => $"{Ordinal(i)} ({Name(observations[i])})")];
        return odd.Length == 1
            ? Sentence.Of($"The {odd[0]} does not go with the others. Take it again before you trust the correction.")
            : Sentence.Of($"The {string.Join(", the ", odd[..^1])} and the {odd[^1]} contradict each other. Take them again before you trust the correction.");
    }

    /// <summary>The observation that would narrow the closing error most.</summary>
    private static string Next(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors, SignedPosterior best)
    {
        OpenAt open = best.Signs.TooNarrow ? OpenAt.Rim : OpenAt.Centre;
        List<(FitObservation Observation, string Words)> choices =
        [
            (new GatheredGap(open, JointLevel.Middle, 0), $"press all joints but one shut and read that one at the {End(open)}."),
        ];
        if (ring.Segments % 2 == 0) choices.Add((new HalfRingGap(open, 0), "lay half a ring evenly against a straightedge and read where light shows, or saw one more test half and do the same."));
        if (observations.OfType<GatheredGap>().Any()) choices[0] = (choices[0].Observation, $"gather the opening once more in another joint and read it at the {End(open)}.");
        return choices.MinBy(c => best.ClosingSdWith(ReadingModel.Of(c.Observation, ring, priors, best.Signs))).Words;
    }

    private static string End(OpenAt at) => at == OpenAt.Rim ? "rim" : "centre";

    private static string Ordinal(int i) => $"reading {i + 1}";

    private static string Name(FitObservation observation) => observation switch
    {
        GatheredGap g => $"opening gathered in one joint, at the {End(g.At)}",
        BandedGap b => $"joint {b.Joint + 1} under the band, at the {End(b.At)}",
        HalfRingGap h => $"half ring on a straightedge, open at the {End(h.At)}",
        _ => "wedge angle",
    };
}
