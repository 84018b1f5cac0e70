using Ringwright.Core.Planning;

namespace Ringwright.Web.Stations;

/// <summary>How the piece is glued: a good order at once, the quickest as soon as it is found.</summary>
public sealed partial class GlueStation
{
    private const int Next = 5; // tasks that are shown at once

    private Plan? _of;
    private GlueSchedule _schedule = null!;
    private GlueTicks? _ticks;
    private ImmutableArray<GlueGroup> _groups = [];

    /// <inheritdoc/>
    protected override bool HasWork => Schedule.Plan.HasWork;

    private GlueSchedule Schedule
    {
        get
        {
            if (!ReferenceEquals(_of, Sheet.Good)) Begin(Sheet.Good);
            if (Orders.For(Sheet.Good) is { Schedule: { } best } && !ReferenceEquals(best, _schedule)) Show(best);
            return _schedule;
        }
    }

    private ImmutableArray<Sentence> Helps => Orders.For(Sheet.Good)?.Helps ?? [];

    private IEnumerable<(int Index, int Start)> Order => Enumerable.Range(0, _schedule.Tasks.Length).Select(i => (i, _schedule.Work.Starts[i])).OrderBy(t => t.Item2);

    private void Begin(Plan plan)
    {
        _of = plan;
        Show(GlueSchedule.Quick(GluePlan.Of(plan)));
        _groups = GlueGroup.Of(_schedule.Plan);
    }

    private void Show(GlueSchedule schedule) => (_schedule, _ticks) = (schedule, new(schedule.Plan, schedule.Tasks, IsDone, Sheet.RingMarks));
}
