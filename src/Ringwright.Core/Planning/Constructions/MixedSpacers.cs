using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>The strips of even thickness between the segments of a mixed ring.</summary>
internal static class MixedSpacers
{
    /// <summary>Spacers that are cut alike.</summary>
    public sealed record Kind(string Wood, double Thickness, double Inner, double Outer, ImmutableArray<int> Places);

    public static ImmutableArray<Kind> Kinds(MixedCourse course, double innerFlat, double outerFlat) =>
    [
        .. course.Spacers
            .Select(s => (Spacer: s, Ends: course.Ends(s.After, innerFlat, outerFlat)))
            .GroupBy(s => (s.Spacer.Wood.ToUpperInvariant(), Math.Round(s.Spacer.Thickness, 9), Math.Round(s.Ends.Inner, 6), Math.Round(s.Ends.Outer, 6)))
            .Select(g => new Kind(g.First().Spacer.Wood, g.First().Spacer.Thickness, g.First().Ends.Inner, g.First().Ends.Outer, [.. g.Select(s => s.Spacer.Place)])),
    ];

    /// <summary>Enters the figures of the kind that is number <paramref name="index"/> of <paramref name="all"/>.</summary>
    public static SpacerBatch Add(MixedRing ring, Kind kind, int index, int all, int piles, Shop shop, FigureBook book)
    {
        book.BeginWhole(Figure.SuffixOf(index), all == 1 ? "" : $" (kind {index + 1})");
        double height = book.Know("H", "thickness that the boards are planed to", ring.Thickness.Millimetres + (2 * shop.Sanding.Flattening.Millimetres), Quantity.Length);
        double length = AddSizes(kind, height, book);
        WoodNeed need = AddNeed(ring, kind, length, piles, shop, book);
        book.BeginWhole();
        return new(kind.Wood, kind.Thickness, height, kind.Inner, kind.Outer, kind.Places, need);
    }

    private static double AddSizes(Kind kind, double height, FigureBook book)
    {
        book.Know("t", "thickness of the spacer", kind.Thickness, Quantity.Length);
        book.Know("So", "distance from the axis to the spacer's outer end", kind.Outer, Quantity.Length);
        book.Know("Si", "distance from the axis to its inner end", kind.Inner, Quantity.Length);
        book.Add("spacer-thickness", $"Spacers of {kind.Wood}: plane to", kind.Thickness, Quantity.Length, "t", "t",
            "Its two faces are parallel, so it takes nothing of the turn.");
        book.Add("spacer-width", $"Spacers of {kind.Wood}: rip to", height, Quantity.Length, "H", "H",
            "The width of the strip becomes the height in the ring; its grain runs from rim to centre.");
        return book.Add("spacer-length", $"Spacers of {kind.Wood}: cut to", kind.Outer - kind.Inner, Quantity.Length, "So − Si", "So Si",
            "Long enough to cover the joint faces at both its sides and to reach the round that is turned.");
    }

    private static WoodNeed AddNeed(MixedRing ring, Kind kind, double length, int piles, Shop shop, FigureBook book)
    {
        double board = shop.Boards.Length.Millimetres, lost = shop.Saw.EndTrim.Millimetres + shop.Saw.HoldingLength.Millimetres, pitch = length + shop.Saw.Kerf.Millimetres;
        int perBoard = (int)Math.Floor((board - lost + 1e-9) / pitch);
        if (perBoard < 1)
            throw new BadInputException($"ring {ring.Name}", $"a board of {shop.Boards.Length} yields no spacer of {kind.Wood}", $"boards of at least {Math.Ceiling(lost + pitch)} mm are needed");
        int cut = WedgeLoss.Of(shop.Hands).ToSaw(kind.Places.Length, Math.Pow(shop.Wanted.Confidence, 1.0 / piles));
        int boards = (cut + perBoard - 1) / perBoard, onLast = cut - ((boards - 1) * perBoard);
        book.Know("n", "spacers of this kind in the ring", kind.Places.Length, Quantity.Count);
        book.Know("l", "chance that one is lost", shop.Hands.Loss, Quantity.Share);
        book.Know("C", $"chance wanted for each of {piles} piles, so that all together reach the wanted one", Math.Pow(shop.Wanted.Confidence, 1.0 / piles), Quantity.Share);
        book.Know("ls", "spacer and kerf", pitch, Quantity.Length);
        book.Know("us", "lost on every strip, to square it and to hold it", lost, Quantity.Length);
        book.Know("nb", "spacers from one strip", perBoard, Quantity.Count);
        book.Know("b", "strips", boards, Quantity.Count);
        book.Know("m", "spacers to cut", cut, Quantity.Count);
        book.AddFound("spacers-to-cut", $"Spacers of {kind.Wood} to cut", cut, Quantity.Count, "least m with P(Binomial(m, 1 − l) ≥ n) ≥ C", "n l C",
            "Thin strips break; this many leave enough with the wanted chance.", Sources.Binomial);
        book.Add("spacer-strips", $"Strips of {kind.Wood} for spacers", boards, Quantity.Count, "ceil(m/nb)", "m nb",
            "As long as the shop's boards.", Sources.SawGeometry);
        double strip = book.Add("spacer-strip-length", $"Strip of {kind.Wood} for spacers needed", (boards * lost) + (cut * pitch), Quantity.Length, "b·us + m·ls", "b us m ls",
            "All spacers to cut, and the ends of every strip.", Sources.SawGeometry);
        return new(kind.Wood, kind.Places.Length, cut, boards, strip, board - lost - (onLast * pitch));
    }
}
