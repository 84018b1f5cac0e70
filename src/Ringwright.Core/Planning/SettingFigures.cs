using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>What to set on the saw.</summary>
internal static class SettingFigures
{
    /// <summary>Fence and stop of one batch; <paramref name="mitre"/> is the formula of its half angle.</summary>
    public static void Add(WedgeGeometry glued, WedgeGeometry sawn, Shop shop, FigureBook book, string mitre = "π/N", string symbols = "N")
    {
        double a = glued.HalfAngle;
        double rule = book.Know("M", "distance from the pivot at which the fence is measured", shop.Sled.RuleDistance.Millimetres, Quantity.Length);
        double bar = book.Know("B", "length of the sine bar", shop.Sled.SineBar.Millimetres, Quantity.Length);
        book.Add("mitre", "Mitre of each fence, from square", a, Quantity.Angle, mitre, symbols,
            "Both faces lean by half the wedge's angle; on two fences only their sum must be right.");
        book.Add("rule-offset", "Fence offset by the rule", rule * Math.Tan(a), Quantity.Length, "M·tan(a)", "M a",
            "At distance M from its pivot the fence stands this far from the square line.");
        book.Add("sine-bar-height", "Height under the sine bar", bar * Math.Sin(a), Quantity.FineLength, "B·sin(a)", "B a",
            "Stack blocks to this height under one roll of the sine bar, the other on the flat.", Sources.SineBar);
        book.Add("stop", "Stop, from the blade along the fence", sawn.RimEdge, Quantity.Length, "2·Ao·tan(a) + 2·s/cos(a)", "Ao a s",
            "The long corner of the board's end touches the stop, and the rim edge lies along the fence.");
    }
}
