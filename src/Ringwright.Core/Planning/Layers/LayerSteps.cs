using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How a plain disc is sawn and a veneer is cut, in order. Common practice, no source.</summary>
internal static class LayerSteps
{
    public static IEnumerable<Sentence> Of(SolidLayer layer, int across, Shop shop, FigureBook book) =>
        layer.IsVeneer ? Veneer(across, book) : Disc(across, shop, book);

    private static IEnumerable<Sentence> Disc(int across, Shop shop, FigureBook book)
    {
        if (across > 1)
            yield return Sentence.Of("Plane the edges of {0} boards true and glue them side by side, grain the same way; let the glue dry through.", Measured.Count(across));
        yield return Sentence.Of("Saw the board's end square and plane the board to {0}, both faces flat.", book["board-thickness"].Measured);
        yield return Sentence.Of("Mark the centre, draw the round of {0} with a compass, and an arrow along the grain.", book["round"].Measured);
        yield return Sentence.Of("Saw off the corners, then follow the line on its outside, on the bandsaw by hand or on a centre pin.");
        yield return Sentence.Of("Sand {0} off each face on a flat board, until all saw and planer marks are gone.", Measured.Fine(shop.Sanding.Flattening.Millimetres));
        yield return Sentence.Of("Glue it in with the arrow where the plan shows the grain, its centre on the lathe's axis.");
    }

    private static IEnumerable<Sentence> Veneer(int across, FigureBook book)
    {
        if (across > 1)
            yield return Sentence.Of("Tape {0} sheets edge to edge, grain the same way, and glue their joint.", Measured.Count(across));
        yield return Sentence.Of("Draw the round of {0} and an arrow along the grain; cut it with a knife along a template.", book["round"].Measured);
        yield return Sentence.Of("Spread glue on the wood, not on the veneer, or it curls.");
        yield return Sentence.Of("Press it between flat boards with paper between, all over, until the glue is dry: too little pressure leaves blisters.");
        yield return Sentence.Of("Flatten what is glued on lightly: {0} are soon sanded through.", book["board-thickness"].Measured);
    }
}
