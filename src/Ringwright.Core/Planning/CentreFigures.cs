using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>The opening in the middle: how large, and whether the bore takes it away.</summary>
internal static class CentreFigures
{
    public static void Add(WedgeGeometry glued, Ring ring, Shop shop, FigureBook book)
    {
        book.Add("opening-flats", "Opening in the middle, across flats", 2 * glued.InnerApothem, Quantity.Length, "2·Ai", "Ai",
            "The tips stand around this opening; it is f / tan a for a tip of f.");
        book.Add("opening-corners", "Opening in the middle, across corners", 2 * glued.InnerCorner, Quantity.Length, "2·Ai/cos(a)", "Ai a",
            "A round hole must be at least this wide to take the whole opening away; it is f / sin a for a tip of f.");
        if (ring is WedgeDisc { Bore: Length bore }) AddBore(glued, bore, shop, book);
    }

    private static void AddBore(WedgeGeometry glued, Length bore, Shop shop, FigureBook book)
    {
        double hole = book.Know("d", "diameter of the bore", bore.Millimetres, Quantity.Length);
        double wander = book.Know("v", "how far the bore may wander from the centre", shop.Wanted.BoreWander.Millimetres, Quantity.Length);
        double corner = book.Know("Ci", "distance from centre to inner corner", glued.InnerCorner, Quantity.Length);
        book.Add("bore-margin", "The bore covers the opening by", (hole / 2) - wander - corner, Quantity.Length, "d/2 − v − Ci", "d v Ci",
            "Above 0 the opening is gone after boring, even when the bore wanders.");
        book.Add("easiest-tip", "Easiest tip that the bore still takes away", Math.Max(0, 2 * ((hole / 2) - wander) * Math.Sin(glued.HalfAngle)), Quantity.Length,
            "max(0, 2·(d/2 − v)·sin(a))", "d v a",
            "The flattest tip is the easiest to hold and sand; any flatter and the bore leaves corners of the opening.");
    }
}
