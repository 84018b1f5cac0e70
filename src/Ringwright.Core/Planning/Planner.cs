using System.Collections.Immutable;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>The heart: from what is wanted and what it is made with to everything the shop needs. Pure.</summary>
public static class Planner
{
    /// <summary>Plans <paramref name="piece"/> for <paramref name="shop"/>.</summary>
    /// <exception cref="BadInputException">A ring cannot be made as it is described.</exception>
    public static Plan Plan(Piece piece, Shop shop)
    {
        PieceCheck.Check(piece);
        ShopCheck.Check(shop);
        ImmutableArray<RingPlan> rings = [.. piece.Rings.Select(ring => PlanRing(ring, shop))];
        return new(piece, shop, rings, Verdicts.Of(rings));
    }

    private static RingPlan PlanRing(Ring ring, Shop shop)
    {
        var book = new FigureBook();
        WedgeGeometry glued = SizeFigures.Glued(ring, shop, book);
        WedgeGeometry sawn = glued.BeforeSanding(shop.Sanding.PerFace.Millimetres);
        var strip = new StripLayout(sawn, shop.Saw.Kerf.Millimetres, shop.Saw.EndTrim.Millimetres, shop.Saw.HoldingLength.Millimetres);
        SizeFigures.Add(glued, sawn, ring, shop, book);
        SettingFigures.Add(glued, sawn, shop, book);
        CentreFigures.Add(glued, ring, shop, book);
        ImmutableArray<WoodNeed> woods = WoodFigures.Add(strip, ring, shop, book);
        ClosingBudget budget = ClosingFigures.Add(glued, woods.Sum(w => w.Boards), shop, book);
        ImmutableArray<Finding> findings = [.. Findings.Of(ring, glued, strip, woods, budget, shop, book).OrderByDescending(f => f.Weight)];
        return new(ring, glued, strip, woods, book.Figures, [.. CutSteps.Of(ring, shop, book)], findings);
    }
}
