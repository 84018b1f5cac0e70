using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>What to do at the saw for staves, in order.</summary>
internal static class StaveSteps
{
    public static IEnumerable<Sentence> Of(StaveGeometry glued, StaveRing ring, Shop shop, FigureBook book) =>
        [.. glued.IsUpright ? Upright(shop, book) : Leaning(ring, shop, book), .. Ending(ring, shop, book)];

    private static IEnumerable<Sentence> Upright(Shop shop, FigureBook book)
    {
        yield return Sentence.Of("Plane the boards to {0}; faces flat, one edge straight. The grain runs up the piece.", book["board-thickness"].Measured);
        yield return Sentence.Of("Tilt the blade to {0}; set it with a bevel gauge from {1} under the sine bar, and check it on a piece of scrap.", book["blade-tilt"].Measured, book["tilt-height"].Measured);
        yield return Sentence.Of("Saw a bevel along the straight edge. Use the side of the blade from which the fence leans away, so that no strip is caught under the blade.");
        yield return Sentence.Of("Set the rip fence to {0}, measured on the upper face from long corner to blade.", book["stop"].Measured);
        yield return Sentence.Of("Rip a strip, turn the board over end for end, and rip the next one: {0} strips lie in a board, the outside up and down in turn. Push stick, splitter, featherboard.", book["staves-across"].Measured);
        yield return Sentence.Of("Blade upright again: crosscut each strip to {0}, {1} from each. Keep at least {2} of the strip to hold.", book["stave-length"].Measured, book["rows-per-board"].Measured, Measured.Length(shop.Saw.HoldingLength.Millimetres));
    }

    private static IEnumerable<Sentence> Leaning(StaveRing ring, Shop shop, FigureBook book)
    {
        yield return Sentence.Of("Plane the boards to {0}; faces flat. The grain runs up the piece, so the panels are as long as a stave.", book["board-thickness"].Measured);
        yield return Sentence.Of("Tilt the blade to {0} and saw panels of {1} along the grain, both ends parallel: the fence square to the blade, the board never turned over.", book["end-tilt"].Measured, book["stave-length"].Measured);
        yield return Sentence.Of("Now tilt the blade to {0} ({1} under the sine bar) and set the fence to {2}: {3} on the rule at {4} from the pivot. One fence only: the tilt makes two fences useless.",
            book["blade-tilt"].Measured, book["tilt-height"].Measured, book["mitre"].Measured, book["rule-offset"].Measured, Measured.Length(shop.Sled.RuleDistance.Millimetres));
        yield return Sentence.Of("Square one edge of the panel, then make the first slanted cut and throw its offcut away. The blade leans away from the piece that falls, which is wider above than below.");
        yield return Sentence.Of("Set the stop {0} from the blade along the fence, measured on the upper face. Clamp the panel to the sled by its length; never hold a stave with the fingers.", book["stop"].Measured);
        yield return Sentence.Of("Turn the panel over end for end, the other end to the fence, its long corner to the stop, and saw a stave. Turn it over again for the next one: {0} lie in a panel, head to tail.", book["staves-across"].Measured);
        yield return Sentence.Of(ring.Lean is Angle { Radians: < 0 }
            ? "Mark the outside of every stave, and its wider end: it stands below."
            : "Mark the outside of every stave, and its wider end: it stands above.");
    }

    private static IEnumerable<Sentence> Ending(StaveRing ring, Shop shop, FigureBook book)
    {
        if (shop.Sanding.PerFace.Millimetres > 0)
            yield return Sentence.Of("Sand {0} off each joint face, no more: only the burr and the saw marks.", Measured.Fine(shop.Sanding.PerFace.Millimetres));
        yield return Sentence.Of("Lay the staves side by side, outside up, on tape stretched across them; roll half the ring together, {0} staves, and try its two faces on a straightedge before you saw the rest.", Measured.Count(ring.Around / 2));
        yield return Sentence.Of("Check a pair with a bevel gauge: {0} between their outer faces, square across the joint.", book["face-angle"].Measured);
        yield return Sentence.Of("Glue with bands around the outside, the lower ends on a flat plate under waxed paper; then flatten {0} off each end.", Measured.Fine(shop.Sanding.Flattening.Millimetres));
    }
}
