using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>How much of each wood: wedges with spares, strip, boards, dust.</summary>
internal static class WoodFigures
{
    /// <param name="strip">How the wedges lie in their strip.</param>
    /// <param name="ring">The ring's name.</param>
    /// <param name="wedges">The wood of each wedge of the batch.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="book">Where the figures go.</param>
    /// <param name="batch">Number of the batch.</param>
    /// <param name="piles">Of how many piles (a wood of a batch, a kind of spacer) there must be enough; 0 when this batch has them all.</param>
    public static ImmutableArray<WoodNeed> Add(StripLayout strip, string ring, IReadOnlyList<string> wedges, Shop shop, FigureBook book, int batch = 0, int piles = 0)
    {
        AddStrip(strip, shop, book);
        int perBoard = strip.WedgesIn(shop.Boards.Length.Millimetres);
        if (perBoard < 1)
            throw new BadInputException($"ring {ring}", $"a board of {shop.Boards.Length} yields no wedge, {Math.Round(strip.Overhead, 1)} mm are lost to trim, first cut and holding and one wedge takes {Math.Round(strip.Pitch, 1)} mm",
                $"boards of at least {Math.Ceiling(strip.LengthFor(1))} mm are needed");
        book.Know("Lb", "length of one board", shop.Boards.Length.Millimetres, Quantity.Length);
        book.AddFound("wedges-per-board", "Wedges from one board", perBoard, Quantity.Count, "most n with u + n·p ≤ Lb", "u p Lb",
            "The rest is shorter than one wedge more, or too short to hold.", Sources.SawGeometry);
        string[] woods = [.. wedges.Distinct(StringComparer.OrdinalIgnoreCase)];
        piles = Math.Max(piles, woods.Length);
        double confidence = Math.Pow(shop.Wanted.Confidence, 1.0 / piles);
        return [.. woods.Select(wood => Need(wood, piles, confidence, perBoard, strip, wedges, shop, book) with { Batch = batch })];
    }

    private static void AddStrip(StripLayout strip, Shop shop, FigureBook book)
    {
        book.Know("k", "kerf, normal to the blade", strip.Kerf, Quantity.Length);
        book.Know("e", "wood lost to square the end", strip.EndTrim, Quantity.Length);
        book.Know("h", "shortest rest that can be held", strip.HoldingLength, Quantity.Length);
        book.Know("p", "strip used for each wedge", strip.Pitch, Quantity.Length);
        book.Know("u", "strip lost on every board", strip.Overhead, Quantity.Length);
        book.Know("y", "strip left out behind each wedge, for the pattern", strip.Slip, Quantity.Length);
        (string formula, string symbols) = strip.Slip > 0 ? ("(Lo + Li)/2 + k/cos(a) + y", "Lo Li k a y") : ("(Lo + Li)/2 + k/cos(a)", "Lo Li k a");
        book.Add("strip-per-wedge", "Strip used for each wedge", strip.Pitch, Quantity.Length, formula, symbols,
            "Wedges point to alternate edges, so each takes its middle length and one slanted kerf.", Sources.SawGeometry);
        book.Add("strip-overhead", "Strip lost on every board", strip.Overhead, Quantity.Length, "e + w·tan(a) + k/cos(a) + h", "e w a k h",
            "Squaring the end, the first angled cut, and the rest that must stay long enough to hold.", Sources.SawGeometry);
        book.Add("dust-share", "Share of the strip turned to sawdust", strip.DustShare, Quantity.Share, "(k/cos(a))/p", "k a p",
            "The smaller the wedge, the more of the wood becomes dust.", Sources.SawGeometry);
    }

    private static WoodNeed Need(string wood, int piles, double confidence, int perBoard, StripLayout strip, IReadOnlyList<string> wedges, Shop shop, FigureBook book)
    {
        int needed = wedges.Count(w => string.Equals(w, wood, StringComparison.OrdinalIgnoreCase));
        book.Know("n", $"wedges of {wood} in the ring", needed, Quantity.Count);
        book.Know("C", piles == 1 ? "chance wanted that they are enough" : $"chance wanted for each of {piles} piles, so that all together reach the wanted one", confidence, Quantity.Share);
        int toSaw = SpareFigures.Add(wood, needed, confidence, WedgeLoss.Of(shop.Hands), book);
        int boards = (toSaw + perBoard - 1) / perBoard;
        int onLast = toSaw - ((boards - 1) * perBoard);
        double length = (boards * strip.Overhead) + (toSaw * strip.Pitch);
        double leftOver = shop.Boards.Length.Millimetres - strip.LengthFor(onLast);
        book.Know("m", $"wedges of {wood} to saw", toSaw, Quantity.Count);
        book.Know("b", $"boards of {wood}", boards, Quantity.Count);
        book.Know("nb", "wedges from one board", perBoard, Quantity.Count);
        book.Add($"{wood}/boards", $"Boards of {wood}", boards, Quantity.Count, "ceil(m/nb)", "m nb",
            "Each board loses its ends, so a second short board costs more than its wedges.", Sources.SawGeometry);
        book.Add($"{wood}/length", $"Strip of {wood} needed", length, Quantity.Length, "b·u + m·p", "b u m p",
            "All wedges to saw, and the ends of every board.", Sources.SawGeometry);
        return new(wood, needed, toSaw, boards, length, leftOver);
    }
}
