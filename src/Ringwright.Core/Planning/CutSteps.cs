using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What to do at the saw, in order, for each way of holding the board.</summary>
internal static class CutSteps
{
    public static IEnumerable<Sentence> Of(Ring ring, Shop shop, FigureBook book)
    {
        yield return Sentence.Of("Plane each board to {0} and rip it to {1}; edges parallel, faces flat.", book["board-thickness"].Measured, book["board-width"].Measured);
        yield return Sentence.Of("Draw one line along the face that stays up, the whole length of the board: it ends on every wedge and keeps the faces up.");
        yield return Sentence.Of(SetFence(shop.Sled.Kind), book["mitre"].Measured, book["rule-offset"].Measured, Measured.Length(shop.Sled.RuleDistance.Millimetres));
        yield return Sentence.Of("Set the stop {0} from the blade, along the fence.", book["stop"].Measured);
        yield return Sentence.Of("Saw the board's end square, then make the first angled cut and throw its offcut away.");
        foreach (Sentence step in Sawing(shop)) yield return step;
        yield return Sentence.Of("Stop when the shortest edge of the rest is {0}: it cannot be held safely any more.", Measured.Length(shop.Saw.HoldingLength.Millimetres));
        if (shop.Sled.Kind != SledKind.DiscSander)
            yield return Sentence.Of("Sand {0} off each joint face, no more: only the burr and the saw marks.", Measured.Fine(shop.Sanding.PerFace.Millimetres));
        yield return Sentence.Of("Lay half the ring dry, {0} wedges, against a straightedge before you saw the rest.", Measured.Count(ring.Around / 2));
    }

    private static string SetFence(SledKind kind) => kind switch
    {
        SledKind.TwoFences => "Set both fences to {0}: {1} on the rule at {2} from the pivot, one to each side of square.",
        SledKind.OneFence => "Set the fence to {0}: {1} on the rule at {2} from the pivot.",
        _ => "Set the saw's fence and the sander's fence to {0}: {1} on the rule at {2} from the pivot.",
    };

    private static IEnumerable<Sentence> Sawing(Shop shop)
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
