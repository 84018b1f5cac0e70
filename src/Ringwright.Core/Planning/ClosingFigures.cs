using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>Whether the ring will close at the first try, and what is worth improving.</summary>
internal static class ClosingFigures
{
    public static ClosingBudget Add(WedgeGeometry glued, int boards, Shop shop, FigureBook book)
    {
        ClosingBudget budget = ClosingBudget.Of(glued, boards, shop);
        CutRuns runs = ClosingBudget.Runs(glued.Segments, boards, shop.Sled.Kind);
        string hands = shop.Hands.Basis is null ? "starting value" : "learned from the record";
        book.Know("r", "runs of wedges that share their cuts", runs.Runs, Quantity.Count);
        book.Know("σ", $"spread of the angle from cut to cut ({hands})", shop.Hands.AngleSd.Radians, Quantity.FineAngle);
        book.Know("σf", "spread of setting one fence", shop.Hands.SettingSd.Radians, Quantity.FineAngle);
        book.Know("F", "2 with two fences, 4 when both faces use one fence", ClosingBudget.Fences(shop.Sled.Kind) == 2 ? 2 : 4, Quantity.Count);
        book.Know("τ", "turn of a face by uneven sanding", ClosingBudget.SandingTurn(glued, shop), Quantity.FineAngle);
        book.Know("β", $"constant error of every cut ({hands})", shop.Hands.AngleBias.Radians, Quantity.FineAngle);
        book.Know("m", "expected closing error", book.Add("closing-mean", "Expected closing error", budget.Mean, Quantity.FineAngle, "-2·N·β", "N β",
            "Above 0 the ring opens at the rim, below 0 at the centre.", Sources.Chain), Quantity.FineAngle);
        book.Know("S", "spread of the closing error", book.Add("closing-spread", "Spread of the closing error", budget.Sd, Quantity.FineAngle,
            "sqrt((4·N − 2·r)·σ^2 + N^2·F·σf^2 + 2·N·τ^2)", "N r σ F σf τ",
            "Neighbours share a cut, so its error counts twice; setting the fence counts in every wedge; each face is sanded by itself.", Sources.Chain), Quantity.FineAngle);
        book.Add("chance-to-close", "Chance that it closes at the first try", budget.Chance, Quantity.Share, "Φ((L − m)/S) − Φ((−L − m)/S)", "L m S",
            "The closing error is normal, and all of it gathers in the last joint. Two halves whose faces are trued always close.", Sources.Chain);
        book.Know("Sc", "spread without setting the fences", budget.Corrected.Sd, Quantity.FineAngle);
        if (budget.Corrected.Sd > 0)
            book.Add("chance-after-correction", "The same, once a test half has corrected the fences", budget.Corrected.Chance, Quantity.Share, "Φ(L/Sc) − Φ(-L/Sc)", "L Sc",
                "A test half shows what is constant in all cuts; what scatters from cut to cut stays.", Sources.Chain);
        AddShares(budget, book);
        return budget;
    }

    private static void AddShares(ClosingBudget budget, FigureBook book)
    {
        double all = budget.Variance;
        if (all == 0) return;
        book.Add("share-from-setting", "Share of the spread from setting the fences", budget.FromSetting / all, Quantity.Share, "N^2·F·σf^2/S^2", "N F σf S",
            "What is worth improving first is the largest of the three shares.", Sources.Chain);
        book.Add("share-from-cuts", "Share of the spread from cut to cut", budget.FromCuts / all, Quantity.Share, "(4·N − 2·r)·σ^2/S^2", "N r σ S",
            "Seating the board, chips at the fence, a wandering blade.", Sources.Chain);
        book.Add("share-from-sanding", "Share of the spread from uneven sanding", budget.FromSanding / all, Quantity.Share, "2·N·τ^2/S^2", "N τ S",
            "The shorter the face, the more an uneven stroke turns it.", Sources.Chain);
    }
}
