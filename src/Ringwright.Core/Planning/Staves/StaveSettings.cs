using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>Mitre, tilt and stop for staves, and how exactly.</summary>
internal static class StaveSettings
{
    public static void Add(StaveGeometry glued, StaveGeometry sawn, Shop shop, FigureBook book)
    {
        double bar = book.Know("B", "length of the sine bar", shop.Sled.SineBar.Millimetres, Quantity.Length);
        book.Know("θ", "tilt of the blade", glued.Tilt, Quantity.Angle);
        book.Know("μ", "mitre", glued.Mitre, Quantity.Angle);
        book.Add("blade-tilt", "Tilt of the blade, from square", glued.Tilt, Quantity.Angle, "asin(cos(σ)·sin(a))", "σ a",
            "Both edges are sawn with the same tilt, the board turned over end for end between them.", StaveSizes.Compound);
        book.Add("tilt-height", "Height under the sine bar for the tilt", bar * Math.Sin(glued.Tilt), Quantity.FineLength, "B·sin(θ)", "B θ",
            "Set a bevel gauge or a block to the sine bar, and the blade to the gauge.", Sources.SineBar);
        if (!glued.IsUpright) AddMitre(glued, shop, bar, book);
        string stop = glued.IsUpright ? "Rip fence, from the blade" : "Stop, from the blade along the fence";
        book.Add("stop", stop, sawn.Width(sawn.OuterApothem(sawn.WideEnd)), Quantity.Length, "2·(Ao + c·tan(σ))·tan(a) + 2·s/cos(a)", "Ao c σ a s",
            "Measured on the upper face, which becomes the outside: there the stave is widest.");
        AddAccuracy(glued, shop, book);
    }

    private static void AddMitre(StaveGeometry glued, Shop shop, double bar, FigureBook book)
    {
        double rule = book.Know("M", "distance from the pivot at which the fence is measured", shop.Sled.RuleDistance.Millimetres, Quantity.Length);
        book.Add("mitre", "Mitre of the fence, from square", glued.Mitre, Quantity.Angle, "atan(sin(σ)·tan(a))", "σ a",
            "The panel's end lies at the fence; turned over end for end, the same setting makes the other edge.", StaveSizes.Compound);
        book.Add("rule-offset", "Fence offset by the rule", rule * Math.Tan(glued.Mitre), Quantity.Length, "M·tan(μ)", "M μ",
            "At distance M from its pivot the fence stands this far from the square line.");
        book.Add("sine-bar-height", "Height under the sine bar for the mitre", bar * Math.Sin(glued.Mitre), Quantity.FineLength, "B·sin(μ)", "B μ",
            "Stack blocks to this height under one roll of the sine bar, the other on the flat.", Sources.SineBar);
        book.Add("end-tilt", "Tilt of the blade for the ends of the panels", Math.Abs(glued.Lean), Quantity.Angle, "σ", "σ",
            "Both ends of a panel are sawn parallel at the lean, so that the glued ring stands flat.");
    }

    // cos(half the turn) = cos(tilt)·cos(mitre): an error of either changes it by these factors, and the ring leans a little more or less.
    private static void AddAccuracy(StaveGeometry glued, Shop shop, FigureBook book)
    {
        double sin = glued.MitreCounts, tiltFactor = glued.TiltCounts;
        double gap = book.Know("g", "widest joint gap wanted", shop.Wanted.JointGap.Millimetres, Quantity.FineLength);
        double radius = book.Know("R", "distance from the axis to the outer end of a joint, at the wider end", glued.OuterApothem(glued.WideEnd) / Math.Cos(glued.HalfAngle), Quantity.Length);
        double limit = book.Add("closing-limit", "All staves together within", gap / radius, Quantity.FineAngle, "g/R", "g R",
            "All error gathers in the last joint, which opens by the radius times the error of the sum.", Sources.SmallAngle);
        book.Know("L", "error of the sum of all staves that still closes", limit, Quantity.FineAngle);
        book.Know("St", "turn of a joint by each degree of tilt", book.Add("tilt-counts", "An error of the tilt counts", tiltFactor, Quantity.Share, "cos(σ)·cos(μ)", "σ μ",
            "From cos(π/N) = cos(tilt)·cos(mitre): what part of an error of the tilt turns the joint about the axis.", StaveSizes.Compound), Quantity.Share);
        book.Know("Sm", "turn of a joint by each degree of mitre", book.Add("mitre-counts", "An error of the mitre counts", sin, Quantity.Share, "sin(σ)", "σ",
            "From the same equation: upright staves do not mind the mitre, flat ones only the mitre.", StaveSizes.Compound), Quantity.Share);
        int n = glued.Segments;
        book.Add("tilt-within", "Tilt of the blade within", limit / (2 * n * tiltFactor), Quantity.FineAngle, "L/(2·N·St)", "L N St",
            "Every stave has two edges, and all are sawn with the same tilt, so its error counts 2 N times.", Sources.SmallAngle);
        if (glued.IsUpright) return;
        double within = book.Add("angle-per-fence", "Mitre of the fence within", limit / (2 * n * sin), Quantity.FineAngle, "L/(2·N·Sm)", "L N Sm",
            "The same fence makes all edges, so its error counts 2 N times too.", Sources.SmallAngle);
        book.Know("f", "mitre within", within, Quantity.FineAngle);
        book.Add("rule-accuracy", "Read the rule to within", shop.Sled.RuleDistance.Millimetres * within / Math.Pow(Math.Cos(glued.Mitre), 2), Quantity.FineLength, "M·f/cos(μ)^2", "M f μ",
            "The same accuracy as an offset at distance M from the pivot.", Sources.SmallAngle);
    }
}
