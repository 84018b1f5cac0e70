using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>The one line that answers: will it work?</summary>
internal static class Verdicts
{
    public static Sentence Of(ImmutableArray<RingPlan> rings)
    {
        Finding? worst = rings.SelectMany(r => r.Findings).Where(f => f.Weight != Weight.Note).MaxBy(f => f.Weight);
        if (worst is not null) return worst.Sentence with { Template = (rings.Length > 1 ? Sentence.Escape(worst.Ring) + ": " : "") + worst.Sentence.Template };
        return Riskiest(rings, "It closes at the first try with a chance of {0}", "chance-to-close")
            ?? Riskiest(rings, "Its gaps look even, laid from spacer to spacer, with a chance of {0}", "chance-even")
            ?? Sentence.Of("It has no joints of its own that must close: cut to the line and keep both faces flat.");
    }

    private static Sentence? Riskiest(ImmutableArray<RingPlan> rings, string what, string chance)
    {
        RingPlan? riskiest = rings.Where(r => r.Find(chance) is not null).MinBy(r => r[chance].Value);
        if (riskiest is null) return null;
        Figure first = riskiest[chance];
        Figure? corrected = riskiest.Find("chance-after-correction");
        string after = corrected is null ? "" : $", {{1}} once a test half has corrected the {(riskiest.Stave is null ? "fences" : "settings")}";
        // Nobody leaves such a ring to close by itself.
        if (chance == "chance-to-close" && (corrected ?? first).Value < Fitting.ReachMap.FairChance)
            return Sentence.Of((rings.Length > 1 ? "Glue the rings as halves and true their faces: joint by joint the riskiest closes" : "Glue it as two halves and true their faces: joint by joint it closes") + " with a chance of only {0}" + after + ".",
                first.Measured, (corrected ?? first).Measured);
        Measured Of(string name) => riskiest.Find(name)?.Measured ?? default;
        return Sentence.Of(what + after + HowExact(riskiest), first.Measured, (corrected ?? first).Measured, Of("angle-per-fence"), Of("rule-accuracy"), Of("tilt-within"));
    }

    // A ring out of a flat board has a tilt too, which is not what makes it close.
    private static string HowExact(RingPlan ring)
    {
        if (ring.Stave is not null) return "; tilt the blade within {4}.";
        return ring.Find("angle-per-fence") is null || ring.Find("rule-accuracy") is null ? "." : "; set each fence within {2}, {3} on the rule.";
    }
}
