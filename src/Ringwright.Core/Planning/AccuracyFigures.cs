using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How exactly to set the saw.</summary>
internal static class AccuracyFigures
{
    private const string Gathers = "All error gathers in the last joint, which opens by the radius times the error of the sum.";
    private const string Shared = "If the error is shared by all joints and each may open by the gap wanted, every wedge may be off by this.";

    /// <summary>For a ring of <paramref name="segments"/> whose joints close; <paramref name="radius"/> is the farthest end of a joint, mm.</summary>
    public static void AddClosing(int segments, double radius, Shop shop, FigureBook book)
    {
        book.Know("g", "widest joint gap wanted", shop.Wanted.JointGap.Millimetres, Quantity.FineLength);
        book.Know("R", "distance from the centre to the outer end of a joint", radius, Quantity.Length);
        Add(segments, shop.Wanted.JointGap.Millimetres / radius, Gathers, "Angle of each wedge within, if every joint may gape", Shared, book);
    }

    /// <summary>For open segments: the last gap may differ from the others by g at R, both known to the book.</summary>
    public static void AddOpen(int segments, double limit, FigureBook book) => Add(segments, limit,
        "Laid from spacer to spacer all error gathers in the last gap, which changes by the radius times the error of the sum.",
        "Angle of each wedge within, if each lies on its own line",
        "On lines drawn beforehand a gap shows the error of its own two segments only.", book);

    /// <summary>The same accuracy on the rule, for the fence of one batch.</summary>
    public static void AddRule(double halfAngle, FigureBook book) =>
        book.Add("rule-accuracy", "Read the rule to within", book.Known("M") * book.Known("f") / (Math.Cos(halfAngle) * Math.Cos(halfAngle)), Quantity.FineLength,
            "M·f/cos(a)^2", "M f a", "The same accuracy as an offset at distance M from the pivot.", Sources.SmallAngle);

    private static void Add(int segments, double limit, string gathers, string sharedLabel, string shared, FigureBook book)
    {
        book.Know("L", "error of the sum of all wedges that is allowed", limit, Quantity.FineAngle);
        book.Add("closing-limit", "All wedges together within", limit, Quantity.FineAngle, "g/R", "g R", gathers, Sources.SmallAngle);
        book.Add("angle-per-wedge", "Angle of each wedge within", limit / segments, Quantity.FineAngle, "L/N", "L N",
            "A setting error is the same in every wedge, so it counts N times.", Sources.SmallAngle);
        double fence = book.Add("angle-per-fence", "Angle of each fence within", limit / (2 * segments), Quantity.FineAngle, "L/(2·N)", "L N",
            "Each wedge has two faces, so an equal error of both fences counts 2 N times.", Sources.SmallAngle);
        book.Know("f", "angle of each fence within", fence, Quantity.FineAngle);
        book.Add("angle-per-wedge-shared", sharedLabel, limit, Quantity.FineAngle, "g/R", "g R", shared, Sources.SmallAngle);
    }
}
