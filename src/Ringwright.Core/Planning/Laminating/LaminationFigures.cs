using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>The numbers of the lamination, entered behind those of the wedges.</summary>
internal static class LaminationFigures
{
    /// <summary>Wood left on each face of the laminated slab for sawing and planing it flat, mm. A rule of our own, no source.</summary>
    public const double PerFace = 1.5;

    private const string Glued = "plane geometry of parallel strips cut at an angle";

    public static Lamination Add(LaminatedRing ring, MotifPitch pitch, RingPlan wedges, Shop shop, FigureBook book)
    {
        double angle = Math.Abs(ring.Recut.Radians), slab = wedges["board-thickness"].Value;
        Know(ring, wedges, angle, shop, book);
        var bare = new Lamination(ring.Strips, ring.Recut.Radians, slab, pitch.IsMatched, pitch.Chosen, []);
        book.Know("P", "length along the board after which the pattern comes again", book.Add("pattern-repeat", "The pattern comes again after", bare.Period, Quantity.Length, "W/cos(β)", "W β",
            "Along the laminated board, and around the ring where its sides are flat.", Glued), Quantity.Length);
        AddPitch(ring, pitch, book);
        AddStep(ring, pitch, bare, book);
        AddSlab(bare, wedges, shop, book);
        book.Know("nq", "repeats of the strips", book["lamination-repeats"].Value, Quantity.Count);
        return bare with { Kinds = [.. Kinds(ring).Select((kind, i) => Kind(kind.Strip, kind.Times, i + 1, angle, slab, shop, book))] };
    }

    private static void Know(LaminatedRing ring, RingPlan wedges, double angle, Shop shop, FigureBook book)
    {
        book.Know("β", "angle of the glue lines from upright", angle, Quantity.Angle);
        book.Know("W", "thickness of all strips once through", ring.Strips.Sum(s => s.Thickness.Millimetres), Quantity.Length);
        book.Know("Tb", "thickness of the laminated board, planed", wedges["board-thickness"].Value, Quantity.Length);
        book.Know("x", "wood left on each face of the slab for sawing and planing (a rule of our own)", PerFace, Quantity.Length);
        book.Know("w", "width of the board", wedges["board-width"].Value, Quantity.Length);
        book.Know("D", "diameter to be turned", ring.Outside.Millimetres, Quantity.Length);
        book.Know("a", "half the wedge's angle, π/N", wedges.Glued.HalfAngle, Quantity.Angle);
        book.Know("k", "kerf, normal to the blade", shop.Saw.Kerf.Millimetres, Quantity.Length);
        book.Know("Lb", "length of one board", shop.Boards.Length.Millimetres, Quantity.Length);
        book.Know("e", "wood lost to square the end", shop.Saw.EndTrim.Millimetres, Quantity.Length);
        book.Know("h", "shortest rest that can be held", shop.Saw.HoldingLength.Millimetres, Quantity.Length);
    }

    private static void AddPitch(LaminatedRing ring, MotifPitch pitch, FigureBook book)
    {
        book.Know("pw", "strip each wedge takes by itself", pitch.Wedge, Quantity.Length);
        double every = book.Know("v", MotifBand.SkipsWedges(ring) ? "every second wedge is used" : "every wedge is used", MotifBand.SkipsWedges(ring) ? 2 : 1, Quantity.Count);
        book.Know("pb", "strip for each segment, not matched", book.Add("pitch-bare", "Strip for each segment, patterns not matched", pitch.Bare, Quantity.Length, "v·pw", "v pw",
            every == 1 ? "Every wedge is used." : "Wedges with their rim at the other edge show the lines leaning the other way, so every second one is left for another ring.", Sources.SawGeometry), Quantity.Length);
        // In whole repeats; the hair keeps what is whole but for rounding.
        book.AddFound("pitch-matched", "Strip for each segment, all starting at the same line", pitch.Matching, Quantity.Length, "least whole number of P that is at least pb", "P pb",
            pitch.IsMatched ? "Chosen: it costs less than as much wood again." : "Not chosen: it would cost as much wood again or more. Other strip thicknesses bring it nearer.", Glued);
    }

    private static void AddStep(LaminatedRing ring, MotifPitch pitch, Lamination bare, FigureBook book)
    {
        if (!pitch.IsMatched)
            book.Add("line-step", "From segment to segment the pattern steps by", Step(pitch.Bare, bare.Period), Quantity.Length, "pb − ceil(pb/P − 0.5)·P", "pb P",
                "Each segment starts somewhere else in the pattern: its lines do not meet its neighbour's.", Glued);
        else if (!ring.Mirrored)
            book.Add("line-step", "Where segments meet, the lines step by", Step(ring.Outside.Millimetres * Math.Sin(Math.PI / ring.Around), bare.Period), Quantity.Length, "D·sin(a) − ceil(D·sin(a)/P − 0.5)·P", "D a P",
                "On the turned outside a segment takes the chord D·sin(a); its lines run on into the next one when that is a whole number of repeats.", Sources.Geometry);
    }

    // To the nearest whole repeat, as its formula says.
    private static double Step(double length, double period) => length - (Math.Ceiling((length / period) - 0.5) * period);

    private static void AddSlab(Lamination bare, RingPlan wedges, Shop shop, FigureBook book)
    {
        WoodNeed need = wedges.Woods[0];
        int onOne = Math.Min(need.ToSaw, wedges.Strip.WedgesIn(shop.Boards.Length.Millimetres));
        double length = wedges.Strip.LengthFor(onOne);
        book.Know("u", "strip lost on every board", wedges.Strip.Overhead, Quantity.Length);
        book.Know("p", "strip used for each segment", wedges.Strip.Pitch, Quantity.Length);
        book.Know("j", "segments from one board", onOne, Quantity.Count);
        book.Know("Ls", "length of one laminated board", book.Add("lamination-length", "Length of each laminated board", length, Quantity.Length, "u + j·p", "u j p",
            "What its segments take, and what every board loses.", Sources.SawGeometry), Quantity.Length);
        book.Know("nl", "laminated boards", need.Boards, Quantity.Count);
        double last = book.Know("Le", "length of the last laminated board", wedges.Strip.LengthFor(need.ToSaw - ((need.Boards - 1) * onOne)), Quantity.Length);
        double repeats = (Repeats(length, bare) * (need.Boards - 1)) + Repeats(last, bare);
        book.Add("lamination-repeats", "Repeats of the strips to glue, all boards together", repeats, Quantity.Count,
            "ceil((Ls·cos(β) + (Tb + 2·x)·sin(β))/W)·(nl − 1) + ceil((Le·cos(β) + (Tb + 2·x)·sin(β))/W)", "Ls β Tb x W nl Le",
            "The glue lines lean, so the ends of the slab are slanted too: that takes some more strips.", Glued);
        book.Add("slab-thickness", "Saw the slab to", bare.Thickness + (2 * PerFace), Quantity.Length, "Tb + 2·x", "Tb x",
            "Out of the glued stack, at the angle; then plane it to the thickness of the board.", Sources.OwnRule);
        book.Add("strip-width", "Rip the strips to a width of", wedges["board-width"].Value + (2 * PerFace), Quantity.Length, "w + 2·x", "w x",
            "The stack is ripped to the width of the board once its edges are planed.", Sources.OwnRule);
    }

    /// <summary>How often the strips are repeated in each laminated board; together they are the figure lamination-repeats.</summary>
    public static IEnumerable<int> RepeatsOfBoards(Lamination board, RingPlan ring)
    {
        WoodNeed need = ring.Woods[0];
        int onOne = (int)ring["wedges-per-board"].Value;
        for (int left = need.ToSaw; left > 0; left -= onOne) yield return (int)Repeats(ring.Strip.LengthFor(Math.Min(left, onOne)), board);
    }

    private static double Repeats(double length, Lamination bare) =>
        Math.Ceiling(((length * Math.Cos(bare.Angle)) + ((bare.Thickness + (2 * PerFace)) * Math.Sin(Math.Abs(bare.Angle)))) / bare.Repeat);

    private static IEnumerable<(Strip Strip, int Times)> Kinds(LaminatedRing ring) =>
        ring.Strips.GroupBy(s => (s.Wood.ToUpperInvariant(), s.Thickness)).Select(g => (g.First(), g.Count()));

    private static StripNeed Kind(Strip strip, int times, int number, double angle, double slab, Shop shop, FigureBook book)
    {
        double thickness = book.Know("ti", $"thickness of the strip of {strip.Wood}", strip.Thickness.Millimetres, Quantity.Length);
        double stagger = book.Add($"strip-{number}-stagger", $"Shift of the {strip.Wood} strip along the one before", thickness * Math.Tan(angle), Quantity.Length, "ti·tan(β)", "ti β",
            "Each strip stands higher by this, so that the slab is sawn out of stairs with little waste.", Glued);
        double height = book.Know("hi", "length of the strip along the glue line", book.Add($"strip-{number}-height", $"Crosscut strips of {strip.Wood} to", ((slab + (2 * PerFace)) / Math.Cos(angle)) + stagger, Quantity.Length,
            "(Tb + 2·x)/cos(β) + ti·tan(β)", "Tb x β ti", "Along the glue line, which the grain follows: the slab's thickness measured on the slant, and the shift.", Glued), Quantity.Length);
        int perStick = (int)Math.Floor((shop.Boards.Length.Millimetres - shop.Saw.EndTrim.Millimetres - shop.Saw.HoldingLength.Millimetres + 1e-9) / (height + shop.Saw.Kerf.Millimetres));
        if (perStick < 1)
            throw new BadInputException("recut", $"strips of {Math.Round(height, 1)} mm cannot be cut from boards of {shop.Boards.Length}", "longer boards, or glue lines nearer to upright, are needed");
        book.Know("qi", "strips of this kind in one repeat", times, Quantity.Count);
        int count = (int)book.Know("ni", $"strips of {strip.Wood}", book.Add($"strip-{number}-count", $"Strips of {strip.Wood} to cut", book.Known("nq") * times, Quantity.Count, "nq·qi", "nq qi", "For all laminated boards.", Glued), Quantity.Count);
        int sticks = (count + perStick - 1) / perStick;
        book.Know("bi", "boards they are cut from", sticks, Quantity.Count);
        double length = book.Add($"strip-{number}-length", $"Board of {strip.Wood}, ripped and planed, for these strips", (sticks * (shop.Saw.EndTrim.Millimetres + shop.Saw.HoldingLength.Millimetres)) + (count * (height + shop.Saw.Kerf.Millimetres)), Quantity.Length,
            "bi·(e + h) + ni·(hi + k)", "bi e h ni hi k", "Each strip takes its length and one kerf; every board loses its end and the rest to hold.", Sources.SawGeometry);
        return new(strip.Wood, thickness, height, stagger, count, sticks, length);
    }
}
