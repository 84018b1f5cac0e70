using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>Plans discs and rings of equal wedges that close.</summary>
internal static class ClosedRing
{
    /// <summary>The plan, <paramref name="slip"/> mm of the strip left out behind each wedge.</summary>
    public static RingPlan Plan(Ring ring, Shop shop, double slip = 0)
    {
        var book = new FigureBook();
        WedgeGeometry glued = SizeFigures.Glued(ring, shop, book);
        WedgeGeometry sawn = glued.BeforeSanding(shop.Sanding.PerFace.Millimetres);
        StripLayout strip = StripOf(sawn, shop) with { Slip = slip };
        SizeFigures.Add(glued, sawn, ring, shop, book);
        SettingFigures.Add(glued, sawn, shop, book);
        AccuracyFigures.AddClosing(ring.Around, glued.OuterCorner, shop, book);
        AccuracyFigures.AddRule(glued.HalfAngle, book);
        CentreFigures.Add(glued, ring, shop, book);
        ImmutableArray<WoodNeed> woods = WoodFigures.Add(strip, ring.Name, [.. Enumerable.Range(0, ring.Around).Select(ring.WoodOf)], shop, book);
        // Wedges with wood left out between them have both their cuts to themselves.
        int runs = slip > 0 ? ring.Around : woods.Sum(w => w.Boards);
        ClosingBudget budget = ClosingBudget.Of(glued, runs, shop);
        ClosingFigures.KnowEqual(budget, runs, ClosingBudget.SandingTurn(glued, shop), shop, book);
        ClosingFigures.Add(budget, ClosingTerms.Equal, ClosingWords.Joints, shop, book);
        ImmutableArray<Finding> findings = [.. Findings.Of(ring, glued, strip, budget, shop, book).OrderByDescending(f => f.Weight)];
        return new(ring, [new(glued, strip, [.. Enumerable.Range(0, ring.Around)])], woods, WedgeLayout.Equal(ring, glued, strip, shop), book.Figures, [.. CutSteps.Of(ring, shop, book)], findings);
    }

    /// <summary>How wedges as sawn lie in this shop's strips.</summary>
    public static StripLayout StripOf(WedgeGeometry sawn, Shop shop) =>
        new(sawn, shop.Saw.Kerf.Millimetres, shop.Saw.EndTrim.Millimetres, shop.Saw.HoldingLength.Millimetres);
}
