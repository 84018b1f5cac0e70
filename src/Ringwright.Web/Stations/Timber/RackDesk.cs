using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Planning;
using Ringwright.Store;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Stations;

/// <summary>
/// The boards at hand, and what the piece on the bench takes of them. Planning runs behind the page. All windows show the same;
/// thread-safe.
/// </summary>
internal sealed class RackDesk(PieceShelf shelf, IBoardPlanner planner) : IDisposable
{
    private readonly Lock _lock = new();
    private CancellationTokenSource? _running;
    private Rack? _rack;
    private CuttingPlan? _cutting;
    private (Plan Plan, CuttingPlan? Cutting)? _asked;

    /// <summary>Raised after every change, on the thread that made it.</summary>
    public event Action? Changed;

    /// <summary>The rack; null when nothing is saved at present.</summary>
    public Rack? Rack
    {
        get
        {
            lock (_lock) return _rack ??= shelf.Rack?.Read();
        }
    }

    /// <summary>How far planning is; null when none is under way.</summary>
    public CuttingProgress? Progress { get; private set; }

    /// <summary>Why the last planning gave nothing. A sentence.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The last change of the rack that can be undone; null when there is none.</summary>
    public RackChange? Last => shelf.Rack?.Changes().FirstOrDefault(c => !c.IsUndone);

    /// <summary>Whether boards were planned, for this state of the piece or an earlier one.</summary>
    public bool WasPlanned => _cutting is not null;

    /// <summary>Changes the rack.</summary>
    /// <exception cref="BadInputException">The board is not there or cannot be; the rack is as it was.</exception>
    /// <exception cref="StoreException">The data cannot be written as things stand.</exception>
    public void Change(Action<BoardRack> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        lock (_lock)
        {
            change(shelf.Rack ?? throw new BadInputException("rack", "nothing is saved at present", "the line at the top of the page says why"));
            (_rack, _asked) = (null, null);
        }

        Changed?.Invoke();
    }

    /// <summary>The cutting for a plan; null when none was planned, or piece, shop or rack have changed so that it does not hold any more.</summary>
    public CuttingPlan? For(Plan plan)
    {
        Rack? rack = Rack;
        lock (_lock)
        {
            if (_cutting is not CuttingPlan cutting) return null;
            if (_asked is { } asked && ReferenceEquals(asked.Plan, plan)) return asked.Cutting;
            bool holds = ReferenceEquals(cutting.Rack, rack) && BoardRules.Of(plan.Shop) == cutting.Rules && StripDemands.Of(plan).SequenceEqual(cutting.Demands);
            _asked = (plan, holds ? cutting : null);
            return holds ? cutting : null;
        }
    }

    /// <summary>Begins to plan which boards a piece is sawn from; what was under way ends.</summary>
    public void Begin(Plan plan)
    {
        Cancel();
        var running = new CancellationTokenSource();
        lock (_lock)
        {
            (_running, Trouble, Progress) = (running, null, new(0, ""));
        }

        Changed?.Invoke();
        _ = Task.Run(() => Work(plan, running));
    }

    /// <summary>Ends planning that is under way; what was planned before stays.</summary>
    public void Cancel()
    {
        lock (_lock)
        {
            _running?.Cancel();
            (_running, Progress) = (null, null);
        }

        Changed?.Invoke();
    }

    /// <summary>The job was sawn: the boards leave the rack, and their rests go back to it.</summary>
    /// <exception cref="BadInputException">The rack has changed since it was planned.</exception>
    /// <exception cref="StoreException">The data cannot be written as things stand.</exception>
    public void Finish(string job, CuttingPlan cutting)
    {
        Change(rack => rack.Finish(job, cutting.Rack, cutting.After));
        lock (_lock) _cutting = null;
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock) _running?.Cancel();
    }

    private void Work(Plan plan, CancellationTokenSource running)
    {
        CuttingPlan? found = null;
        string? trouble = null;
        try
        {
            Rack rack = Rack ?? throw new BadInputException("rack", "nothing is saved at present", "the line at the top of the page says why");
            found = planner.Plan(CuttingRequest.For(plan, rack), new Told(this, running), running.Token);
        }
        catch (OperationCanceledException)
        {
            // As the user wished.
        }
        catch (Exception e) when (e is BadInputException or StoreException)
        {
            trouble = FieldProblem.Capital(e.Message);
        }

        lock (_lock)
        {
            if (_running != running) return;
            if (found is not null) (_cutting, _asked) = (found, null);
            (_running, Progress, Trouble) = (null, null, trouble);
        }

        running.Dispose();
        Changed?.Invoke();
    }

    private sealed class Told(RackDesk desk, CancellationTokenSource running) : IProgress<CuttingProgress>
    {
        public void Report(CuttingProgress value)
        {
            lock (desk._lock)
            {
                if (desk._running != running) return;
                desk.Progress = value;
            }

            desk.Changed?.Invoke();
        }
    }
}
