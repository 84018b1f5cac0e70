using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>The one line that answers: will it work?</summary>
internal static class Verdicts
{
    public static Sentence Of(ImmutableArray<RingPlan> rings)
    {
        Finding? worst = rings.SelectMany(r => r.Findings).Where(f => f.Weight != Weight.Note).MaxBy(f => f.Weight);
        if (worst is not null) return worst.Sentence with { Template = (rings.Length > 1 ? Sentence.Escape(worst.Ring) + ": " : "") + worst.Sentence.Template };
        if (rings.Where(r => r.Find("chance-to-close") is not null).MinBy(r => r["chance-to-close"].Value) is not RingPlan riskiest)
            return Sentence.Of("It has no joints of its own that must close: cut to the line and keep both faces flat.");
        Figure first = riskiest["chance-to-close"];
        Figure? corrected = riskiest.Find("chance-after-correction");
        string after = corrected is null ? "" : ", {1} once a test half has corrected the fences";
        return Sentence.Of("It closes at the first try with a chance of {0}" + after + "; set each fence within {2}, {3} on the rule.",
            first.Measured, (corrected ?? first).Measured, riskiest["angle-per-fence"].Measured, riskiest["rule-accuracy"].Measured);
    }
}
