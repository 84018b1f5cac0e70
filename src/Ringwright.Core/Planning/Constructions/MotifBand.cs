using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>Plans closed rings whose segments are sawn from a laminated board: first the board, then a closed ring of it.</summary>
internal static class MotifBand
{
    /// <summary>Whether only every second wedge can be used: lines that lean, and all one way.</summary>
    public static bool SkipsWedges(LaminatedRing ring) => !ring.Mirrored && ring.Recut.Radians != 0;

    public static RingPlan Plan(LaminatedRing ring, Shop shop)
    {
        SegmentRing plain = Plain(ring);
        StripLayout strip = ClosedRing.Plan(plain, shop).Strip;
        MotifPitch pitch = MotifPitch.Of(strip, ring, ring.Strips.Sum(s => s.Thickness.Millimetres) / Math.Cos(ring.Recut.Radians));
        RingPlan wedges = ClosedRing.Plan(plain, shop, pitch.Slip);
        var book = new FigureBook();
        Lamination board = LaminationFigures.Add(ring, pitch, wedges, shop, book);
        return wedges with
        {
            Ring = ring,
            Lamination = board,
            Layout = new MotifLayout(ring, board, wedges, shop).Lay(),
            Figures = [.. wedges.Figures, .. book.Figures],
            Steps = [.. LaminationSteps.Before(ring, board, book), .. wedges.Steps, .. LaminationSteps.Sawing(ring, board)],
            Findings = [.. wedges.Findings.Concat(Findings(ring, board, book)).OrderByDescending(f => f.Weight)],
        };
    }

    private static SegmentRing Plain(LaminatedRing ring) => new()
    {
        Name = ring.Name,
        Segments = ring.Segments,
        Diameter = ring.Diameter,
        InnerDiameter = ring.InnerDiameter,
        Thickness = ring.Thickness,
        Allowance = ring.Allowance,
        Shift = ring.Shift,
        Woods = [Lamination.BoardName],
    };

    private static IEnumerable<Finding> Findings(LaminatedRing ring, Lamination board, FigureBook book)
    {
        if (ring.Mirrored && ring.Segments % 2 == 1)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of("Of {0} segments two neighbours lean alike: peaks need an even number.", Measured.Count(ring.Segments)));
        Measured bare = book["pitch-bare"].Measured, matched = book["pitch-matched"].Measured;
        if (!board.Matched)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of("The segments do not match: each takes {0} of the board, and {1} if all are to start at the same line, as much wood again or more. The pattern comes again after {2}; thinner strips match more cheaply.", bare, matched, book["pattern-repeat"].Measured));
        else if (matched.Value > bare.Value + 1e-6)
            yield return new(Weight.Note, ring.Name, Sentence.Of("So that all segments match, each takes {0} of the board instead of {1}.", matched, bare));
        if (SkipsWedges(ring))
            yield return new(Weight.Note, ring.Name, Sentence.Of("Lines that all lean one way use every second wedge: a board gives as many mirrored ones, which make a second ring."));
        if (board.Matched && !ring.Mirrored && Math.Abs(book["line-step"].Value) > 0.05)
            yield return new(Weight.Note, ring.Name, Sentence.Of("Where segments meet on the outside, the lines step by {0}. They run on when all strips are made {1} times as thick.", book["line-step"].Measured, new Measured(Scale(ring, board), Quantity.Ratio)));
        yield return new(Weight.Note, ring.Name, Sentence.Of("The strips' grain follows the glue lines, so the ring's upper and lower face are end grain: size them with thin glue before the ring is glued to its neighbours."));
    }

    // The nearest thickness at which a whole number of repeats fits a segment.
    private static double Scale(LaminatedRing ring, Lamination board)
    {
        double chord = ring.Outside.Millimetres * Math.Sin(Math.PI / ring.Segments);
        return chord / board.Period / Math.Max(1, Math.Round(chord / board.Period));
    }
}
