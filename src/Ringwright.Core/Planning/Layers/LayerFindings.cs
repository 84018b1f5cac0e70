using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What the maker should know about a plain layer before sawing.</summary>
internal static class LayerFindings
{
    // Common practice, no source: solid wood thicker than 1/4 in and wider than 3 in is not glued across segmented rings.
    private const double ThinEnough = 6.35, SmallEnough = 76.2;

    public static IEnumerable<Finding> Of(SolidLayer layer, IEnumerable<Ring> beside, Shop shop, FigureBook book)
    {
        yield return Movement(layer, beside, book);
        yield return Width(layer, shop, book);
    }

    private static Finding Movement(SolidLayer layer, IEnumerable<Ring> beside, FigureBook book)
    {
        Measured thick = Measured.Length(layer.Thickness.Millimetres), wide = Measured.Length(book["round"].Value);
        if (layer.IsVeneer)
            return Note(layer, Sentence.Of("A veneer of {0} is too thin to pull at a joint: it follows what it is glued to, its grain in any direction.", thick));
        Ring? segmented = beside.FirstOrDefault(r => r.Around > 1);
        if (segmented is null)
            return Note(layer, Sentence.Of("Solid wood swells and shrinks across its grain and hardly along it: a disc of {0} does not stay quite round.", wide));
        string name = Sentence.Escape(segmented.Name);
        if (thick.Value <= ThinEnough || wide.Value <= SmallEnough)
            return Note(layer, Sentence.Of($"Solid wood swells and shrinks across its grain; at {{0}} thick and {{1}} across it usually stays sound on {name}.", thick, wide));
        return new(Weight.Doubt, layer.Name, Sentence.Of(
            $"Solid wood {{0}} thick and {{1}} across swells and shrinks across its grain, and {name}, glued to it, does so much less: in time a joint or the layer may crack. Use a veneer, a disc of wedges, or a layer thinner than {{2}}.",
            thick, wide, Measured.Length(ThinEnough)));
    }

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
