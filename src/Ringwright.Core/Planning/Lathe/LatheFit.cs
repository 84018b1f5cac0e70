using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>Whether work, lathe and holding go together: found once, when the piece is planned.</summary>
/// <param name="Holding">The figures of tenon or recess; empty when the shape tells of none.</param>
/// <param name="Doubts">What does not go together, weightiest first; each names the ring it is about.</param>
internal sealed record LatheFit(ImmutableArray<Figure> Holding, ImmutableArray<Finding> Doubts)
{
    /// <summary>Nothing known and nothing wrong.</summary>
    public static LatheFit None { get; } = new([], []);

    /// <summary>For a plan whose figures are known.</summary>
    public static LatheFit Of(Plan plan)
    {
        ImmutableArray<Figure> holding = HoldingCheck.Figures(plan, SpeciesTable.For(plan.Shop));
        IEnumerable<Finding> held = HoldingCheck.Find(plan, holding).Select(f => new Finding(f.Weight, plan.Rings[0].Ring.Name, f.Sentence));
        return new(holding, [.. Machine(plan).Concat(held).OrderByDescending(f => f.Weight)]);
    }

    /// <summary>The rings, each with what was found about it.</summary>
    public ImmutableArray<RingPlan> AddTo(ImmutableArray<RingPlan> rings)
    {
        if (Doubts.IsEmpty) return rings;
        ILookup<string, Finding> found = Doubts.ToLookup(f => f.Ring, StringComparer.Ordinal);
        return [.. rings.Select(r => found.Contains(r.Ring.Name) ? r with { Findings = [.. r.Findings.Concat(found[r.Ring.Name]).OrderByDescending(f => f.Weight)] } : r)];
    }

    private static IEnumerable<Finding> Machine(Plan plan)
    {
        Lathe lathe = plan.Shop.Lathe;
        double Figure(string name) => plan.Figures.First(f => f.Name == name).Value;
        if (lathe.Swing is Length swing && Figure("swing") > swing.Millimetres)
            yield return new(Weight.Stop, plan.Rings.MaxBy(r => r.Ring.Outside.Millimetres)!.Ring.Name, Sentence.Of("The blank is {0} across its corners and the lathe swings {1}: make it smaller, or saw its corners off first.", Measured.Length(Figure("swing")), Measured.Length(swing.Millimetres)));
        if (lathe.Between is Length between && Figure("stack-height") > between.Millimetres)
            yield return new(Weight.Stop, plan.Rings[^1].Ring.Name, Sentence.Of("The stack is {0} high and the lathe takes {1} between its centres: turn it in two parts.", Measured.Length(Figure("stack-height")), Measured.Length(between.Millimetres)));
        if (lathe.SlowestTurns is double slowest && Figure("speed-blank") < slowest)
            yield return new(Weight.Doubt, plan.Rings.MaxBy(r => r.Ring.Outside.Millimetres)!.Ring.Name, Sentence.Of("The rough blank may turn at {0} at most and the lathe's slowest speed is {1}: make it round at the saw first, or use a slower lathe.", new(Figure("speed-blank"), Quantity.Turns), new(slowest, Quantity.Turns)));
    }
}
