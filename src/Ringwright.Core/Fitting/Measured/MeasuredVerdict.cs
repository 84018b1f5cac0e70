using System.Globalization;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>Whether measured wedges close, in one sentence.</summary>
public static class MeasuredVerdict
{
    /// <summary>The sentence.</summary>
    /// <param name="name">The ring's name.</param>
    /// <param name="fit">The dry fit of its wedges.</param>
    /// <param name="wanted">The widest joint gap that is wanted, mm.</param>
    /// <param name="pieces">What they are called.</param>
    public static Sentence Of(string name, DryFitResult fit, double wanted, string pieces = "wedges")
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(fit);
        DryFitSummary s = fit.Summary;
        string ring = Sentence.Escape(name);
        if (!s.Settled) return Sentence.Of($"{ring}: the dry fit of these {pieces} did not settle; the numbers deserve no trust.");
        string where = $"joint {(s.WorstJoint + 1).ToString(CultureInfo.InvariantCulture)}, at the {(s.WorstCorner is JointCorners.RimBottom or JointCorners.RimTop ? "rim" : "centre")}";
        double gathered = fit.Gathered.Gap.Worst;
        Measured worst = Measured.Fine(s.WorstGap), last = Measured.Fine(gathered), most = Measured.Fine(wanted);
        return gathered <= wanted && s.WorstGap <= wanted
            ? Sentence.Of($"{ring}: these {pieces} close. Under a band no joint is open by more than {{0}} ({where}), joint by joint the last by {{1}}; at most {{2}} is wanted.", worst, last, most)
            : s.WorstGap <= wanted
            ? Sentence.Of($"{ring}: these {pieces} close under a band, where no joint is open by more than {{0}} ({where}); closed joint by joint the last stays open by {{1}}, and at most {{2}} is wanted.", worst, last, most)
            : Sentence.Of($"{ring}: these {pieces} do not close. Under a band the widest joint is open by {{0}} ({where}); at most {{1}} is wanted.", worst, most);
    }
}
