using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What to do at the saw, in order, for each way of holding the board.</summary>
internal static class CutSteps
{
    public static IEnumerable<Sentence> Of(Ring ring, Shop shop, FigureBook book) =>
    [
        .. Milling(book), .. Settings(shop, book), .. FirstCut(), .. Sawing(shop), .. Ending(shop),
        .. ring is OpenRing ? Plate(ring, book) : [Sentence.Of("Lay half the ring dry, {0} wedges, against a straightedge before you saw the rest.", Measured.Count(ring.Around / 2))],
    ];

    /// <summary>From the board to the strip.</summary>
    public static IEnumerable<Sentence> Milling(FigureBook book)
    {
        yield return Sentence.Of("Plane each board to {0} and rip it to {1}; edges parallel, faces flat.", book["board-thickness"].Measured, book["board-width"].Measured);
        yield return Sentence.Of("Draw one line along the face that stays up, the whole length of the board: it ends on every wedge and keeps the faces up.");
    }

    /// <summary>Fence and stop of the batch the book is at.</summary>
    public static IEnumerable<Sentence> Settings(Shop shop, FigureBook book)
    {
        yield return Sentence.Of(SetFence(shop.Sled.Kind), book["mitre"].Measured, book["rule-offset"].Measured, Measured.Length(shop.Sled.RuleDistance.Millimetres));
        yield return Sentence.Of("Set the stop {0} from the blade, along the fence.", book["stop"].Measured);
    }

    /// <summary>The cut before the first wedge.</summary>
    public static IEnumerable<Sentence> FirstCut() => [Sentence.Of("Saw the board's end square, then make the first angled cut and throw its offcut away.")];

    /// <summary>When to stop, and what to sand.</summary>
    public static IEnumerable<Sentence> Ending(Shop shop)
    {
        yield return Sentence.Of("Stop when the shortest edge of the rest is {0}: it cannot be held safely any more.", Measured.Length(shop.Saw.HoldingLength.Millimetres));
        if (shop.Sled.Kind != SledKind.DiscSander)
            yield return Sentence.Of("Sand {0} off each joint face, no more: only the burr and the saw marks.", Measured.Fine(shop.Sanding.PerFace.Millimetres));
    }

    private static IEnumerable<Sentence> Plate(Ring ring, FigureBook book)
    {
        yield return Sentence.Of("Draw two circles around one centre on a flat plate, {0} and {1} across, and step {2} off around the outer one: {3} steps come back to the start. Cover the plate with waxed paper.",
            book["plate-circle"].Measured, book["plate-inner-circle"].Measured, book["plate-step"].Measured, Measured.Count(ring.Around));
        yield return Sentence.Of("Make a few spacers, {0} wide at the rim and {1} at the inner end, {2} long, and wax them.", book["gap-at-rim"].Measured, book["gap-at-tip"].Measured, book["spacer-length"].Measured);
        yield return Sentence.Of("Lay all {0} segments dry, outer corners on the circle, each first corner on its step. Try the spacer in every gap before you glue.", Measured.Count(ring.Around));
        yield return Sentence.Of("Glue each segment to the ring below, its middle over the middle of the gap there, or as the pattern says; draw the spacers out before the glue grips them.");
    }

    private static string SetFence(SledKind kind) => kind switch
    {
        SledKind.TwoFences => "Set both fences to {0}: {1} on the rule at {2} from the pivot, one to each side of square.",
        SledKind.OneFence => "Set the fence to {0}: {1} on the rule at {2} from the pivot.",
        _ => "Set the saw's fence and the sander's fence to {0}: {1} on the rule at {2} from the pivot.",
    };

    /// <summary>How the board goes between fence and blade.</summary>
    public static IEnumerable<Sentence> Sawing(Shop shop)
    {
        switch (shop.Sled.Kind)
        {
            case SledKind.TwoFences:
                yield return Sentence.Of("Slide the board to the other fence, same face up, its long corner to the stop, and saw a wedge. Go back to the first fence for the next one. Never turn the board over.");
                yield return Sentence.Of("Number the wedges as they fall. Check the blade with a square first: if it leans, neighbours gape by twice the lean, at top and bottom in turn; only every second wedge then fits its like.");
                break;
            case SledKind.OneFence:
                yield return Sentence.Of("Turn the board over about its long axis, its long corner to the stop, and saw a wedge. Turn it over again for the next one.");
                yield return Sentence.Of("Number the wedges as they fall; every second one has the line below.");
                break;
            default:
                yield return Sentence.Of("Saw the wedges with the sawn sizes, turning the board over between cuts.");
                yield return Sentence.Of("True each face on the disc sander against its angled fence, {0} off each face.", Measured.Fine(shop.Sanding.PerFace.Millimetres));
                break;
        }
    }
}
