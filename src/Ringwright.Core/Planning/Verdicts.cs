using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>The one line that answers: will it work?</summary>
internal static class Verdicts
{
    public static Sentence Of(ImmutableArray<RingPlan> rings)
    {
        Finding? worst = rings.SelectMany(r => r.Findings).Where(f => f.Weight != Weight.Note).MaxBy(f => f.Weight);
        if (worst is not null) return worst.Sentence with { Template = (rings.Length > 1 ? Sentence.Escape(worst.Ring) + ": " : "") + worst.Sentence.Template };
        RingPlan strictest = rings.MinBy(r => r["angle-per-fence"].Value)!;
        return Sentence.Of("It closes if each fence is set within {0}, {1} on the rule.",
            Measured.FineAngle(strictest["angle-per-fence"].Value), Measured.Fine(strictest["rule-accuracy"].Value));
    }
}
