using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What to do to glue one ring, in order. Common practice, no source, but for the numbers.</summary>
internal static class RingGlueSteps
{
    /// <summary>The steps for each of some rings that are glued alike.</summary>
    public static IEnumerable<Sentence> Closed(IReadOnlyList<RingGluing> alike, Shop shop)
    {
        RingGluing gluing = alike[0];
        if (gluing.Ring.Lamination is not null) yield return Lamination(gluing);
        yield return gluing.Ring.Stave is null
            ? Sentence.Of("Lay a flat plate with waxed paper. Dry-fit once more with the clamp on, and tap the pieces down on the plate.")
            : Sentence.Of("Lay the staves side by side, outside up, their ends on one line; tape across every joint, turn the row over, and try it round once without glue.");
        foreach (GlueStage stage in gluing.Stages.Where(s => s.Work != GlueWork.Close)) yield return Stage(stage, gluing);
        if (gluing.Way == GlueWay.Halves) yield return Truing(alike);
        if (gluing.Way == GlueWay.FitLast) yield return Sentence.Of("Put the last piece into the gap that is left, sand it until it just goes in all along, both faces touching. Keep one spare for it that is a little too wide.");
        yield return Closing(gluing, shop);
        yield return Sentence.Of("Leave the clamp on for {0}. Let the ring lie for {1} from closing before you flatten it: sanded earlier, the joints sink later.", Time(shop.Adhesive.ClampTime), Time(shop.Adhesive.CureTime));
        yield return Flattening(alike, shop);
        if (gluing.Ring.Board is BoardGroupPlan board)
            yield return Sentence.Of($"It is then the disc {Sentence.Escape(board.Name)}: saw its rings out of it as the board's sheet says.");
    }

    public static IEnumerable<Sentence> PieceByPiece(RingPlan ring, Shop shop)
    {
        yield return Sentence.Of("{0} pieces that do not touch each other: each is glued to the neighbouring ring by itself, on the drawn steps, a waxed spacer beside it. Glue on the middle of its face only, so that none is squeezed into the gaps.", Measured.Count(ring.Ring.Around));
        yield return Sentence.Of("Hold each for half a minute; the open time counts for one piece at a time. Then a flat plate and the press over all of them for {0}.", Time(shop.Adhesive.ClampTime));
    }

    public static IEnumerable<Sentence> FromDisc(RingPlan ring) =>
        [Sentence.Of($"Nothing to glue: it is sawn out of the disc {Sentence.Escape(ring.Board!.Name)}, which is glued with {Sentence.Escape(ring.Board.Carrier.Name)}.")];

    public static IEnumerable<Sentence> Edges(int boards) =>
        [Sentence.Of("Glue {0} boards edge to edge, grain the same way, flat under cauls, before the round is sawn.", Measured.Count(boards))];

    /// <summary>What a run of so many pieces of a ring is called.</summary>
    /// <param name="size">Pieces in the run.</param>
    /// <param name="ring">The ring it is a part of.</param>
    public static string RunName(int size, RingGluing ring) => size switch
    {
        _ when ring.Way == GlueWay.Halves && size == ring.GlueUps[..^1].Max(g => g.Made[0].Count) => "half",
        2 => "pair",
        _ when 3 * size == ring.Pieces => "third",
        _ when 4 * size == ring.Pieces => "quarter",
        _ => string.Create(CultureInfo.InvariantCulture, $"run of {size}"),
    };

    /// <summary>The same for several of them.</summary>
    public static string RunNames(int size, RingGluing ring, int times) => times == 1 ? "one " + RunName(size, ring) : string.Create(CultureInfo.InvariantCulture, $"{times} ") + (RunName(size, ring) switch
    {
        "half" => "halves",
        string run when run.StartsWith("run", StringComparison.Ordinal) => "runs" + run[3..],
        string name => name + "s",
    });

    private static Sentence Stage(GlueStage stage, RingGluing gluing)
    {
        if (stage.Work == GlueWork.Halves)
            return Sentence.Of("Glue both halves at once, {0} joints in all, with waxed paper in the two joints between them, which stay dry; band around all, so that each half keeps the other in shape.", Measured.Count(stage.Joints));
        string what = RunNames(stage.Size, gluing, stage.Times), joints = stage.Joints == 1 ? "one joint" : "{0} joints";
        return stage.Clamp == GlueClamp.Rubbed
            ? Sentence.Of($"Glue {what}: spread, rub the faces together until they grip, outer edges flush, and leave them flat on the plate. No clamp.")
            : Sentence.Of($"Glue {what}, {joints} each, around a finished part of the ring or a form, flat on the plate, a band over the outside.", Measured.Count(stage.Joints));
    }

    private static Sentence Lamination(RingGluing gluing)
    {
        GlueStage[] stages = [.. RingGluing.StagesOf(gluing.Boards)];
        return Sentence.Of("Before that, the laminated boards: {0} joints face to face in {1} glue-ups, none of more than {2}; clamp across the stack between cauls, and let it cure before it is sawn.",
            Measured.Count(stages.Sum(s => s.Times * s.Joints)), Measured.Count(stages.Sum(s => s.Times)), Measured.Count(stages.Max(s => s.Joints)));
    }

    private static Sentence Truing(IReadOnlyList<RingGluing> alike) => Sentence.Of(
        "After the clamp time take the two halves apart and true each on a flat sheet or the disc sander's table until both its end faces lie in one plane: up to about {0} at the rim. Held together against a lamp, no light must show.",
        alike.Select(r => r.Find("truing")!.Measured).MaxBy(m => m.Value));

    private static Sentence Flattening(IReadOnlyList<RingGluing> alike, Shop shop)
    {
        double[] heights = [.. alike.Select(r => r.Ring.Ring.Thickness.Millimetres).Distinct()];
        string to = heights.Length == 1 ? "to a height of {1}" : "each to its own height";
        return Sentence.Of($"Flatten the face that lay on the plate first, only until it is clean, about {{0}}. Then the other, parallel to it, {to}. Never through a planer: drum, disc of abrasive, or flat sheet.",
            Measured.Fine(shop.Sanding.Flattening.Millimetres), Measured.Length(heights[0]));
    }

    private static Sentence Closing(RingGluing gluing, Shop shop)
    {
        GlueUp close = gluing.GlueUps[^1];
        string bands = close.Clamps == 1 ? "one band" : "{2} bands";
        string what = gluing.Way switch
        {
            GlueWay.AtOnce => "Glue all {0} joints in one go",
            GlueWay.Halves => "Glue the halves together, {0} joints",
            GlueWay.FitLast => "Glue the last piece in, {0} joints",
            _ => "Close the ring, {0} joints",
        };
        return Sentence.Of($"{what}: {{1}} of the {{3}} that the glue stays open. Flat on the plate, {bands} around it, tighten in turn with taps on the pieces until none stands up.",
            Measured.Count(close.Joints.Length), Measured.Time(GluePace.Minutes(close.Joints.Length, shop)), Measured.Count(close.Clamps), Time(shop.Adhesive.OpenTime));
    }

    private static Measured Time(Duration duration) => Measured.Time(duration.Minutes);
}
