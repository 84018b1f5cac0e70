using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>What does not go together: work and lathe, work and holding.</summary>
internal static class LatheFindings
{
    /// <summary>Findings of a plan whose figures are known; each names the ring it is about.</summary>
    public static IEnumerable<Finding> Of(Plan plan)
    {
        foreach (Finding finding in Machine(plan)) yield return finding;
        if (plan.Piece.Shape?.Holding is null) yield break;
        var book = new FigureBook();
        HoldingCheck.Add(plan, SpeciesTable.For(plan.Shop), book);
        foreach ((Weight weight, Sentence sentence) in HoldingCheck.Find(plan, book.Figures)) yield return new(weight, plan.Rings[0].Ring.Name, sentence);
    }

    /// <summary>The rings with what <see cref="Of"/> finds about each.</summary>
    public static ImmutableArray<RingPlan> Add(Plan plan)
    {
        ILookup<string, Finding> found = Of(plan).ToLookup(f => f.Ring, StringComparer.Ordinal);
        if (found.Count == 0) return plan.Rings;
        return [.. plan.Rings.Select(r => found.Contains(r.Ring.Name) ? r with { Findings = [.. r.Findings.Concat(found[r.Ring.Name]).OrderByDescending(f => f.Weight)] } : r)];
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
