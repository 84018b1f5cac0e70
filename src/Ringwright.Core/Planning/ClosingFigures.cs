using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How the errors of cuts, of setting and of sanding go into the formulas of one ring. The symbols must be known to the book.</summary>
/// <param name="Cuts">The factor of a cut's variance.</param>
/// <param name="Setting">The factor of a wedge's variance from setting.</param>
/// <param name="Sanding">The variance from sanding.</param>
/// <param name="CutSymbols">Symbols in <paramref name="Cuts"/>.</param>
/// <param name="SettingSymbols">Symbols in <paramref name="Setting"/>.</param>
/// <param name="SandingSymbols">Symbols in <paramref name="Sanding"/>.</param>
internal sealed record ClosingTerms(string Cuts, string Setting, string Sanding, string CutSymbols, string SettingSymbols, string SandingSymbols)
{
    /// <summary>All wedges alike.</summary>
    public static ClosingTerms Equal { get; } = new("(4·N − 2·r)", "N^2", "2·N·τ^2", "N r", "N", "N τ");

    /// <summary>Sums over batches.</summary>
    public static ClosingTerms Batches { get; } = new("c", "Q", "τs^2", "c", "Q", "τs");
}

/// <summary>What the chance is about.</summary>
internal sealed record ClosingWords(string Name, string Mean, string Chance, string Reason)
{
    public static ClosingWords Joints { get; } = new(
        "chance-to-close", "Above 0 the ring opens at the rim, below 0 at the centre.", "Chance that it closes at the first try",
        "The closing error is normal, and all of it gathers in the last joint. Two halves whose faces are trued always close.");

    public static ClosingWords Gaps { get; } = new(
        "chance-even", "Above 0 the last gap is wider than the others, below 0 narrower.", "Chance that the last gap looks like the others, laid from spacer to spacer",
        "The error of the sum is normal, and all of it gathers in the last gap. On lines drawn beforehand it is shared by all gaps.");
}

/// <summary>Whether the ring will close at the first try, and what is worth improving.</summary>
internal static class ClosingFigures
{
    public static void Add(ClosingBudget budget, ClosingTerms terms, ClosingWords words, Shop shop, FigureBook book)
    {
        string hands = shop.Hands.Basis is null ? "starting value" : "learned from the record";
        book.Know("σ", $"spread of the angle from cut to cut ({hands})", shop.Hands.AngleSd.Radians, Quantity.FineAngle);
        book.Know("σf", "spread of setting one fence", shop.Hands.SettingSd.Radians, Quantity.FineAngle);
        book.Know("F", "2 with two fences, 4 when both faces use one fence", ClosingBudget.Fences(shop.Sled.Kind) == 2 ? 2 : 4, Quantity.Count);
        book.Know("β", $"constant error of every cut ({hands})", shop.Hands.AngleBias.Radians, Quantity.FineAngle);
        book.Know("m", "expected closing error", book.Add("closing-mean", "Expected closing error", budget.Mean, Quantity.FineAngle, "-2·N·β", "N β",
            words.Mean, Sources.Chain), Quantity.FineAngle);
        book.Know("S", "spread of the closing error", book.Add("closing-spread", "Spread of the closing error", budget.Sd, Quantity.FineAngle,
            $"sqrt({terms.Cuts}·σ^2 + {terms.Setting}·F·σf^2 + {terms.Sanding})", Symbols(terms),
            "Neighbours share a cut, so its error counts twice; setting the fence counts in every wedge; each face is sanded by itself.", Sources.Chain), Quantity.FineAngle);
        book.Add(words.Name, words.Chance, budget.Chance, Quantity.Share, "Φ((L − m)/S) − Φ((−L − m)/S)", "L m S", words.Reason, Sources.Chain);
        book.Know("Sc", "spread without setting the fences", budget.Corrected.Sd, Quantity.FineAngle);
        if (budget.Corrected.Sd > 0)
            book.Add("chance-after-correction", "The same, once a test half has corrected the fences", budget.Corrected.Chance, Quantity.Share, "Φ(L/Sc) − Φ(-L/Sc)", "L Sc",
                "A test half shows what is constant in all cuts; what scatters from cut to cut stays.", Sources.Chain);
        AddShares(budget, terms, book);
    }

    /// <summary>Makes known how many runs and how large the turn by sanding is, for wedges that are all alike.</summary>
    public static void KnowEqual(ClosingBudget budget, int boards, double sandingTurn, Shop shop, FigureBook book)
    {
        book.Know("r", "runs of wedges that share their cuts", ClosingBudget.Runs(budget.Wedges, boards, shop.Sled.Kind).Runs, Quantity.Count);
        book.Know("τ", "turn of a face by uneven sanding", sandingTurn, Quantity.FineAngle);
    }

    private static string Symbols(ClosingTerms terms) =>
        string.Join(' ', $"{terms.CutSymbols} σ {terms.SettingSymbols} F σf {terms.SandingSymbols}".Split(' ').Distinct());

    private static void AddShares(ClosingBudget budget, ClosingTerms terms, FigureBook book)
    {
        double all = budget.Variance;
        if (all == 0) return;
        book.Add("share-from-setting", "Share of the spread from setting the fences", budget.FromSetting / all, Quantity.Share, $"{terms.Setting}·F·σf^2/S^2", $"{terms.SettingSymbols} F σf S",
            "What is worth improving first is the largest of the three shares.", Sources.Chain);
        book.Add("share-from-cuts", "Share of the spread from cut to cut", budget.FromCuts / all, Quantity.Share, $"{terms.Cuts}·σ^2/S^2", $"{terms.CutSymbols} σ S",
            "Seating the board, chips at the fence, a wandering blade.", Sources.Chain);
        book.Add("share-from-sanding", "Share of the spread from uneven sanding", budget.FromSanding / all, Quantity.Share, $"{terms.Sanding}/S^2", $"{terms.SandingSymbols} S",
            "The shorter the face, the more an uneven stroke turns it.", Sources.Chain);
    }
}
