namespace Ringwright.Core.Planning;

/// <summary>From the glued flat disc to the stack of its rings, in order. Common practice, no source.</summary>
internal static class BoardSteps
{
    /// <summary>All rings of the board, after its wedges are glued.</summary>
    public static IEnumerable<Sentence> Of(BoardGroupPlan board, FigureBook book)
    {
        string name = Sentence.Escape(board.Name);
        yield return Sentence.Of($"Glue the wedges to the flat disc {name} and flatten both faces to {{0}}. Mark one face as the wide face: it stays up at the saw.", Measured.Length(board.Thickness));
        yield return Sentence.Of("Draw on the wide face, from one centre, the inside of each ring: " + Rounds(board) + ".", [.. board.Rings.Select(r => Measured.Length(2 * r.Wide.Inner))]);
        yield return Sentence.Of("Draw one line across all rings along a joint, so that each can be turned by half a segment later.");
        foreach (Sentence tilt in Tilts(board)) yield return tilt;
        yield return Sentence.Of("Drill each start hole of {0} at the same tilt, from the wide face, in the middle of the slot inside the line, at a joint. With a bandsaw leave the disc in two halves instead, saw each half from its joint, and glue the half rings.", book["start-hole"].Measured);
        yield return Sentence.Of("Saw with the centre on the low side of a tilted table, so that the blade's upper end leans away from the centre. Try it on scrap of the same thickness first: the ring that falls must be wider at its upper face.");
        yield return Sentence.Of("Saw from the outside in, the largest ring first: " + Order(board) + ". The rest stays one piece to hold.");
        foreach (Sentence stacking in Stacking(board)) yield return stacking;
    }

    /// <summary>One ring besides the carrier.</summary>
    public static IEnumerable<Sentence> One(BoardGroupPlan board, SawnBoardRing ring)
    {
        yield return Sentence.Of($"Saw it out of {Sentence.Escape(board.Name)} as ring {{0}} of {{1}}; wedges and order are with {Sentence.Escape(board.Carrier.Name)}.",
            Measured.Count(board.Rings.IndexOf(ring) + 1), Measured.Count(board.Rings.Length));
        yield return Stack(ring);
    }

    private static string Rounds(BoardGroupPlan board) => string.Join(", ", board.Rings.Select((r, i) => $"{Sentence.Escape(r.Ring.Name)} {{{i}}}"));

    private static string Order(BoardGroupPlan board) => string.Join(", ", board.Rings.Select(r => Sentence.Escape(r.Ring.Name)));

    private static IEnumerable<Sentence> Tilts(BoardGroupPlan board)
    {
        double[] tilts = [.. board.Tilts];
        if (tilts is [0]) return [Sentence.Of("Leave the table level: all cuts are upright.")];
        if (tilts is [double only]) return [Sentence.Of("Tilt the table to {0} for all cuts.", Measured.Angle(only))];
        return board.Rings.Select(r => Sentence.Of($"For the cut inside {Sentence.Escape(r.Ring.Name)} tilt the table to {{0}}.", Measured.Angle(r.Inside.Tilt)));
    }

    private static IEnumerable<Sentence> Stacking(BoardGroupPlan board)
    {
        yield return Sentence.Of("The flat faces carry the glue: leave the sawn slopes for the lathe. Centre each ring on the one below before the clamp goes on.");
        foreach (SawnBoardRing ring in board.Rings.Reverse()) yield return Stack(ring);
    }

    private static Sentence Stack(SawnBoardRing ring)
    {
        double part = ring.Ring.Shift - Math.Floor(ring.Ring.Shift);
        string turned = part switch { 0 => "not turned", 0.5 => "turned by half a segment", _ => "turned by {0} of a segment" };
        return Sentence.Of($"{Sentence.Escape(ring.Ring.Name)}: wide face {(ring.WideUp ? "up" : "down")}, {turned}.", Measured.Share(part));
    }
}
