using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What the maker should know about a plain layer before sawing.</summary>
internal static class LayerFindings
{
    public static IEnumerable<Finding> Of(SolidLayer layer, IEnumerable<Ring> beside, Shop shop, FigureBook book)
    {
        // Glued to a ring of segments, how far it moves and what that does is computed with the wood's movement.
        if (layer.IsVeneer || beside.All(r => r.Around == 1)) yield return Movement(layer, book);
        yield return Width(layer, shop, book);
    }

    private static Finding Movement(SolidLayer layer, FigureBook book) => layer.IsVeneer
        ? Note(layer, Sentence.Of("A veneer of {0} is too thin to pull at a joint: it follows what it is glued to, its grain in any direction.", Measured.Length(layer.Thickness.Millimetres)))
        : Note(layer, Sentence.Of("Solid wood swells and shrinks across its grain and hardly along it: a disc of {0} does not stay quite round.", book["round"].Measured));

    private static Finding Width(SolidLayer layer, Shop shop, FigureBook book)
    {
        Measured needed = Measured.Length(book["board-width"].Value);
        string what = layer.IsVeneer ? "sheet" : "board";
        if (shop.Boards.Width is not Length width)
            return Note(layer, Sentence.Of($"It takes a {what} {{0}} wide; narrower ones are glued edge to edge first, grain the same way.", needed));
        int across = (int)book["boards-across"].Value;
        return across == 1
            ? Note(layer, Sentence.Of($"One {what} of {{0}} is wide enough.", Measured.Length(width.Millimetres)))
            : Note(layer, Sentence.Of($"It takes {{0}} of width and a {what} has {{1}}: {{2}} are glued edge to edge first, grain the same way.", needed, Measured.Length(width.Millimetres), Measured.Count(across)));
    }

    private static Finding Note(SolidLayer layer, Sentence sentence) => new(Weight.Note, layer.Name, sentence);
}
