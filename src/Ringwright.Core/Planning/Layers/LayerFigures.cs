using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What a plain layer measures, and the board or veneer it takes.</summary>
internal static class LayerFigures
{
    public static void Add(SolidLayer layer, Shop shop, FigureBook book)
    {
        bool veneer = layer.IsVeneer;
        book.Know("D", "diameter to be turned", layer.Outside.Millimetres, Quantity.Length);
        book.Know("q", "wood left on the radius for turning", (layer.Allowance ?? shop.Wanted.Allowance).Millimetres, Quantity.Length);
        book.Know("T", "height of the layer", layer.Thickness.Millimetres, Quantity.Length);
        book.Know("c", veneer ? "wood taken off each side: none of a veneer" : "wood taken off each side after sawing", veneer ? 0 : shop.Sanding.Flattening.Millimetres, Quantity.FineLength);
        book.Know("k", veneer ? "width of the cut: none, a knife cuts it" : "kerf, normal to the blade", veneer ? 0 : shop.Saw.Kerf.Millimetres, Quantity.Length);
        book.Know("e", veneer ? "wood lost at the end: none of a veneer" : "wood lost to square the end", veneer ? 0 : shop.Saw.EndTrim.Millimetres, Quantity.Length);
        AddSizes(veneer, book);
        AddAcross(shop, book);
    }

    private static void AddSizes(bool veneer, FigureBook book)
    {
        double d = book.Known("D"), q = book.Known("q"), t = book.Known("T"), c = book.Known("c"), k = book.Known("k"), e = book.Known("e");
        book.Add("round", veneer ? "Cut the round to" : "Saw the round to", d + (2 * q), Quantity.Length, "D + 2·q", "D q",
            "What is turned, and the wood left for turning all around it.", Sources.Layer);
        book.Add("board-thickness", veneer ? "Veneer thickness" : "Plane the board to a thickness of", t + (2 * c), Quantity.Length, "T + 2·c", "T c",
            veneer ? "Veneer is used as it comes." : "Both faces are sanded flat before the layer is glued in.", Sources.Layer);
        book.Add("board-width", veneer ? "Sheet of a width of" : "Board of a width of", d + (2 * q) + (2 * k), Quantity.Length, "D + 2·q + 2·k", "D q k",
            veneer ? "The round needs its full width." : "The blade runs in wood all around the round.", Sources.Layer);
        book.Add("board-length", veneer ? "Sheet of a length of" : "Board of a length of", d + (2 * q) + (2 * k) + e, Quantity.Length, "D + 2·q + 2·k + e", "D q k e",
            veneer ? "The round needs its full length." : "The round, the blade's width on both sides, and the end that is sawn off.", Sources.Layer);
    }

    private static void AddAcross(Shop shop, FigureBook book)
    {
        if (shop.Boards.Width is not Length width) return;
        double board = book.Know("Wb", "width of one board, its edges planed true", width.Millimetres, Quantity.Length);
        double wanted = book.Know("W", "width of wood the round takes", book["board-width"].Value, Quantity.Length);
        book.Add("boards-across", "Boards beside each other", Math.Ceiling(wanted / board), Quantity.Count, "ceil(W/Wb)", "W Wb",
            "More than one are glued edge to edge, grain the same way, before the round is drawn.", Sources.Layer);
    }
}
