using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>The wedge's sizes, as glued and as sawn, and the board they need.</summary>
internal static class SizeFigures
{
    public static WedgeGeometry Glued(Ring ring, Shop shop, FigureBook book)
    {
        double a = HalfAngle(ring, book);
        book.Know("D", "diameter to be turned", ring.Outside.Millimetres, Quantity.Length);
        double allowance = book.Know("q", "wood left on the radius for turning", (ring.Allowance ?? shop.Wanted.Allowance).Millimetres, Quantity.Length);
        double outer = book.Know("Ao", "distance from centre to outer flat as glued", (ring.Outside.Millimetres / 2) + allowance, Quantity.Length);
        double inner = ring switch
        {
            WedgeDisc disc => DiscInner(disc, outer, a),
            SegmentRing closed => WithWidth(closed, outer, InnerRadius(ring, allowance, outer, book) * Math.Cos(a)),
            OpenRing => InnerRadius(ring, allowance, outer, book) * Math.Cos(a),
            _ => throw new InvalidOperationException($"No inner size for {ring.GetType().Name}."),
        };
        book.Know("Ai", "distance from centre to inner flat as glued", inner, Quantity.Length);
        return new(ring.Around, outer, inner) { HalfAngle = a };
    }

    private static double HalfAngle(Ring ring, FigureBook book)
    {
        double n = book.Know("N", "segments around the ring", ring.Around, Quantity.Count);
        if (ring is not OpenRing open) return book.Know("a", "half the wedge's angle, π/N", Math.PI / n, Quantity.Angle);
        double gap = book.Know("γ", "angle left open between two segments", open.Gap.Radians, Quantity.Angle);
        return book.Know("a", "half the wedge's angle, π/N − γ/2", (Math.PI / n) - (gap / 2), Quantity.Angle);
    }

    public static void Add(WedgeGeometry glued, WedgeGeometry sawn, Ring ring, Shop shop, FigureBook book)
    {
        AddBoard(glued.Depth, ring, shop, book);
        AddFlats(2 * glued.OuterApothem, book);
        book.Add("across-corners", "Glued blank, across corners", 2 * glued.OuterCorner, Quantity.Length, "2·Ao/cos(a)", "Ao a", Swing);
        if (ring is OpenRing)
            book.Add("wedge-angle", "Wedge angle", glued.WedgeAngle, Quantity.Angle, "2·π/N − γ", "N γ",
                "A wedge and a gap together are one share of the turn.");
        else
            book.Add("wedge-angle", "Wedge angle", glued.WedgeAngle, Quantity.Angle, "2·π/N", "N",
                "All wedges together make a full turn.");
        AddWedge(glued, sawn, shop, book);
    }

    /// <summary>Why the blank's corners matter.</summary>
    public const string Swing = "The lathe must swing this when it starts.";

    /// <summary>The strip that the wedges are sawn from; Ao and Ai must be known, from the ring's axis.</summary>
    public static void AddBoard(double depth, Ring ring, Shop shop, FigureBook book)
    {
        book.Know("T", "height of the ring", ring.Thickness.Millimetres, Quantity.Length);
        book.Know("c", "wood taken off each flat side after gluing", shop.Sanding.Flattening.Millimetres, Quantity.FineLength);
        book.Add("board-width", "Rip the board to a width of", depth, Quantity.Length, "Ao − Ai", "Ao Ai",
            "The width of the board becomes the radial depth of the wedge.");
        book.Add("board-thickness", "Plane the board to a thickness of", ring.Thickness.Millimetres + (2 * shop.Sanding.Flattening.Millimetres), Quantity.Length, "T + 2·c", "T c",
            "The thickness of the board becomes the height of the ring; both sides are flattened after gluing.");
    }

    /// <summary>The blank across its flats.</summary>
    public static void AddFlats(double flats, FigureBook book) =>
        book.Add("across-flats", "Glued blank, across flats", flats, Quantity.Length, "D + 2·q", "D q",
            "The largest round that can be turned from it touches the flats.");

    /// <summary>The wedge's edges; Ao and Ai must be known, from where its faces meet.</summary>
    public static void AddWedge(WedgeGeometry glued, WedgeGeometry sawn, Shop shop, FigureBook book)
    {
        book.Know("s", "wood sanded off each joint face", shop.Sanding.PerFace.Millimetres, Quantity.FineLength);
        book.Add("rim-edge", "Rim edge of the finished wedge", glued.RimEdge, Quantity.Length, "2·Ao·tan(a)", "Ao a",
            "The longest edge there is to hold and to sand.");
        book.Add("tip", "Tip of the finished wedge", glued.Tip, Quantity.Length, "2·Ai·tan(a)", "Ai a",
            "0 is a point. A flat tip is easier to sand and leaves an opening in the middle.");
        book.Know("Lo", "rim edge as sawn", sawn.RimEdge, Quantity.Length);
        book.Know("Li", "tip as sawn", sawn.Tip, Quantity.Length);
        book.Know("w", "width of the ripped board", glued.Depth, Quantity.Length);
        book.Add("sawn-rim-edge", "Rim edge as sawn", sawn.RimEdge, Quantity.Length, "2·Ao·tan(a) + 2·s/cos(a)", "Ao a s",
            "Sanding takes s off each face, so the sawn edge is longer by 2 s / cos a; unsanded, a disc of these wedges would be wider than wanted.");
        book.Add("sawn-tip", "Tip as sawn", sawn.Tip, Quantity.Length, "2·Ai·tan(a) + 2·s/cos(a)", "Ai a s",
            "What the caliper should show before sanding.");
    }

    private static double DiscInner(WedgeDisc disc, double outer, double a)
    {
        if (disc.BoardWidth is not Length width) return outer - Depth(disc.Tip ?? default, outer, a);
        return width.Millimetres <= outer
            ? outer - width.Millimetres
            : throw new BadInputException($"ring {disc.Name}, boardWidth", $"{width} is too wide, the wedges come to a point before the saw reaches the far edge",
                $"at most {Math.Round(outer, 3)} mm, half the blank, can be used");
    }

    // A wider board than needed reaches further in.
    private static double WithWidth(SegmentRing ring, double outer, double inner)
    {
        if (ring.BoardWidth is not Length width) return inner;
        string where = $"ring {ring.Name}, boardWidth";
        if (width.Millimetres < outer - inner - 1e-9)
            throw new BadInputException(where, $"{width} is too narrow for the wall and what is left for turning", $"at least {Math.Round(outer - inner, 3)} mm is needed");
        return width.Millimetres < outer
            ? outer - width.Millimetres
            : throw new BadInputException(where, $"{width} is too wide, the segments come to a point", $"less than {Math.Round(outer, 3)} mm, half the blank, can be used");
    }

    private static double Depth(Length tip, double outer, double a)
    {
        double depth = outer - (tip.Millimetres / (2 * Math.Tan(a)));
        return depth > 0 ? depth : throw new BadInputException("tip", $"{tip} is as long as the rim edge", "a shorter tip is needed");
    }

    /// <summary>The turned hole must cut all inner corners away: they lie within its radius less the allowance, mm.</summary>
    public static double InnerRadius(Ring ring, double allowance, double outer, FigureBook book)
    {
        Length inside = (ring as IHollowRing)?.InnerDiameter ?? throw new InvalidOperationException($"Ring {ring.Name} has no inner size yet.");
        double radius = (inside.Millimetres / 2) - allowance;
        if (radius <= 0)
            throw new BadInputException($"ring {ring.Name}, innerDiameter", $"{inside} is no more than twice the allowance of {Math.Round(allowance, 3)} mm",
                "make it a wedge disc, or leave less for turning");
        book.Know("Di", "diameter to be turned inside", inside.Millimetres, Quantity.Length);
        return radius < outer ? radius : throw new BadInputException($"ring {ring.Name}, innerDiameter", "no wall is left", "a smaller inner diameter is needed");
    }
}
