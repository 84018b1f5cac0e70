using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>When each task begins.</summary>
/// <param name="Problem">What was to be put in order.</param>
/// <param name="Starts">The start of each task, minutes from the beginning.</param>
/// <param name="LowerBound">No order is shorter than this, minutes: proved.</param>
public sealed record WorkSchedule(WorkProblem Problem, ImmutableArray<int> Starts, int LowerBound)
{
    /// <summary>From the beginning until everything is over, minutes.</summary>
    public int Makespan { get; } = Starts.Select((s, i) => s + Problem.Tasks[i].Length).DefaultIfEmpty(0).Max();

    /// <summary>Whether no order is shorter.</summary>
    public bool IsShortest => Makespan <= LowerBound;

    /// <summary>Whether every task comes after those it must, and no resource is overdrawn or used outside its hours.</summary>
    public bool IsFeasible() => Order() && Enumerable.Range(0, Problem.Resources.Length).All(Fits);

    private bool Order() => Problem.Tasks.Select((task, i) => Starts[i] >= 0 && task.After.All(a => Starts[a] + Problem.Tasks[a].Length <= Starts[i])).All(ok => ok);

    private bool Fits(int resource)
    {
        WorkResource known = Problem.Resources[resource];
        (int Start, ResourceUse Use)[] uses = [.. Problem.Tasks.SelectMany((t, i) => t.Uses.Where(u => u.Resource == resource && u.Length > 0).Select(u => (Starts[i], u)))];
        return uses.All(u => known.Open(u.Start, u.Use.Length) == u.Start
            && uses.Where(o => o.Start <= u.Start && u.Start < o.Start + o.Use.Length).Sum(o => o.Use.Amount) <= known.Capacity);
    }
}
