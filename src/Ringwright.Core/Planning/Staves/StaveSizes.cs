using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>
/// The stave's sizes. The turned wall is taken to lean with the staves: its diameter outside is that of its wider end, its diameter
/// inside that of its narrower end. The outer flat then touches the wall with its allowance at every height; the inner corners,
/// which widen faster than the wall does, touch it at the wider end and are cut away everywhere.
/// </summary>
internal static class StaveSizes
{
    public const string Compound = "rule for work with sloping sides: tan(mitre) = sin(lean)·tan(π/N), sin(tilt) = cos(lean)·sin(π/N) (carpentry tables for crown mouldings agree)";

    public static StaveGeometry Glued(StaveRing ring, Shop shop, FigureBook book)
    {
        double lean = LeanOf(ring), height = ring.Thickness.Millimetres, a = Math.PI / ring.Segments;
        Know(ring, shop, lean, book);
        double q = (ring.Allowance ?? shop.Wanted.Allowance).Millimetres, c = shop.Sanding.Flattening.Millimetres;
        double outer = book.Know("Ao", "distance from axis to outer face at the wider end, as glued", (ring.Outside.Millimetres / 2) + q, Quantity.Length);
        double inner = book.Know("Ai", "distance from axis to inner face at the narrower end, as glued", ((Inner(ring, q) + (height * Math.Tan(lean))) * Math.Cos(a)) - (height * Math.Tan(lean)), Quantity.Length);
        double thickness = ((outer - inner) * Math.Cos(lean)) - (height * Math.Sin(lean));
        if (thickness <= 0) throw TooMuchLean(ring, outer / Math.Cos(a), Inner(ring, q));
        if (inner - (c * Math.Tan(lean)) <= 0)
            throw new BadInputException($"ring {ring.Name}, innerDiameter", "the staves come to a point on their inside before they reach the narrower end", "more staves, a larger inner diameter or less lean are needed");
        return Placed(ring, lean, outer, inner, height, c);
    }

    public static void Add(StaveGeometry glued, StaveRing ring, Shop shop, FigureBook book)
    {
        book.Know("s", "wood sanded off each joint face", shop.Sanding.PerFace.Millimetres, Quantity.FineLength);
        book.Know("t", "thickness of the board", glued.Thickness, Quantity.Length);
        book.Know("l", "length of a stave along its grain", glued.Length, Quantity.Length);
        AddBoard(glued, book);
        AddWidths(glued, glued.BeforeSanding(shop.Sanding.PerFace.Millimetres), book);
        AddRing(glued, ring, book);
    }

    // A lean that no saw could tell from none is none.
    private static double LeanOf(StaveRing ring) => Math.Abs(ring.Lean?.Radians ?? 0) is var lean && lean < StaveGeometry.Straight ? 0 : lean;

    private static void Know(StaveRing ring, Shop shop, double lean, FigureBook book)
    {
        book.Know("N", "staves around the ring", ring.Segments, Quantity.Count);
        book.Know("a", "half the angle a stave takes, π/N", Math.PI / ring.Segments, Quantity.Angle);
        book.Know("D", "diameter to be turned, outside, at the wider end", ring.Outside.Millimetres, Quantity.Length);
        book.Know("Di", "diameter to be turned, inside, at the narrower end", ring.InnerDiameter?.Millimetres ?? 0, Quantity.Length);
        book.Know("q", "wood left on the radius for turning", (ring.Allowance ?? shop.Wanted.Allowance).Millimetres, Quantity.Length);
        book.Know("σ", "lean of the staves from the axis", lean, Quantity.Angle);
        book.Know("T", "height of the ring", ring.Thickness.Millimetres, Quantity.Length);
        book.Know("c", "wood taken off each end after gluing", shop.Sanding.Flattening.Millimetres, Quantity.FineLength);
    }

    private static double Inner(StaveRing ring, double allowance)
    {
        Length inside = ring.InnerDiameter ?? throw new InvalidOperationException($"Ring {ring.Name} has no inner size yet.");
        double radius = (inside.Millimetres / 2) - allowance;
        return radius > 0 ? radius : throw new BadInputException($"ring {ring.Name}, innerDiameter",
            $"{inside} is no more than twice the allowance of {Math.Round(allowance, 3)} mm", "a larger inner diameter is needed, or less left for turning");
    }

    // With corners at the outer radius the wall is used up when the lean leads from the inside to them.
    private static BadInputException TooMuchLean(StaveRing ring, double outer, double inner) => outer <= inner
        ? new($"ring {ring.Name}, innerDiameter", "no wall is left", "a smaller inner diameter is needed")
        : new($"ring {ring.Name}, lean", $"{ring.Lean} over a height of {ring.Thickness} leads the staves out of the wall between {ring.InnerDiameter} inside and {ring.Diameter} outside",
            $"less than {Math.Round(double.RadiansToDegrees(Math.Atan((outer - inner) / ring.Thickness.Millimetres)), 2)}° can be, or a larger diameter at the wider end");

    // Sizes are those of a wider top; for a wider bottom the ring stands on its head.
    private static StaveGeometry Placed(StaveRing ring, double lean, double outer, double inner, double height, double c)
    {
        bool up = (ring.Lean?.Radians ?? 0) >= 0;
        (double wide, double narrow) = up ? (height, 0.0) : (0.0, height);
        double signed = up ? lean : -lean;
        (double sin, double cos) = Math.SinCos(signed);
        return new(ring.Segments, signed, -c, height + c, (outer * cos) - (wide * sin), (inner * cos) - (narrow * sin));
    }

    private static void AddBoard(StaveGeometry glued, FigureBook book)
    {
        book.Add("board-thickness", "Plane the board to a thickness of", glued.Thickness, Quantity.Length, "(Ao − Ai)·cos(σ) − T·sin(σ)", "Ao Ai σ T",
            "The board holds the wall with its allowance: outer flat outside, inner corners inside, over the whole height.");
        book.Add("stave-length", "Length of a stave, along its grain", glued.Length, Quantity.Length, "(T + 2·c)/cos(σ)", "T c σ",
            "The ends are sawn at the lean so that the ring stands flat; both are flattened after gluing.");
    }

    private static void AddWidths(StaveGeometry glued, StaveGeometry sawn, FigureBook book)
    {
        void Widths(string wideName, string narrowName, string label, double wide, double narrow, string more, string symbols, string reason)
        {
            book.Add(wideName, "Wider end" + label, wide, Quantity.Length, "2·(Ao + c·tan(σ))·tan(a)" + more, "Ao c σ a" + symbols, reason);
            book.Add(narrowName, "Narrower end" + label, narrow, Quantity.Length, "2·(Ao − (T + c)·tan(σ))·tan(a)" + more, "Ao T c σ a" + symbols, reason);
        }

        double outerWide = glued.OuterApothem(glued.WideEnd), outerNarrow = glued.OuterApothem(glued.NarrowEnd);
        Widths("rim-edge", "tip", " of the finished stave, on its outside", glued.Width(outerWide), glued.Width(outerNarrow), "", "",
            "At slant distance x from where its edges would meet, a stave is 2·x·tan(mitre) wide.");
        Widths("sawn-rim-edge", "sawn-tip", " as sawn, on its outside", sawn.Width(sawn.OuterApothem(sawn.WideEnd)), sawn.Width(sawn.OuterApothem(sawn.NarrowEnd)), " + 2·s/cos(a)", " s",
            "Sanding takes s off each joint face, which is 2·s/cos(a) of the width.");
    }

    private static void AddRing(StaveGeometry glued, StaveRing ring, FigureBook book)
    {
        double cone = 2 * ring.Thickness.Millimetres * Math.Tan(Math.Abs(glued.Lean));
        double outer = glued.OuterApothem(glued.WideEnd) - (-glued.Bottom * Math.Tan(Math.Abs(glued.Lean)));
        book.Add("across-flats", "Glued ring at its wider end, across flats", 2 * outer, Quantity.Length, "D + 2·q", "D q",
            "The largest round that can be turned from it touches the flats.");
        book.Add("across-corners", "Glued ring at its wider end, across corners", 2 * outer / Math.Cos(glued.HalfAngle), Quantity.Length, "2·Ao/cos(a)", "Ao a",
            "The lathe must swing this when it starts.");
        book.Add("narrow-outside", "Turned outside at the narrower end, at most", ring.Outside.Millimetres - cone, Quantity.Length, "D − 2·T·tan(σ)", "D T σ",
            "The wall is taken to lean with the staves; a wall that bulges further out needs thicker boards.");
        book.Add("wide-inside", "Turned inside at the wider end, at least", (ring.InnerDiameter?.Millimetres ?? 0) + cone, Quantity.Length, "Di + 2·T·tan(σ)", "Di T σ",
            "The inside is taken to lean with the staves too.");
        book.Add("face-angle", "Angle between the outer faces of neighbours", Math.PI - (2 * glued.Tilt), Quantity.Angle, "π − 2·asin(cos(σ)·sin(a))", "σ a",
            "Check a dry pair with a bevel gauge, square across the joint.", Compound);
    }
}
