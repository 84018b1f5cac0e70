using Ringwright.Core.Planning;
using Ringwright.Stock.Schedules;

namespace Ringwright.Web.Stations;

/// <summary>An order of gluing that was found for a plan, and what more clamps would spare.</summary>
internal sealed record FoundOrder(GlueSchedule Schedule, ImmutableArray<Sentence> Helps);

/// <summary>
/// The quickest order of gluing the piece on the bench, looked for behind the page. All windows and the paper use the same;
/// thread-safe.
/// </summary>
internal sealed class GlueDesk : IDisposable
{
    private readonly Lock _lock = new();
    private CancellationTokenSource? _running;
    private Plan? _of;
    private FoundOrder? _found;

    /// <summary>Raised when a search begins or ends, on the thread where it does.</summary>
    public event Action? Changed;

    /// <summary>What was found for a plan; null before.</summary>
    public FoundOrder? For(Plan plan)
    {
        lock (_lock) return ReferenceEquals(_of, plan) ? _found : null;
    }

    /// <summary>Whether it is being looked for.</summary>
    public bool IsSearching(Plan plan)
    {
        lock (_lock) return ReferenceEquals(_of, plan) && _running is not null;
    }

    /// <summary>Whether it was looked for, to the end or not.</summary>
    public bool Knows(Plan plan)
    {
        lock (_lock) return ReferenceEquals(_of, plan);
    }

    /// <summary>Begins to look for a plan's quickest order; a search for another ends.</summary>
    public void Begin(Plan plan)
    {
        var running = new CancellationTokenSource();
        lock (_lock)
        {
            if (ReferenceEquals(_of, plan) && (_running is not null || _found is not null)) return;
            _running?.Cancel();
            (_running, _of, _found) = (running, plan, null);
        }

        Changed?.Invoke();
        _ = Task.Run(() => Search(plan, running));
    }

    /// <summary>Ends a search; the quick order stands.</summary>
    public void Cancel()
    {
        lock (_lock)
        {
            _running?.Cancel();
            _running = null;
        }

        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock) _running?.Cancel();
    }

    private void Search(Plan plan, CancellationTokenSource running)
    {
        FoundOrder? found = null;
        try
        {
            GlueSchedule best = GlueScheduler.Of(GluePlan.Of(plan), running.Token);
            found = new(best, [.. best.Helps()]);
        }
        catch (OperationCanceledException)
        {
            // As the user wished, or another plan is looked at.
        }
        finally
        {
            lock (_lock)
                if (_running == running) (_running, _found) = (null, found);
            running.Dispose();
        }

        Changed?.Invoke();
    }
}
