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
    public void Change(Func<FloorState, FloorState> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        lock (_lock)
        {
            FloorState before = Now;
            Now = change(before);
            if (!ReferenceEquals(before, Now)) Save();
        }

        Changed?.Invoke();
    }

    /// <summary>Marks a cut of a ring.</summary>
    public void Mark(string piece, string ring, string cut, MarkKind kind, string? of = null) =>
        Change(s => s.Add(piece, ring, [new(Guid.NewGuid().ToString("N"), cut, kind, Clock.GetUtcNow().ToUnixTimeMilliseconds(), of)]));

    /// <summary>Starts a clock, or stops it.</summary>
    public void Press(string watch) => Change(s => s with { Watches = s.Watches.SetItem(watch, s.WatchOf(watch).Pressed(Clock.GetUtcNow())) });

    /// <summary>Puts a clock back to nothing.</summary>
    public void Reset(string watch) => Change(s => s with { Watches = s.Watches.Remove(watch) });

    /// <summary>Adds a run to the record that learning works from.</summary>
    /// <returns>Null when it is there; else a sentence that says why not.</returns>
    public string? Record(LoggedRun run)
    {
        if (_folder is null) return "The record cannot be written: nothing is saved in this window.";
        try
        {
            using var store = DataStore.Open(_folder, Clock);
            store.Record.Add(run);
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
