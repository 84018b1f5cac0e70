using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What to do before the wedges are sawn: strips, gluing, the slab; and what to do with the wedges.</summary>
internal static class LaminationSteps
{
    private const int MostKinds = 4; // named one by one; more are read from the table of strips

    public static IEnumerable<Sentence> Before(LaminatedRing ring, Lamination board, FigureBook book)
    {
        foreach (Sentence step in Strips(board, book)) yield return step;
        yield return Sentence.Of($"Lay the strips face to face in their order, {Order(ring)}, {{0}} times for all boards. Glue the faces, keep the edges flush, clamp across the stack between cauls.", book["lamination-repeats"].Measured);
        if (board.Angle != 0) yield return Shifts(ring, board);
        yield return Sentence.Of("Let the glue cure before you saw: as long as its sheet says; a day is common practice.");
        yield return Sentence.Of(board.Angle == 0
            ? "Saw both faces flat, {0} apart, square to the glue lines, the stack held in a sled with clamps; then plane it."
            : "Saw the slab out of the stairs, {0} thick, the stack held against a fence at {1} so that the blade crosses the glue lines at that angle from square; then plane it.",
            book["slab-thickness"].Measured, Measured.Angle(Math.Abs(board.Angle)));
        yield return Sentence.Of("A stack glued of short strips can break at a joint: no planer under the length its manual asks for. Screw or glue the slab to a carrier board, or flatten it on a drum or a flat sheet.");
    }

    private static IEnumerable<Sentence> Strips(Lamination board, FigureBook book)
    {
        if (board.Kinds.Length > MostKinds)
            return [Sentence.Of("Rip wood for {0} kinds of strips to {1}, plane each kind to its thickness and crosscut it as the table of strips says, {2} in all; the grain runs along the crosscut length.",
                Measured.Count(board.Kinds.Length), book["strip-width"].Measured, Measured.Count(board.Kinds.Sum(k => k.Count)))];
        return board.Kinds.Select(kind => Sentence.Of($"{Sentence.Escape(kind.Wood)}: plane to {{0}}, rip to {{1}}, crosscut {{2}} strips of {{3}} along the grain.",
            Measured.Length(kind.Thickness), book["strip-width"].Measured, Measured.Count(kind.Count), Measured.Length(kind.Height)));
    }

    private static Sentence Shifts(LaminatedRing ring, Lamination board)
    {
        string way = ring.Recut.Radians > 0 ? "up" : "down";
        Measured angle = Measured.Angle(Math.Abs(board.Angle));
        if (board.Kinds.Length > MostKinds)
            return Sentence.Of($"Shift each strip {way} along the one before it, by what the table of strips says, against a block sawn to {{0}}.", angle);
        string each = string.Join(", ", board.Kinds.Select((kind, i) => $"{Sentence.Escape(kind.Wood)} by {{{i + 1}}}"));
        return Sentence.Of($"Shift each strip {way} along the one before it, against a block sawn to {{0}}: {each}.", [angle, .. board.Kinds.Select(k => Measured.Length(k.Stagger))]);
    }

    public static IEnumerable<Sentence> Sawing(LaminatedRing ring, Lamination board)
    {
        if (board.Matched)
            yield return Sentence.Of("Start every segment at the same glue line: {0} from middle to middle along the board. Saw off what lies between, then bring the line to a mark on the fence.", Measured.Length(board.Pitch));
        if (ring.Mirrored)
            yield return Sentence.Of("Keep the faces up as they fall: wedges with their rim at one edge show the lines leaning one way, those from the other edge the other way. Set them in turn, and the lines meet in peaks.");
        else if (MotifBand.SkipsWedges(ring))
            yield return Sentence.Of("Use the wedges whose rim was at one edge of the board only, every second one. The others show the lines leaning the other way, however they are turned: {0} of them make a second ring, or laminate a second board in mirror and take the other half of it.", Measured.Count(ring.Segments));
        else
            yield return Sentence.Of("Turn every second wedge over, top to bottom: its strips then follow in the same order.");
    }

    private static string Order(LaminatedRing ring)
    {
        const int Most = 8;
        string[] woods = [.. ring.Strips.Take(Most).Select(s => Sentence.Escape(s.Wood))];
        return string.Join(", ", woods) + (ring.Strips.Length > Most ? " and so on" : "");
    }
}
