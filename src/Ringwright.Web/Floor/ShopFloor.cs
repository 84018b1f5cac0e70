using Ringwright.Core.Pieces;
using Ringwright.Store;

namespace Ringwright.Web.Floor;

/// <summary>
/// What is done at the machines, for all windows and tablets: counts at the saw, ticks, clocks. Saved at every change.
/// Thread-safe; <see cref="Changed"/> is raised outside the lock.
/// </summary>
public sealed class ShopFloor
{
    private readonly Lock _lock = new();
    private readonly string? _folder;

    /// <summary>Opens what was saved.</summary>
    /// <param name="folder">The data folder; null where nothing can be saved.</param>
    /// <param name="clock">Gives the time.</param>
    public ShopFloor(string? folder, TimeProvider clock)
    {
        (_folder, Clock) = (folder, clock);
        string? trouble = null;
        Now = folder is null ? FloorState.Empty : FloorFile.Load(folder, out trouble);
        Trouble = trouble;
    }

    /// <summary>Raised after every change.</summary>
    public event Action? Changed;

    /// <summary>The clock on the wall.</summary>
    public TimeProvider Clock { get; }

    /// <summary>The present state.</summary>
    public FloorState Now { get; private set; }

    /// <summary>Why the last change is not saved, or what could not be read; null when all is well. A sentence.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Makes a change and saves it.</summary>
    /// <param name="change">The change.</param>
    /// <param name="what">What is done, for the list of what can be taken back; null for what no one did.</param>
    /// <param name="by">The device that does it; empty for this machine.</param>
    public void Change(Func<FloorState, FloorState> change, string? what = null, string by = "") => Change(change, what, by, null);

    /// <summary>Marks a cut of a ring.</summary>
    /// <param name="job">Piece and ring: <see cref="FloorNames.Job"/>.</param>
    /// <param name="cut">Which wedges.</param>
    /// <param name="kind">What is marked.</param>
    /// <param name="what">The same in words.</param>
    /// <param name="of">The mark that is taken back.</param>
    /// <param name="basis">The wedges of the ring's plan.</param>
    /// <param name="by">The device that does it.</param>
    public void Mark(string job, string cut, MarkKind kind, string what, string? of = null, IEnumerable<CutBasis>? basis = null, string by = "") =>
        Change(s => s.Mark(job, cut, kind, Clock.GetUtcNow(), of, basis), what, by);

    /// <summary>Starts a clock, or stops it.</summary>
    public void Press(string watch, string what, string by = "") => Change(s => s with { Watches = s.Watches.SetItem(watch, s.WatchOf(watch).Pressed(Clock.GetUtcNow())) }, what, by);

    /// <summary>Puts a clock back to nothing.</summary>
    public void Reset(string watch, string what, string by = "") => Change(s => s with { Watches = s.Watches.Remove(watch) }, what, by);

    /// <summary>Takes a step back, or does it again when it is taken back; what others did since stays.</summary>
    /// <param name="number">The step's number.</param>
    /// <returns>Null when it is done; else a sentence that says why not.</returns>
    public string? Return(long number)
    {
        string? problem = null;
        lock (_lock)
        {
            FloorState before = Now;
            FloorStep? step = before.Steps.FirstOrDefault(s => s.Number == number);
            if (step is null) return "This step is too long ago to be taken back.";
            if (step.Run is long run) problem = InRecord(record => Turn(record, run, step.IsBack));
            if (problem is null)
            {
                FloorState after = step.Before.Apply(before, Clock.GetUtcNow());
                FloorStep turned = step with { IsBack = !step.IsBack, Before = FloorReturn.From(after, before) };
                Now = after with { Steps = after.Steps.Replace(step, turned) };
                Save();
            }
        }

        Changed?.Invoke();
        return problem;
    }

    /// <summary>Adds a run to the record that learning works from.</summary>
    /// <param name="run">The run.</param>
    /// <param name="what">What is done, for the list of what can be taken back.</param>
    /// <param name="by">The device that does it.</param>
    /// <param name="change">What else changes with it, such as a count that begins anew.</param>
    /// <returns>Null when it is there; else a sentence that says why not.</returns>
    public string? Record(LoggedRun run, string what, string by = "", Func<FloorState, FloorState>? change = null)
    {
        if (_folder is null) return "The record cannot be written: nothing is saved in this window.";
        long added = 0;
        string? problem = InRecord(record => added = record.Add(run));
        if (problem is null) Change(change ?? (s => s), what, by, added);
        return problem;
    }

    private static void Turn(RunRecord record, long run, bool back)
    {
        if (back) record.PutBack(run);
        else record.Remove(run);
    }

    private void Change(Func<FloorState, FloorState> change, string? what, string by, long? run)
    {
        lock (_lock)
        {
            FloorState before = Now, after = change(before);
            if (ReferenceEquals(before, after) && run is null) return;
            FloorReturn back = FloorReturn.From(after, before);
            bool isStep = what is not null && (run is not null || !back.IsEmpty);
            Now = !isStep ? after : after with { Steps = [.. after.Steps.TakeLast(FloorState.MostSteps - 1), new(1 + after.Steps.Select(s => s.Number).DefaultIfEmpty(0).Max(), Clock.GetUtcNow(), by, what!, back) { Run = run }] };
            Save();
        }

        Changed?.Invoke();
    }

    private string? InRecord(Action<RunRecord> work)
    {
        if (_folder is null) return "The record cannot be written: nothing is saved in this window.";
        try
        {
            using var store = DataStore.Open(_folder, Clock);
            work(store.Record);
            return null;
        }
        catch (Exception e) when (e is StoreException or Core.BadInputException)
        {
            return e.Message;
        }
    }

    private void Save()
    {
        if (_folder is null) return;
        try
        {
            FloorFile.Save(_folder, Now);
            Trouble = null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Trouble = $"The last count could not be saved ({e.Message.TrimEnd('.')}). It is kept while Ringwright runs.";
        }
    }
}
