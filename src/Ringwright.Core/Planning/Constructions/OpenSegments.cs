using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>Plans rings of equal segments that stand apart. Their faces run through the axis, so a gap has an angle too.</summary>
internal static class OpenSegments
{
    public static RingPlan Plan(OpenRing ring, Shop shop)
    {
        var book = new FigureBook();
        WedgeGeometry glued = SizeFigures.Glued(ring, shop, book);
        WedgeGeometry sawn = glued.BeforeSanding(shop.Sanding.PerFace.Millimetres);
        StripLayout strip = ClosedRing.StripOf(sawn, shop);
        SizeFigures.Add(glued, sawn, ring, shop, book);
        SettingFigures.Add(glued, sawn, shop, book, "π/N − γ/2", "N γ");
        CentreFigures.Add(glued, ring, shop, book);
        GapFigures.Add(glued, ring, book);
        ImmutableArray<WoodNeed> woods = WoodFigures.Add(strip, ring.Name, [.. Enumerable.Range(0, ring.Around).Select(ring.WoodOf)], shop, book);
        ClosingBudget budget = Budget(glued, woods.Sum(w => w.Boards), shop, book);
        ImmutableArray<Finding> findings = [.. Of(ring, glued, strip, budget, shop, book).OrderByDescending(f => f.Weight)];
        return new(ring, [new(glued, strip, [.. Enumerable.Range(0, ring.Around)])], woods, WedgeLayout.Equal(ring, glued, strip, shop), book.Figures, [.. CutSteps.Of(ring, shop, book)], findings);
    }

    // The sum of the wedges errs as in a closed ring; only what it may err by is another.
    private static ClosingBudget Budget(WedgeGeometry glued, int boards, Shop shop, FigureBook book)
    {
        AccuracyFigures.AddOpen(glued.Segments, book["gap-difference"].Value / glued.OuterCorner, book);
        AccuracyFigures.AddRule(glued.HalfAngle, book);
        ClosingBudget budget = ClosingBudget.Of(glued, boards, shop) with { Limit = book["closing-limit"].Value };
        ClosingFigures.KnowEqual(budget, boards, ClosingBudget.SandingTurn(glued, shop), shop, book);
        ClosingFigures.Add(budget, ClosingTerms.Equal, ClosingWords.Gaps, shop, book);
        book.Add("last-gap-spread", "Spread of the last gap at the rim, laid from spacer to spacer", glued.OuterCorner * budget.Sd, Quantity.FineLength, "R·S", "R S",
            "Two gaps in three differ by less than this from what is wanted. Laid on drawn lines the N gaps share it.", Sources.SmallAngle);
        return budget;
    }

    private static IEnumerable<Finding> Of(OpenRing ring, WedgeGeometry glued, StripLayout strip, ClosingBudget budget, Shop shop, FigureBook book)
    {
        Figure rim = book["gap-at-rim"], tip = book["gap-at-tip"], differ = book["gap-difference"];
        foreach (Finding finding in Findings.Pattern(ring).Concat(Findings.Rim(ring, glued, shop))) yield return finding;
        if (budget.Corrected.Chance < ReachMap.FairChance)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of($"Laid from spacer to spacer the last gap differs by more than {{0}} in most rings, even with the fences corrected: lay the segments on drawn lines, where all gaps share the error. {Findings.Largest(budget)}", differ.Measured));
        if (tip.Value < ThinnestSpacer)
            yield return new(Weight.Note, ring.Name, Sentence.Of("The gap is only {0} at the inner ends: a spacer that thin bends, so lay the segments on drawn lines and use it as a feeler.", tip.Measured));
        if (glued.RimEdge < rim.Value)
            yield return new(Weight.Note, ring.Name, Sentence.Of("The gap at the rim, {0}, is wider than a segment, {1}.", rim.Measured, Measured.Length(glued.RimEdge)));
        yield return new(Weight.Note, ring.Name, Sentence.Of("Open segments do not close: an error of the angle makes gaps uneven. If each wedge is too wide by {0} and all start on drawn lines, every gap is narrower by {1} at the rim.", book["angle-per-wedge"].Measured, book["gap-per-wedge-error"].Measured));
        if (shop.Sanding.PerFace.Millimetres > 0)
            yield return new(Weight.Note, ring.Name, Sentence.Of("Sanding {0} off each face widens every gap by twice that; the sawn sizes allow for it.", Measured.Fine(shop.Sanding.PerFace.Millimetres)));
        foreach (Finding finding in Findings.Dust(ring, strip).Concat(Findings.SpareNotes(ring, shop, book))) yield return finding;
    }

    // Own judgement, no source: thinner strips of wood give way between two segments.
    private const double ThinnestSpacer = 0.8;
}
