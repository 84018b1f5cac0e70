using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>What the maker should know about a ring before sawing.</summary>
internal static class Findings
{
    // Common practice, no source: an opening below 1/8 in is good for a disc that is not bored.
    private const double GoodOpening = 3.2;

    public static IEnumerable<Finding> Of(Ring ring, WedgeGeometry glued, StripLayout strip, ClosingBudget budget, Shop shop, FigureBook book)
    {
        if (ring is WedgeDisc disc)
            foreach (Finding finding in Centre(disc, glued, book)) yield return finding;
        foreach (Finding finding in Pattern(ring).Concat(Rim(ring, glued, shop))) yield return finding;
        foreach (Finding finding in Closing(ring, glued.OuterCorner, budget)) yield return finding;
        double grown = strip.Wedge.OuterApothem - glued.OuterApothem;
        if (grown > 0)
            yield return new(Weight.Note, ring.Name, Sentence.Of("Sanding {0} off each face makes the ring {1} smaller across; the sawn sizes allow for it.", Measured.Fine(shop.Sanding.PerFace.Millimetres), Measured.Length(2 * grown)));
        foreach (Finding finding in Dust(ring, strip).Concat(SpareNotes(ring, shop, book))) yield return finding;
    }

    /// <summary>
    /// What to do where joints that are left to close by themselves probably will not. Two halves of an even count always
    /// close once their faces are trued; each half scatters by the ring's spread over √2, and twice that is what truing must take away.
    /// </summary>
    /// <param name="ring">The ring.</param>
    /// <param name="reach">Distance from its axis to the outer end of a joint, mm.</param>
    /// <param name="budget">Where its closing error comes from.</param>
    public static IEnumerable<Finding> Closing(Ring ring, double reach, ClosingBudget budget)
    {
        if (budget.Corrected.Chance >= ReachMap.FairChance) yield break;
        Measured chance = Measured.Share(budget.Corrected.Chance);
        if (ring.Around % 2 != 0)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of($"Even with the fences corrected it closes with a chance of only {{0}}, and an odd number of segments has no halves to true: use an even number. {Largest(budget)}", chance));
        else
            yield return new(Weight.Note, ring.Name, Sentence.Of($"Glue it as two halves and true their faces: joint by joint it closes with a chance of only {{0}}, even with the fences corrected. Truing takes up to about {{1}} at the rim. {Largest(budget)}",
                chance, Measured.Fine(reach * Math.Sqrt(2) * budget.Corrected.Sd)));
    }

    /// <summary>Whether the pattern of woods comes out even.</summary>
    public static IEnumerable<Finding> Pattern(Ring ring)
    {
        if (ring.Around % ring.Cycle.Length != 0)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of("{0} segments do not divide evenly by a pattern of {1} woods: where the pattern meets its start it jumps.", Measured.Count(ring.Around), Measured.Count(ring.Cycle.Length)));
    }

    /// <summary>Whether these hands can hold and sand the wedges.</summary>
    public static IEnumerable<Finding> Rim(Ring ring, WedgeGeometry glued, Shop shop)
    {
        if (glued.RimEdge < shop.Wanted.LeastRimEdge.Millimetres)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of("The rim edge is only {0}, less than the {1} these hands hold and sand: use fewer segments or a larger ring.", Measured.Length(glued.RimEdge), Measured.Length(shop.Wanted.LeastRimEdge.Millimetres)));
    }

    /// <summary>Whether much of the strip is lost to the blade.</summary>
    public static IEnumerable<Finding> Dust(Ring ring, StripLayout strip)
    {
        if (strip.DustShare > 0.35)
            yield return new(Weight.Note, ring.Name, Sentence.Of("{0} of the strip becomes sawdust: a thinner blade saves wood.", Measured.Share(strip.DustShare)));
    }

    private static IEnumerable<Finding> Centre(WedgeDisc disc, WedgeGeometry glued, FigureBook book)
    {
        double opening = 2 * glued.InnerCorner;
        if (disc.Bore is not Length bore)
        {
            if (opening >= GoodOpening)
                yield return new(Weight.Doubt, disc.Name, Sentence.Of("The opening in the middle is {0} across corners; below {1} is good for a disc that is not bored.", Measured.Length(opening), Measured.Length(GoodOpening)),
                    new("tip", 0, Sentence.Of("Saw to a point")));
            yield break;
        }

        double easiest = book["easiest-tip"].Value;
        var change = new FieldChange("tip", RoundDown(easiest), Sentence.Of("Use a tip of {0}", Measured.Length(RoundDown(easiest))));
        if (book["bore-margin"].Value < 0 && glued.InnerApothem > 0)
            yield return new(Weight.Doubt, disc.Name, Sentence.Of("The bore of {0} leaves corners of the opening, which is {1} across corners: a tip of at most {2} vanishes.", Measured.Length(bore.Millimetres), Measured.Length(opening), Measured.Length(easiest)), change);
        else if (RoundDown(easiest) > glued.Tip + 0.05)
            yield return new(Weight.Note, disc.Name, Sentence.Of("The bore of {0} takes the middle away, so the wedges need no point: a tip of {1} is easier to sand and still vanishes.", Measured.Length(bore.Millimetres), Measured.Length(easiest)), change);
        else
            yield return new(Weight.Note, disc.Name, Sentence.Of("The bore of {0} takes the opening in the middle away.", Measured.Length(bore.Millimetres)));
    }

    /// <summary>How many of each pile are spare.</summary>
    public static IEnumerable<Finding> SpareNotes(Ring ring, Shop shop, FigureBook book)
    {
        WedgeLoss loss = WedgeLoss.Of(shop.Hands);
        string known = loss.Worth is null ? "" : " The loss of {4} is known from a record worth {5} wedges, and the spares allow for what it may have missed.";
        foreach (Figure figure in book.Figures.Where(f => f.Name.Contains("/to-saw", StringComparison.Ordinal)))
        {
            int needed = (int)figure.Why.Inputs[0].Value;
            yield return new(Weight.Note, ring.Name, Sentence.Of($"{Sentence.Escape(figure.Label)}: {{0}}, {{1}} of them spare. With the usual {{2}} spares they would be enough with a chance of {{3}}.{known}",
                Measured.Count((int)figure.Value), Measured.Count((int)figure.Value - needed), Measured.Count(Spares.UsualSpares), Measured.Share(loss.ChanceOfEnough(needed, needed + Spares.UsualSpares)),
                Measured.Share(shop.Hands.Loss), new(shop.Hands.LossWorth ?? 0, Quantity.Count)));
        }
    }

    /// <summary>What to mend first, once the fences are corrected.</summary>
    public static string Largest(ClosingBudget budget) => budget.FromCuts >= budget.FromSanding
        ? "Most of the rest comes from cut to cut: clean the fence and hold the board down."
        : "Most of the rest comes from uneven sanding: sand less, or in a holder.";

    private static double RoundDown(double millimetres) => Math.Floor((millimetres * 20) + 1e-9) / 20;
}
