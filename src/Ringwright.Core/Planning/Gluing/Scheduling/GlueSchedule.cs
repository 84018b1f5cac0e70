using System.Collections.Immutable;
using System.Globalization;

namespace Ringwright.Core.Planning;

/// <summary>When each piece of handwork of a glue plan begins.</summary>
/// <param name="Plan">The glue plan.</param>
/// <param name="Tasks">The tasks.</param>
/// <param name="Work">When each begins.</param>
public sealed record GlueSchedule(GluePlan Plan, ImmutableArray<GlueTask> Tasks, WorkSchedule Work)
{
    /// <summary>Handwork in all, minutes.</summary>
    public int Hands => Tasks.Sum(t => t.Hands);

    /// <summary>Time in which the hands wait between their first and their last work, minutes, nights included.</summary>
    public int Waiting => Tasks.IsEmpty ? 0 : Tasks.Select((t, i) => Work.Starts[i] + t.Hands).Max() - Work.Starts.Min() - Hands;

    /// <summary>Time in the shop on one day, minutes, or null when the days are not counted.</summary>
    public int? Session => Work.Problem.Resources[0].Session;

    /// <summary>The tasks in the order of their beginning.</summary>
    public IEnumerable<(GlueTask Task, int Start)> InOrder => Tasks.Select((t, i) => (t, Work.Starts[i])).OrderBy(t => t.Item2);

    /// <summary>How long it takes, how much of that is handwork, and how sure it is that no order is quicker.</summary>
    public Sentence Answer => Sentence.Of(
        Work.IsShortest ? "Ready to turn after {0}, {1} of it handwork; no order of this work is quicker." : "Ready to turn after {0}, {1} of it handwork; an order may be quicker by up to {2}, none by more.",
        Measured.Time(Work.Makespan), Measured.Time(Hands), Measured.Time(Work.Makespan - Work.LowerBound));

    /// <summary>What more clamps would spare, where it is a tenth of the time or more.</summary>
    public IEnumerable<Sentence> Helps()
    {
        const double Worth = 0.9;
        Pieces.Gluing now = Plan.Plan.Shop.Gluing;
        int bands = After(now with { BandClamps = 2 * now.BandClamps }), presses = After(now with { Presses = 2 * now.Presses });
        if (bands <= Worth * Work.Makespan) yield return Sentence.Of("With {0} band clamps instead of {1} it is ready after {2}.", Measured.Count(2 * now.BandClamps), Measured.Count(now.BandClamps), Measured.Time(bands));
        if (presses <= Worth * Work.Makespan) yield return Sentence.Of("With {0} presses instead of {1} it is ready after {2}.", Measured.Count(2 * now.Presses), Measured.Count(now.Presses), Measured.Time(presses));
    }

    private int After(Pieces.Gluing gluing) => Quick(Plan with { Plan = Plan.Plan with { Shop = Plan.Plan.Shop with { Gluing = gluing } } }).Work.Makespan;

    /// <summary>The tasks of a glue plan as a problem, for a solver.</summary>
    public static (ImmutableArray<GlueTask> Tasks, WorkProblem Problem) ProblemOf(GluePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        GlueTaskList list = GlueTasks.Of(plan);
        return ([.. list.All.Select(t => t.Task)], list.Problem());
    }

    /// <summary>A good schedule at once, without a solver.</summary>
    public static GlueSchedule Quick(GluePlan plan)
    {
        (ImmutableArray<GlueTask> tasks, WorkProblem problem) = ProblemOf(plan);
        return new(plan, tasks, ListScheduler.Of(problem));
    }

    /// <summary>A time on the schedule: hours and minutes from the beginning, or of a day in the shop.</summary>
    /// <param name="minute">Minutes from the beginning.</param>
    public string Clock(int minute)
    {
        if (Session is null) return string.Create(CultureInfo.InvariantCulture, $"{minute / 60}:{minute % 60:00}");
        int into = minute % WorkResource.Day;
        return string.Create(CultureInfo.InvariantCulture, $"day {(minute / WorkResource.Day) + 1}, {into / 60}:{into % 60:00}");
    }
}
