using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Floor;

/// <summary>Whether what was counted and ticked off for a ring still means its wedges, and what to do when it does not.</summary>
/// <param name="Job">Piece and ring.</param>
/// <param name="Plan">The ring's plan now.</param>
/// <param name="Now">The wedges it takes.</param>
public sealed record RingAccount(string Job, RingPlan Plan, ImmutableArray<CutBasis> Now)
{
    /// <summary>The account of a ring.</summary>
    public static RingAccount Of(string job, RingPlan plan, Shop shop) => new(job, plan, [.. SawCut.Of(plan, shop).Select(CutBasis.Of)]);

    /// <summary>Why the count no longer applies, in one sentence; null when it does.</summary>
    public string? Doubt(FloorState floor, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(floor);
        ImmutableArray<CutBasis> then = floor.BasisOf(Job);
        if (then.IsEmpty || then.SequenceEqual(Now) || !floor.HasWork(Job)) return null;
        ImmutableArray<Mark> marks = floor.MarksOf(Job);
        CutBasis[] counted = [.. then.Where(b => CutTally.Of(marks, b.Cut).Sawn > 0)];
        CutBasis? gone = (counted.Length > 0 ? counted : [.. then]).FirstOrDefault(b => !Now.Contains(b));
        if (gone is null) return null;
        string name = Plan.Ring.Name;
        return Now.FirstOrDefault(b => b.Cut == gone.Cut) is CutBasis other
            ? $"What is counted and ticked off for {name} is of wedges of {gone.Words(style)}; the plan now has wedges of {other.Words(style)}."
            : $"What is counted and ticked off for {name} is of {WoodOf(gone)} wedges of {gone.Words(style)}, which the plan no longer has.";
    }

    /// <summary>The work counts for the wedges as they are now.</summary>
    public FloorState Kept(FloorState floor)
    {
        ArgumentNullException.ThrowIfNull(floor);
        return floor.On(Job, Now, anew: true);
    }

    /// <summary>The work begins anew; what was sawn can still go into the record.</summary>
    public FloorState Cleared(FloorState floor, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(floor);
        FloorState state = floor;
        ImmutableArray<Mark> marks = floor.MarksOf(Job);
        foreach (string cut in marks.Select(m => m.Cut).Distinct().Where(c => CutTally.Of(marks, c).Sawn > 0)) state = state.Mark(Job, cut, MarkKind.Cleared, now);
        string sander = FloorNames.Sander(Job);
        return (state with { Counts = state.Counts.Remove(sander), Watches = state.Watches.Remove(sander), Ticks = state.Ticks.Except(state.TicksOf(Job)) }).On(Job, Now, anew: true);
    }

    private static string WoodOf(CutBasis basis) => basis.Cut[(basis.Cut.IndexOf('/', StringComparison.Ordinal) + 1)..];
}
