using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>The one line that answers: will it work?</summary>
internal static class Verdicts
{
    public static Sentence Of(ImmutableArray<RingPlan> rings)
    {
        Finding? worst = rings.SelectMany(r => r.Findings).Where(f => f.Weight != Weight.Note).MaxBy(f => f.Weight);
        if (worst is not null) return worst.Sentence with { Template = (rings.Length > 1 ? Sentence.Escape(worst.Ring) + ": " : "") + worst.Sentence.Template };
        RingPlan? riskiest = rings.Where(r => r.Find("chance-to-close") is not null).MinBy(r => r["chance-to-close"].Value);
        if (riskiest is null) return Sentence.Of("Nothing speaks against it.");
        Figure first = riskiest["chance-to-close"];
        Figure? corrected = riskiest.Find("chance-after-correction");
        string after = corrected is null ? "" : ", {1} once a test half has corrected the fences";
        string exact = riskiest.Find("tilt-within") is not null ? "; tilt the blade within {4}." : "; set each fence within {2}, {3} on the rule.";
        Measured Of(string name) => riskiest.Find(name)?.Measured ?? default;
        return Sentence.Of("It closes at the first try with a chance of {0}" + after + exact,
            first.Measured, (corrected ?? first).Measured, Of("angle-per-fence"), Of("rule-accuracy"), Of("tilt-within"));
    }
}
