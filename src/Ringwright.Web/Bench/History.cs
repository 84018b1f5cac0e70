namespace Ringwright.Web.Bench;

/// <summary>A line of states to go back and forth in; the oldest are forgotten. Immutable; states must be too.</summary>
/// <typeparam name="T">The kind of state.</typeparam>
public sealed class History<T>
{
    /// <summary>Steps that can be gone back at least. A state may hold a plan of some MB, and the app may be open for weeks.</summary>
    public const int Most = 300;

    // So that the line is not cut anew at every step.
    private const int Slack = 50;

    private readonly ImmutableStack<T> _before;
    private readonly ImmutableStack<T> _after;
    private readonly string? _run;
    private readonly int _depth; // states in _before

    private History(T now, ImmutableStack<T> before, int depth, ImmutableStack<T> after, string? run)
    {
        Now = now;
        (_before, _depth) = depth < Most + Slack ? (before, depth) : (ImmutableStack.CreateRange(before.Take(Most).Reverse()), Most);
        _after = after;
        _run = run;
    }

    /// <summary>A history that starts at <paramref name="state"/>.</summary>
    public History(T state)
        : this(state, [], 0, [], null)
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
        run is not null && run == _run ? new(state, _before, _depth, [], run) : new(state, _before.Push(Now), _depth + 1, [], run);

    /// <summary>Another present state without a step: what is looked at changed, not the work.</summary>
    public History<T> Showing(T state) => new(state, _before, _depth, _after, _run);

    /// <summary>Ends the run, so that the next step stands for itself.</summary>
    public History<T> Sealed() => _run is null ? this : new(Now, _before, _depth, _after, null);

    /// <summary>One step back; the same when there is none.</summary>
    public History<T> Undone() => CanUndo ? new(_before.Peek(), _before.Pop(), _depth - 1, _after.Push(Now), null) : this;

    /// <summary>One step forth; the same when there is none.</summary>
    public History<T> Redone() => CanRedo ? new(_after.Peek(), _before.Push(Now), _depth + 1, _after.Pop(), null) : this;
}
