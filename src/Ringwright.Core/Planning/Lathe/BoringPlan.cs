using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Planning;

/// <summary>The hole that is bored first: with which drill, and how deep.</summary>
internal static class BoringPlan
{
    private const double Deep = 8; // times its diameter a hole is deep; beyond, from both ends. Common practice, no source.
    private const string PointSource = "cone of the drill's point, h = d/2 / tan(half its angle); 0.3·d at 118° (Machinery's Handbook, from memory)";

    // Drills that most shops have, mm; taken when the shop does not say. Common practice, no source.
    private static readonly double[] Usual = [6, 8, 10, 12, 16, 20, 25];

    /// <summary>Enters the figures of boring and says what to do; nothing when the piece is solid.</summary>
    public static Sentence? Add(Plan plan, FigureBook book)
    {
        if (plan.Form is not TurnedForm form || plan.Piece.Shape?.Inside is not Inside inside) return null;
        Lathe lathe = plan.Shop.Lathe;
        double[] drills = lathe.Drills is { IsDefaultOrEmpty: false } own ? [.. own.Select(d => d.Millimetres)] : Usual;
        double stack = book.Know("H", "height of the glued stack", plan.Rings.Sum(r => r.Ring.Thickness.Millimetres), Quantity.Length);
        double? floor = Floor(form);
        double narrowest = 2 * form.Extents(floor ?? form.Bottom, form.Top).MinInner;
        if (inside is Bore bore) return Straight(bore, drills, floor, stack, lathe, book);
        if (floor is not double low) return null; // open right through: nothing needs to be drilled
        // The floor is not drilled, so above it only; near it the wall may be as narrow as nothing.
        double opening = 2 * form.Inner(form.Top), room = Math.Min(opening, narrowest > 0 ? narrowest : opening);
        if (drills.Where(d => d <= room).DefaultIfEmpty(0).Max() is not (> 0 and double drill)) return null;
        Enter(drill, low + lathe.FinishAllowance.Millimetres, stack, lathe, book);
        return Sentence.Of("Drill {0} down to {1} below the top of the stack, measured at the drill's shoulder: the floor is then found without guessing.", Measured.Length(drill), book["bore-depth"].Measured);
    }

    /// <summary>Height of the floor; null when the inside is open right through.</summary>
    public static double? Floor(TurnedForm form)
    {
        if (form.IsSolid) return null;
        double z = form.InnerLine.Bottom;
        return z > form.Bottom ? z : null;
    }

    private static Sentence Straight(Bore bore, double[] drills, double? floor, double stack, Lathe lathe, FigureBook book)
    {
        double hole = bore.Diameter.Millimetres;
        double drill = drills.Where(d => d <= hole + 1e-6).DefaultIfEmpty(0).Max();
        book.Know("D", "diameter of the bore", hole, Quantity.Length);
        book.Add("bore", "The bore is", hole, Quantity.Length, "D", "D", "Its drill decides the fit of tube or lid; try it in scrap of the same wood.", "the shape's own value");
        string rest = drill >= hole - 1e-6 ? "with the drill of its size" : drill > 0 ? "with the next smaller drill, {1}, and open it at the lathe" : "with a tool: no drill at hand is small enough";
        if (floor is double low)
        {
            if (drill > 0) Enter(drill, low + (drill >= hole - 1e-6 ? 0 : lathe.FinishAllowance.Millimetres), stack, lathe, book);
            return Sentence.Of($"Bore {{0}} {rest}" + (drill > 0 ? "; stop at {2} below the top of the stack, at the drill's shoulder." : "."), Measured.Length(hole), Measured.Length(drill), drill > 0 ? book["bore-depth"].Measured : default);
        }

        bool bothEnds = stack > Deep * hole;
        return Sentence.Of($"Bore {{0}} right through {rest}" + (bothEnds ? "; from both ends, for the hole is {2} deep and a long drill wanders. Clear the chips often." : ". Clear the chips often."), Measured.Length(hole), Measured.Length(drill), Measured.Length(stack));
    }

    private static void Enter(double drill, double floor, double stack, Lathe lathe, FigureBook book)
    {
        book.Know("dd", "drill", drill, Quantity.Length);
        book.Know("ε", "full angle of its point", lathe.DrillPoint.Radians, Quantity.Angle);
        book.Know("zf", "lowest the point may reach: the floor, and what the last cuts need", floor, Quantity.Length);
        book.Add("bore-drill", "Drill the first hole", drill, Quantity.Length, "dd", "dd", "The largest at hand that stays inside the wall.", "a choice among the drills at hand");
        double point = book.Know("p", "length of the point", drill / 2 / Math.Tan(lathe.DrillPoint.Radians / 2), Quantity.Length);
        book.Add("bore-point", "Its point is", point, Quantity.Length, "dd/2/tan(ε/2)", "dd ε", "It reaches deeper than the shoulder by this much.", PointSource);
        book.Add("bore-depth", "Stop its shoulder below the top at", stack - floor - point, Quantity.Length, "H − zf − p", "H zf p", "Mark it on the drill with tape; the tip then ends just above the floor.", Sources.Geometry);
    }
}
