using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>Plans layers of one piece of wood: a plain disc, or a veneer.</summary>
internal static class PlainLayer
{
    /// <summary>The layer's plan.</summary>
    /// <param name="layer">The layer, its size known.</param>
    /// <param name="beside">The layers below and above it.</param>
    /// <param name="shop">The shop.</param>
    public static RingPlan Plan(SolidLayer layer, IEnumerable<Ring> beside, Shop shop)
    {
        var book = new FigureBook();
        LayerFigures.Add(layer, shop, book);
        double length = book["board-length"].Value, board = shop.Boards.Length.Millimetres;
        if (length > board)
            throw new BadInputException($"ring {layer.Name}", $"a board of {shop.Boards.Length} is too short for a round of {layer.Outside}", $"boards of at least {Math.Ceiling(length)} mm are needed");
        int across = book.Has("boards-across") ? (int)book["boards-across"].Value : 1;
        WoodNeed wood = new(layer.Wood, 1, 1, across, across * length, board - length);
        ImmutableArray<Finding> findings = [.. LayerFindings.Of(layer, beside, shop, book).OrderByDescending(f => f.Weight)];
        return new(layer, [], [wood], [Laid(layer, book)], book.Figures, [.. LayerSteps.Of(layer, across, shop, book)], findings);
    }

    // The round lies at the board's end, trimmed, with the blade's width of wood all around it. A shift turns its grain.
    private static LaidSegment Laid(SolidLayer layer, FigureBook book)
    {
        double grain = 2 * Math.PI * layer.Shift, half = book["board-width"].Value / 2, middle = book["board-length"].Value - half;
        (double sin, double cos) = Math.SinCos(grain);
        Vector3D along = new(cos, sin, 0), across = new(-sin, cos, 0);
        return new(new(0), new(2 * Math.PI), layer.Wood, 0, 0, new(along, across, new(0, 0, 1), (-middle * along) - (half * across)));
    }
}
