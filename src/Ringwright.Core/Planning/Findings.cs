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
        foreach (Finding finding in Pattern(ring)) yield return finding;
        if (glued.RimEdge < shop.Wanted.LeastRimEdge.Millimetres)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of("The rim edge is only {0}, less than the {1} these hands hold and sand: use fewer segments or a larger ring.", Measured.Length(glued.RimEdge), Measured.Length(shop.Wanted.LeastRimEdge.Millimetres)));
        if (budget.Corrected.Chance < ReachMap.FairChance)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of($"Even with the fences corrected it closes with a chance of only {{0}}: glue two halves and true their faces. {Largest(budget)}", Measured.Share(budget.Corrected.Chance)));
        double grown = strip.Wedge.OuterApothem - glued.OuterApothem;
        if (grown > 0)
            yield return new(Weight.Note, ring.Name, Sentence.Of("Sanding {0} off each face makes the ring {1} smaller across; the sawn sizes allow for it.", Measured.Fine(shop.Sanding.PerFace.Millimetres), Measured.Length(2 * grown)));
        if (strip.DustShare > 0.35)
            yield return new(Weight.Note, ring.Name, Sentence.Of("{0} of the strip becomes sawdust: a thinner blade saves wood.", Measured.Share(strip.DustShare)));
        foreach (Finding finding in SpareNotes(ring, shop, book)) yield return finding;
    }

    /// <summary>Whether the pattern of woods comes out even.</summary>
    public static IEnumerable<Finding> Pattern(Ring ring)
    {
        if (ring.Around % ring.Cycle.Length != 0)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of("{0} segments do not divide evenly by a pattern of {1} woods: where the pattern meets its start it jumps.", Measured.Count(ring.Around), Measured.Count(ring.Cycle.Length)));
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
        foreach (Figure figure in book.Figures.Where(f => f.Name.EndsWith("/to-saw", StringComparison.Ordinal)))
        {
            int needed = (int)figure.Why.Inputs[0].Value;
            double usual = Spares.ChanceOfEnough(needed, needed + Spares.UsualSpares, shop.Hands.Loss);
            yield return new(Weight.Note, ring.Name, Sentence.Of($"{Sentence.Escape(figure.Label)}: {{0}}, {{1}} of them spare. With the usual {{2}} spares they would be enough with a chance of {{3}}.",
                Measured.Count((int)figure.Value), Measured.Count((int)figure.Value - needed), Measured.Count(Spares.UsualSpares), Measured.Share(usual)));
        }
    }

    private static string Largest(ClosingBudget budget) => budget.FromCuts >= budget.FromSanding
        ? "Most of the rest comes from cut to cut: clean the fence and hold the board down."
        : "Most of the rest comes from uneven sanding: sand less, or in a holder.";

    private static double RoundDown(double millimetres) => Math.Floor((millimetres * 20) + 1e-9) / 20;
}
