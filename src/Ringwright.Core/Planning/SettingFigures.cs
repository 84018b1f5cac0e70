using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>What to set on the saw, and how exactly.</summary>
internal static class SettingFigures
{
    public static void Add(WedgeGeometry glued, WedgeGeometry sawn, Shop shop, FigureBook book)
    {
        double a = glued.HalfAngle;
        double rule = book.Know("M", "distance from the pivot at which the fence is measured", shop.Sled.RuleDistance.Millimetres, Quantity.Length);
        double bar = book.Know("B", "length of the sine bar", shop.Sled.SineBar.Millimetres, Quantity.Length);
        book.Add("mitre", "Mitre of each fence, from square", a, Quantity.Angle, "π/N", "N",
            "Both faces lean by half the wedge's angle; on two fences only their sum must be right.");
        book.Add("rule-offset", "Fence offset by the rule", rule * Math.Tan(a), Quantity.Length, "M·tan(a)", "M a",
            "At distance M from its pivot the fence stands this far from the square line.");
        book.Add("sine-bar-height", "Height under the sine bar", bar * Math.Sin(a), Quantity.FineLength, "B·sin(a)", "B a",
            "Stack blocks to this height under one roll of the sine bar, the other on the flat.", Sources.SineBar);
        book.Add("stop", "Stop, from the blade along the fence", sawn.RimEdge, Quantity.Length, "2·Ao·tan(a) + 2·s/cos(a)", "Ao a s",
            "The long corner of the board's end touches the stop, and the rim edge lies along the fence.");
        AddAccuracy(glued, rule, shop, book);
    }

    private static void AddAccuracy(WedgeGeometry glued, double rule, Shop shop, FigureBook book)
    {
        double a = glued.HalfAngle;
        int n = glued.Segments;
        double gap = book.Know("g", "widest joint gap wanted", shop.Wanted.JointGap.Millimetres, Quantity.FineLength);
        double radius = book.Know("R", "distance from the centre to the outer end of a joint", glued.OuterCorner, Quantity.Length);
        double limit = book.Add("closing-limit", "All wedges together within", gap / radius, Quantity.FineAngle, "g/R", "g R",
            "All error gathers in the last joint, which opens by the radius times the error of the sum.", Sources.SmallAngle);
        book.Know("L", "error of the sum of all wedges that still closes", limit, Quantity.FineAngle);
        book.Add("angle-per-wedge", "Angle of each wedge within", limit / n, Quantity.FineAngle, "L/N", "L N",
            "A setting error is the same in every wedge, so it counts N times.", Sources.SmallAngle);
        double fence = book.Add("angle-per-fence", "Angle of each fence within", limit / (2 * n), Quantity.FineAngle, "L/(2·N)", "L N",
            "Each wedge has two faces, so an equal error of both fences counts 2 N times.", Sources.SmallAngle);
        book.Know("f", "angle of each fence within", fence, Quantity.FineAngle);
        book.Add("rule-accuracy", "Read the rule to within", rule * fence / (Math.Cos(a) * Math.Cos(a)), Quantity.FineLength, "M·f/cos(a)^2", "M f a",
            "The same accuracy as an offset at distance M from the pivot.", Sources.SmallAngle);
        book.Add("angle-per-wedge-shared", "Angle of each wedge within, if every joint may gape", limit, Quantity.FineAngle, "g/R", "g R",
            "If the error is shared by all joints and each may open by the gap wanted, every wedge may be off by this.", Sources.SmallAngle);
    }
}
