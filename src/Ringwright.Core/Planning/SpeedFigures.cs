using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Turning;
using Ringwright.Core.Turning.Speed;

namespace Ringwright.Core.Planning;

/// <summary>How fast the lathe may turn, and why; what the turned piece weighs and how it is balanced.</summary>
internal static class SpeedFigures
{
    private const string RuleSource = "common practice, no source: diameter in inches times turns from 6000 to 9000";
    private const string StressSource = "rotating ring, elastic (Timoshenko and Goodier, from memory)";
    private const string MassSource = "integral over the turned segments; densities of the table of woods";

    /// <summary>Speeds of the whole stack: of the glued blank, and of the work once it is round.</summary>
    public static void Add(ImmutableArray<RingPlan> rings, TimberPlan timber, FigureBook book)
    {
        double blank = book.Know("Dc", "largest glued blank, across its corners", 2 * rings.Max(r => BlankRadius(r, timber)), Quantity.Length);
        double round = book.Know("Dt", "largest diameter turned from it", rings.Max(r => r.Ring.Outside.Millimetres), Quantity.Length);
        book.Add("swing", "Largest blank, across its corners", blank, Quantity.Length, "Dc", "Dc", "What must swing free, and the diameter that counts until the work is round.", Sources.Geometry);
        RingPlan weakest = rings.MinBy(r => JointTurns(r, timber, BlankRadius(r, timber)))!;
        double joints = AddJoints(weakest, timber, book);
        double low = Math.Min(RimRule.Turns(blank, RimRule.Low), joints);
        book.Add("speed-blank", "Turn the rough blank at no more than", low, Quantity.Turns, "min(6000·25.4/Dc, nj)", "Dc nj", Reason(joints < RimRule.Turns(blank, RimRule.Low),
            "Start slower still when it shakes: a blank is never quite round or balanced."), RuleSource);
        double high = Math.Min(RimRule.Turns(round, RimRule.High), joints);
        book.Add("speed-round", "Turn the round work at no more than", high, Quantity.Turns, "min(9000·25.4/Dt, nj)", "Dt nj", Reason(joints < RimRule.Turns(round, RimRule.High),
            "The lathe's own plate and manual come first; the rule knows nothing of cracks and bad joints."), RuleSource);
    }

    /// <summary>Weight and balance of the turned piece; none when it cannot be turned, which findings tell.</summary>
    public static ImmutableArray<Figure> Balance(Plan plan)
    {
        if (plan.Weighed is not MassProperties { Mass: > 0 } whole) return [];
        var book = new FigureBook();
        book.AddFound("mass", "The turned piece weighs", whole.Mass, Quantity.Mass, "Σ density·volume", "", "At 12 percent moisture; a tree differs from its species by a tenth and more.", MassSource);
        book.Know("U", "static unbalance", whole.Unbalance, Quantity.Unbalance);
        book.AddFound("unbalance", "It is out of balance by", whole.Unbalance, Quantity.Unbalance, "|Σ mass·place|", "", "Woods of different weight laid unevenly; 0 for an even pattern.", MassSource);
        double turns = book.Know("n", "turns a minute", plan.Figures.First(f => f.Name == "speed-round").Value, Quantity.Turns);
        book.Add("unbalance-force", "At full speed it shakes with", whole.Force(turns), Quantity.Force, "U·10^(-6)·(2·π·n/60)^2", "U n", "The force turns with the work; near its weight the lathe begins to walk.", "force on a turning mass, m·r·ω²");
        return book.Figures;
    }

    /// <summary>Weighs the turned piece; a tenth of a millimetre in the wall's chords is a thousandth in the weight.</summary>
    public static MassProperties? Weigh(Plan plan, TimberPlan timber)
    {
        if (plan.Findings.Any(f => f.Weight == Weight.Stop)) return null;
        try
        {
            TurnedPiece turned = plan.Turned(0.1);
            return TurnedMass.Of(turned.Rings, [.. turned.Woods.Select(w => timber.Species.FindOrAssume(w).Density.Value)]).Whole;
        }
        catch (BadInputException)
        {
            return null; // rings that leave no body are planned all the same
        }
    }

    private static double AddJoints(RingPlan ring, TimberPlan timber, FigureBook book)
    {
        (double outer, double inner) = (BlankRadius(ring, timber), InnerRadius(ring));
        book.Know("σj", "tension a joint holds", timber.Joint.Tension, Quantity.Stress);
        book.Know("F", "safety factor", timber.Joint.SpeedSafety, Quantity.Ratio);
        book.Know("d", $"density of the heaviest wood of ring {ring.Ring.Name}", Density(ring, timber), Quantity.Density);
        book.Know("b", "its outer radius before turning", outer, Quantity.Length);
        book.Know("ai", "its inner radius", inner, Quantity.Length);
        book.Know("ν", "Poisson's ratio", RotatingStress.Poisson, Quantity.Ratio);
        double turns = JointTurns(ring, timber, outer);
        return book.Know("nj", "turns at which the joints use their strength over the safety factor", book.Add("speed-joints", "Its joints allow", turns, Quantity.Turns,
            "30/π·sqrt(4·σj·10^12/(F·d·(b^2·(3 + ν) + ai^2·(1 − ν))))", "σj F d b ai ν", "Sound joints; a joint with a gap holds less, and nobody can compute it.", StressSource), Quantity.Turns);
    }

    private static string Reason(bool joints, string rest) => (joints ? "The joints set it: the rim-speed rule would allow more. " : "The rim-speed rule sets it: sound joints would allow more. ") + rest;

    private static double JointTurns(RingPlan ring, TimberPlan timber, double outer) =>
        RotatingStress.TurnsFor(timber.Joint.Tension / timber.Joint.SpeedSafety, Density(ring, timber), outer, InnerRadius(ring));

    private static double Density(RingPlan ring, TimberPlan timber) => timber.WoodsOf(ring.Ring).Max(w => w.Density.Value);

    private static double InnerRadius(RingPlan ring) => TimberPlan.BodyOf(ring)?.Inner ?? 0;

    private static double BlankRadius(RingPlan ring, TimberPlan timber) => ring.Batches.IsEmpty
        ? (ring.Ring.Outside.Millimetres / 2) + (ring.Ring.Allowance ?? timber.Allowance).Millimetres
        : Math.Max(BlankRadii.Of(ring).Low.OuterCorner, BlankRadii.Of(ring).High.OuterCorner);
}
