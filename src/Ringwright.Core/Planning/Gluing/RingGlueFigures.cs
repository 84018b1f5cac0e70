using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>The numbers of gluing one closed ring.</summary>
internal static class RingGlueFigures
{
    public static ImmutableArray<Figure> Of(RingGluing gluing, GluedCourse course, Shop shop)
    {
        var book = new FigureBook();
        GluePace.Add(shop, book);
        double pieces = book.Know("P", "pieces around the ring, spacers counted", course.Pieces, Quantity.Count);
        book.Add("joints", "Joints to glue", pieces, Quantity.Count, "P", "P", "Around a ring there are as many joints as pieces.");
        book.Know("G", "glue-ups", gluing.GlueUps.Length, Quantity.Count);
        book.Add("glue-minutes", "Handwork to glue it", (gluing.GlueUps.Length * shop.Gluing.MinutesPerGlueUp) + (course.Pieces * shop.Gluing.MinutesPerJoint), Quantity.Time, "G·tg + P·tj", "G tg P tj",
            "Spreading and putting together every joint, and closing every clamp; waiting not counted.", Sources.OwnRule);
        if (gluing.Way == GlueWay.Halves) AddTruing(gluing.Ring, shop, book);
        return book.Figures;
    }

    private static void AddTruing(RingPlan ring, Shop shop, FigureBook book)
    {
        book.Know("R", "distance from the centre to the outer end of a joint", ring.Glued.OuterCorner, Quantity.Length);
        book.Know("Sc", "spread of the ring's closing error, the fences corrected", ClosingBudget.Of(ring, shop).Corrected.Sd, Quantity.FineAngle);
        book.Add("truing", "Truing takes off, at the rim, up to", book.Known("R") * Math.Sqrt(2) * book.Known("Sc"), Quantity.FineLength, "R·sqrt(2)·Sc", "R Sc",
            "Each half scatters by the ring's spread over √2, and two such halves in three stay within it: twice that is what truing must reach.", Sources.Chain);
    }
}
