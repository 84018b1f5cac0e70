using System.Collections.Immutable;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Planning;

/// <summary>The work at the lathe: order, holding, boring, the wall after each pass, speeds.</summary>
/// <param name="Rings">What is done to each ring, from the bottom up; rings that are turned away altogether are left out.</param>
/// <param name="Figures">Its numbers, each with its reason; speeds and weight among them.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="Doubts">What is wrong with it, weightiest first.</param>
public sealed record LathePlan(ImmutableArray<RingPasses> Rings, ImmutableArray<Figure> Figures, ImmutableArray<Sentence> Steps, ImmutableArray<Finding> Doubts)
{
    // Walls are followed to this, mm.
    private const double Chord = 0.02;

    /// <summary>The lathe's part of a plan. Pure: same input, same plan.</summary>
    public static LathePlan Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var passes = new WallPasses(plan.Shop.Lathe.FinishAllowance.Millimetres, plan.Form is { IsSolid: false } hollow ? BoringPlan.Floor(hollow) : null);
        ImmutableArray<RingPasses> rings = [.. StackedRing.Of(plan, plan.Form is TurnedForm form ? (from, to) => form.SectionWithin(from, to, Chord) : null)
            .Where(r => r.Section is not null)
            .Select(passes.Of)];
        var book = new FigureBook();
        foreach (Figure known in plan.Figures.Where(f => f.Name is "swing" or "stack-height" or "mass" or "unbalance" or "unbalance-force" || f.Name.StartsWith("speed-", StringComparison.Ordinal))) book.Take(known);
        foreach (Figure holding in plan.Lathe.Holding) book.Take(holding);
        Sentence? boring = BoringPlan.Add(plan, book);
        LatheFigures.Add(plan, rings, book);
        ImmutableArray<Figure> figures = book.Figures;
        return new(rings, figures, LatheSteps.Of(plan, rings, figures, boring, !plan.Lathe.Holding.IsEmpty), plan.Lathe.Doubts);
    }

    /// <summary>The figure called <paramref name="name"/>, or null.</summary>
    public Figure? Find(string name) => Figures.FirstOrDefault(f => f.Name == name);
}
