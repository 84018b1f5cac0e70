using Google.OrTools.Sat;
using Ringwright.Core.Planning;

namespace Ringwright.Stock.Schedules;

/// <summary>Work as a model for the solver: a start for each task, an interval for each use, nights as uses that lie fast.</summary>
internal sealed class WorkModel
{
    private readonly WorkProblem _problem;
    private readonly int _horizon;

    /// <summary>A model.</summary>
    /// <param name="problem">The work.</param>
    /// <param name="horizon">All is over by then, minutes.</param>
    /// <param name="known">An order to begin from.</param>
    public WorkModel(WorkProblem problem, int horizon, WorkSchedule known)
    {
        (_problem, _horizon) = (problem, horizon);
        int[] heads = problem.Heads(), tails = problem.Tails();
        Starts = [.. problem.Tasks.Select((_, i) => Model.NewIntVar(heads[i], horizon - tails[i], $"s{i}"))];
        Makespan = Model.NewIntVar(problem.LowerBound(), horizon, "all");
        for (int i = 0; i < Starts.Length; i++)
        {
            Model.Add(Makespan >= Starts[i] + problem.Tasks[i].Length);
            foreach (int before in problem.Tasks[i].After) Model.Add(Starts[i] >= Starts[before] + problem.Tasks[before].Length);
            Model.AddHint(Starts[i], known.Starts[i]);
        }

        for (int r = 0; r < problem.Resources.Length; r++) Add(r);
    }

    public CpModel Model { get; } = new();

    public IntVar[] Starts { get; }

    public IntVar Makespan { get; }

    private void Add(int resource)
    {
        WorkResource known = _problem.Resources[resource];
        List<IntervalVar> intervals = [];
        List<int> amounts = [];
        for (int i = 0; i < Starts.Length; i++)
            foreach (ResourceUse use in _problem.Tasks[i].Uses.Where(u => u.Resource == resource && u.Length > 0))
            {
                intervals.Add(Model.NewFixedSizeIntervalVar(Starts[i], use.Length, $"u{i}"));
                amounts.Add(use.Amount);
            }

        if (intervals.Count == 0) return;
        if (known.Session is int session)
            for (int night = session; night < _horizon; night += WorkResource.Day)
            {
                intervals.Add(Model.NewFixedSizeIntervalVar(night, WorkResource.Day - session, $"n{night}"));
                amounts.Add(known.Capacity);
            }

        if (known.Capacity == 1)
        {
            Model.AddNoOverlap(intervals);
            return;
        }

        CumulativeConstraint together = Model.AddCumulative(known.Capacity);
        together.AddDemands(intervals, amounts);
    }
}
