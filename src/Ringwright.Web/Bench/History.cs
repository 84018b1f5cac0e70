namespace Ringwright.Web.Bench;

/// <summary>A line of states to go back and forth in. Immutable; states must be too.</summary>
/// <typeparam name="T">The kind of state.</typeparam>
public sealed class History<T>
{
    private readonly ImmutableStack<T> _before;
    private readonly ImmutableStack<T> _after;
    private readonly string? _run;

    private History(T now, ImmutableStack<T> before, ImmutableStack<T> after, string? run)
    {
        Now = now;
        _before = before;
        _after = after;
        _run = run;
    }

    /// <summary>A history that starts at <paramref name="state"/>.</summary>
    public History(T state)
        : this(state, [], [], null)
    {
    }

    /// <summary>The present state.</summary>
    public T Now { get; }

    /// <summary>Whether there is a state before.</summary>
    public bool CanUndo => !_before.IsEmpty;

    /// <summary>Whether a state was undone.</summary>
    public bool CanRedo => !_after.IsEmpty;

    /// <summary>
    /// A step to <paramref name="state"/>. Steps with the same <paramref name="run"/> one after another (the keystrokes in
    /// one field) count as one.
    /// </summary>
    public History<T> To(T state, string? run = null) =>
        new(state, run is not null && run == _run ? _before : _before.Push(Now), [], run);

    /// <summary>Another present state without a step: what is looked at changed, not the work.</summary>
    public History<T> Showing(T state) => new(state, _before, _after, _run);

    /// <summary>Ends the run, so that the next step stands for itself.</summary>
    public History<T> Sealed() => _run is null ? this : new(Now, _before, _after, null);

    /// <summary>One step back; the same when there is none.</summary>
    public History<T> Undone() => CanUndo ? new(_before.Peek(), _before.Pop(), _after.Push(Now), null) : this;

    /// <summary>One step forth; the same when there is none.</summary>
    public History<T> Redone() => CanRedo ? new(_after.Peek(), _before.Push(Now), _after.Pop(), null) : this;
}
