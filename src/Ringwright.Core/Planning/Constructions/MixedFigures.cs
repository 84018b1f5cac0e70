using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>The numbers of a mixed ring: of the whole, and of each batch of wedges.</summary>
internal static class MixedFigures
{
    public static void AddRing(MixedRing ring, MixedCourse course, double inner, double outer, Shop shop, FigureBook book)
    {
        SizeFigures.AddBoard(outer - inner, ring, shop, book);
        SizeFigures.AddFlats(2 * outer, book);
        double aside = book.Know("h", "from the middle line of a segment to its farther outer corner, at most", course.Wedges.Max(w => w.FartherCorner(outer)), Quantity.Length);
        double corners = book.Add("across-corners", "Glued blank, across corners", 2 * Math.Sqrt((outer * outer) + (aside * aside)), Quantity.Length, "2·sqrt(Ao^2 + h^2)", "Ao h", SizeFigures.Swing);
        book.Add("opening-flats", "Opening in the middle, across flats", 2 * inner, Quantity.Length, "2·Ai", "Ai",
            "One width of strip serves all segments; the segment whose corners reach farthest sets it.");
        book.Add("opening-corners", "Opening in the middle, across corners", ring.InnerDiameter!.Value.Millimetres - (2 * (ring.Allowance ?? shop.Wanted.Allowance).Millimetres), Quantity.Length, "Di − 2·q", "Di q",
            "The farthest inner corner just leaves the allowance for turning.");
        AccuracyFigures.AddClosing(ring.Around, corners / 2, shop, book);
    }

    /// <summary>Enters the figures of one batch and returns what it needs of each wood.</summary>
    public static ImmutableArray<WoodNeed> AddBatch(MixedRing ring, ImmutableArray<CourseWedge> wedges, WedgeBatch batch, (int Number, int All) of, int piles, Shop shop, FigureBook book)
    {
        string label = of.All == 1 ? "" : $" (wedge {of.Number + 1})";
        if (of.All > 1) book.Begin(of.Number, label);
        AddAngle(wedges, batch, book);
        SizeFigures.AddWedge(batch.Glued, batch.Strip.Wedge, shop, book);
        SettingFigures.Add(batch.Glued, batch.Strip.Wedge, shop, book, "π·y", "y");
        AccuracyFigures.AddRule(batch.Glued.HalfAngle, book);
        book.Know("w", "width of the ripped board", batch.Glued.Depth, Quantity.Length);
        ImmutableArray<WoodNeed> woods = WoodFigures.Add(batch.Strip, ring.Name, [.. wedges.Select(w => w.Wood)], shop, book, of.Number, piles);
        book.BeginWhole();
        return woods;
    }

    private static void AddAngle(ImmutableArray<CourseWedge> wedges, WedgeBatch batch, FigureBook book)
    {
        CourseWedge first = wedges[0];
        WedgeGeometry glued = batch.Glued;
        book.Know("y", "its share of the turn", glued.HalfAngle / Math.PI, Quantity.Share);
        book.Add("wedge-angle", "Wedge angle", glued.WedgeAngle, Quantity.Angle, "2·π·y", "y",
            "Spacers of even thickness take nothing of the turn: the segments share all of it.");
        book.Know("a", "half the wedge's angle", glued.HalfAngle, Quantity.Angle);
        book.Know("t", "spacers at both sides together", first.Before + first.After, Quantity.Length);
        book.Add("apex-radius", "Where its faces meet, from the axis", glued.ApexRadius, Quantity.Length, "t/(4·sin(a))", "t a",
            "Each face stands half a spacer beside its ray, so a wedge beside spacers is as narrow as one of a smaller ring.", Sources.Offset);
        AddAside(wedges, book);
        if (first.Before + first.After > 0)
            book.Add("moved-by-spacers", "It moves outwards when both spacers are too thick by the joint gap", book.Known("g") / (2 * Math.Sin(glued.HalfAngle)), Quantity.Length, "g/(2·sin(a))", "g a",
                "A spacer off in thickness turns nothing, so it opens and closes no joint: the wedges slide along it, and the ring grows or shrinks.", Sources.Offset);
        book.Know("Ao", "distance from where the faces meet to the outer flat as glued", glued.OuterApothem, Quantity.Length);
        book.Know("Ai", "distance from where the faces meet to the inner flat as glued", glued.InnerApothem, Quantity.Length);
    }

    private static void AddAside(ImmutableArray<CourseWedge> wedges, FigureBook book)
    {
        CourseWedge farthest = wedges.MaxBy(w => Math.Abs(w.Aside))!;
        if (farthest.Aside == 0) return;
        book.Know("td", "difference of the spacers at its two sides", Math.Abs(farthest.Before - farthest.After), Quantity.Length);
        book.Add("apex-aside", "Where its faces meet, beside its middle line", Math.Abs(farthest.Aside), Quantity.Length, "td/(4·cos(a))", "td a",
            "With unequal spacers the segment stands a little to the side of the thinner one; it is sawn like the others.", Sources.Offset);
    }
}
