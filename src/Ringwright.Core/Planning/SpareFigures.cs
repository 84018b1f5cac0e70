using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Planning;

/// <summary>How many wedges (or staves) of one wood to saw so that enough are good, and how far the usual spares would go.</summary>
internal static class SpareFigures
{
    /// <summary>Enters the figures and gives the number to saw. The book already knows n, the wedges needed, and C, the chance wanted.</summary>
    public static int Add(string wood, int needed, double confidence, WedgeLoss loss, FigureBook book, string piece = "wedge")
    {
        int toSaw = loss.ToSaw(needed, confidence);
        (string law, string symbols, string source) = Law(loss, piece, book);
        book.AddFound($"{wood}/to-saw", $"{char.ToUpperInvariant(piece[0])}{piece[1..]}s of {wood} to saw", toSaw, Quantity.Count, $"least m with P({Good(law, "m")} ≥ n) ≥ C", $"n {symbols} C", Reason(loss, piece), source);
        book.Know("t", "usual spares", Spares.UsualSpares, Quantity.Count);
        book.Add($"{wood}/usual-enough", $"Chance that {Spares.UsualSpares} spares of {wood} are enough", loss.ChanceOfEnough(needed, needed + Spares.UsualSpares), Quantity.Share,
            $"P({Good(law, "n + t")} ≥ n)", $"n t {symbols}", "Two spares are usual; common practice, no source.", source);
        return toSaw;
    }

    // Both laws count good wedges, so that one formula reads like the other.
    private static (string Law, string Symbols, string Source) Law(WedgeLoss loss, string piece, FigureBook book)
    {
        book.Know("l", loss.Worth is null ? $"chance that a {piece} is lost" : $"chance that a {piece} is lost, learned from the record", loss.Share, Quantity.Share);
        if (loss.Worth is not double worth) return ("Binomial({0}, 1 − l)", "l", Sources.Binomial);
        book.Know("w", $"{piece}s this loss is known from, seen and believed", worth, Quantity.Ratio);
        return ("BetaBinomial({0}, (1 − l)·w, l·w)", "l w", Sources.BetaBinomial);
    }

    private static string Good(string law, string sawn) => law.Replace("{0}", sawn, StringComparison.Ordinal);

    private static string Reason(WedgeLoss loss, string piece) => loss.Worth is null
        ? $"Some {piece}s are flung, chipped or burnt; this many leave enough with the wanted chance. Two spares are usual."
        : $"Some {piece}s are flung, chipped or burnt. How many is known only from the record, so this many leave enough even if the record was a lucky one. Two spares are usual.";
}
