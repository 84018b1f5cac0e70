using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How much of each wood the staves take: rows along boards, columns across them.</summary>
internal static class StaveWoods
{
    private sealed record Yield(int Columns, int Rows, int Piles, double Confidence)
    {
        public int PerBoard => Columns * Rows;
    }

    public static ImmutableArray<WoodNeed> Add(StaveBoard board, StaveRing ring, Shop shop, FigureBook book)
    {
        AddAcross(board, shop, book);
        AddAlong(board, ring, shop, book);
        string[] woods = [.. Enumerable.Range(0, ring.Around).Select(ring.WoodOf).Distinct(StringComparer.OrdinalIgnoreCase)];
        var yield = new Yield((int)book["staves-across"].Value, (int)book["rows-per-board"].Value, woods.Length, Math.Pow(shop.Wanted.Confidence, 1.0 / woods.Length));
        return [.. woods.Select(wood => Need(wood, yield, board, ring, shop, book))];
    }

    private static void AddAcross(StaveBoard board, Shop shop, FigureBook book)
    {
        double width = book.Know("Wb", shop.Boards.Width is null ? "width of one board (a common one; the shop does not say)" : "width of one board", board.Width(shop), Quantity.Length);
        book.Know("k", "kerf, normal to the blade", board.Kerf, Quantity.Length);
        book.Know("e", "wood lost to square an edge or an end", board.Squaring, Quantity.Length);
        double rest = book.Know("ha", "shortest rest across that can be held; 0 when the piece is long enough to be held by its length", board.Across.HoldingLength - (board.Across.EndTrim - board.Squaring), Quantity.Length);
        book.Know("Lo", "wider end as sawn, outside", book["sawn-rim-edge"].Value, Quantity.Length);
        book.Know("Li", "narrower end as sawn, outside", book["sawn-tip"].Value, Quantity.Length);
        double pitch = book.Know("p", "board used across for each stave", board.Across.Pitch, Quantity.Length);
        book.Know("u", "board lost across", board.Across.Overhead, Quantity.Length);
        book.Add("strip-per-wedge", "Board used across for each stave", pitch, Quantity.Length, "(Lo + Li)/2 − t·tan(a)/cos(σ) + k/cos(a)", "Lo Li t σ a k",
            "Staves lie head to tail and outside up and down in turn, so each takes its mean width and one slanted kerf.", Sources.SawGeometry);
        book.Add("strip-overhead", "Board lost across, at its edges", board.Across.Overhead, Quantity.Length, "e + l·tan(μ) + t·tan(a)/cos(σ) + k/cos(a) + ha", "e l μ t a σ k ha",
            "Squaring the edge, the first slanted cut, and what must stay to be held.", Sources.SawGeometry);
        book.Add("dust-share", "Share of the width turned to sawdust", board.Across.DustShare, Quantity.Share, "(k/cos(a))/p", "k a p",
            "The narrower the stave, the more of the wood becomes dust.", Sources.SawGeometry);
        book.Know("na", "staves across a board", book.AddFound("staves-across", "Staves across a board", board.Columns(width), Quantity.Count, "most n with u + n·p ≤ Wb", "u p Wb",
            rest > 0 ? "The rest is narrower than one stave more, or too small to hold." : "The rest is narrower than one stave more.", Sources.SawGeometry), Quantity.Count);
    }

    private static void AddAlong(StaveBoard board, StaveRing ring, Shop shop, FigureBook book)
    {
        double length = book.Know("Lb", "length of one board", shop.Boards.Length.Millimetres, Quantity.Length);
        book.Know("h", "shortest rest that can be held", board.EndHolding, Quantity.Length);
        double row = book.Know("pr", "board used along for each row", board.RowLength, Quantity.Length);
        double lost = book.Know("ur", "board lost along", board.RowOverhead, Quantity.Length);
        book.Add("row-length", "Board used along for each row of staves", row, Quantity.Length, "l + k/cos(σ)", "l k σ",
            "The length of the stave and one kerf at the lean.", Sources.SawGeometry);
        book.Add("row-overhead", "Board lost along, at its ends", lost, Quantity.Length, "e + t·tan(σ) + h", "e t σ h",
            "Squaring the end at the lean, and the rest that must stay long enough to hold.", Sources.SawGeometry);
        int rows = board.Rows(length), across = (int)book["staves-across"].Value;
        if (rows < 1)
            throw new BadInputException($"ring {ring.Name}", $"a board of {shop.Boards.Length} yields no stave, each takes {Math.Round(row, 1)} mm and {Math.Round(lost, 1)} mm are lost to trim and holding",
                $"boards of at least {Math.Ceiling(row + lost)} mm are needed");
        if (across < 1)
            throw new BadInputException($"ring {ring.Name}", $"a board {shop.Boards.Width} wide yields no stave", $"boards at least {Math.Ceiling(board.Across.LengthFor(1))} mm wide are needed");
        book.AddFound("rows-per-board", "Rows along a board", rows, Quantity.Count, "most n with ur + n·pr ≤ Lb", "ur pr Lb",
            "The rest is shorter than one stave more, or too short to hold.", Sources.SawGeometry);
        book.Know("nr", "rows along a board", rows, Quantity.Count);
        book.Know("nb", "staves from one board", book.Add("wedges-per-board", "Staves from one board", rows * across, Quantity.Count, "na·nr", "na nr",
            "Rows along the board times staves across it.", Sources.SawGeometry), Quantity.Count);
    }

    private static WoodNeed Need(string wood, Yield yield, StaveBoard board, StaveRing ring, Shop shop, FigureBook book)
    {
        int needed = Enumerable.Range(0, ring.Around).Count(i => string.Equals(ring.WoodOf(i), wood, StringComparison.OrdinalIgnoreCase));
        book.Know("n", $"staves of {wood} in the ring", needed, Quantity.Count);
        book.Know("C", yield.Piles == 1 ? "chance wanted that they are enough" : $"chance wanted for each of {yield.Piles} woods, so that all together reach the wanted one", yield.Confidence, Quantity.Share);
        int toSaw = SpareFigures.Add(wood, needed, yield.Confidence, WedgeLoss.Of(shop.Hands), book, "stave");
        int boards = (toSaw + yield.PerBoard - 1) / yield.PerBoard, rows = (toSaw + yield.Columns - 1) / yield.Columns;
        double length = (boards * board.RowOverhead) + (rows * board.RowLength);
        book.Know("m", $"staves of {wood} to saw", toSaw, Quantity.Count);
        book.Know("b", $"boards of {wood}", boards, Quantity.Count);
        book.Add($"{wood}/boards", $"Boards of {wood}", boards, Quantity.Count, "ceil(m/nb)", "m nb", "Each board loses its ends and edges.", Sources.SawGeometry);
        book.Add($"{wood}/length", $"Board of {wood} needed, over its whole width", length, Quantity.Length, "b·ur + ceil(m/na)·pr", "b ur m na pr",
            "All rows, and the ends of every board.", Sources.SawGeometry);
        double onLast = rows - ((boards - 1) * yield.Rows);
        return new(wood, needed, toSaw, boards, length, shop.Boards.Length.Millimetres - board.RowOverhead - (onLast * board.RowLength));
    }
}
