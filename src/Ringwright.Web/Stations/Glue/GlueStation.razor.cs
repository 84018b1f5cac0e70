using Ringwright.Core.Planning;
using Ringwright.Stock.Schedules;

namespace Ringwright.Web.Stations;

/// <summary>How the piece is glued: a good order at once, the quickest as soon as it is found.</summary>
public sealed partial class GlueStation
{
    private const int Next = 5; // tasks that are shown at once

    private Plan? _of, _searched;
    private GlueSchedule? _schedule;
    private GlueTicks? _ticks;
    private ImmutableArray<GlueGroup> _groups = [];
    private ImmutableArray<Sentence> _helps = [];
    private CancellationTokenSource? _search;

    private GlueSchedule? Schedule
    {
        get
        {
            if (!ReferenceEquals(_of, Sheet.Good)) Begin(Sheet.Good);
            return _schedule;
        }
    }

    private IEnumerable<(int Index, int Start)> Order => Enumerable.Range(0, _schedule!.Tasks.Length).Select(i => (i, _schedule.Work.Starts[i])).OrderBy(t => t.Item2);

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        _search?.Cancel();
        base.Dispose(disposing);
    }

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender)
    {
        // Only a page that is looked at searches; one that the server draws beforehand has no use for it.
        if (_schedule is null || ReferenceEquals(_searched, _of)) return;
        _searched = _of;
        var search = new CancellationTokenSource();
        _search = search;
        (Plan plan, GluePlan glue) = (_of!, _schedule.Plan);
        _ = Task.Run(() => Search(plan, glue, search.Token), search.Token);
    }

    private void Begin(Plan plan)
    {
        _search?.Cancel();
        _of = plan;
        Show(GlueSchedule.Quick(GluePlan.Of(plan)));
        _helps = [];
        _groups = GlueGroup.Of(_schedule!.Plan);
    }

    private void Search(Plan plan, GluePlan glue, CancellationToken cancel)
    {
        try
        {
            GlueSchedule best = GlueScheduler.Of(glue, cancel);
            ImmutableArray<Sentence> helps = [.. best.Helps()];
            _ = InvokeAsync(() =>
            {
                if (!ReferenceEquals(_of, plan)) return;
                Show(best);
                _helps = helps;
                StateHasChanged();
            });
        }
        catch (OperationCanceledException)
        {
            // Another plan is looked at.
        }
    }

    private void Show(GlueSchedule schedule) => (_schedule, _ticks) = (schedule, new(schedule.Plan, schedule.Tasks, IsDone, Sheet.RingMarks));
}
