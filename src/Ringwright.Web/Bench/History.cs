namespace Ringwright.Web.Bench;

/// <summary>A line of states to go back and forth in, without end. Immutable; states must be too.</summary>
/// <typeparam name="T">The kind of state.</typeparam>
public sealed class History<T>
{
    /// <summary>Steps that are kept whole. A state may hold a plan of some MB, and the app may be open for weeks.</summary>
    public const int Whole = 300;

    // So that the line is not folded anew at every step.
    private const int Slack = 50;

    private readonly Folding _folding;
    private readonly ImmutableStack<T> _before;
    private readonly ImmutableStack<T> _folded; // those before _before
    private readonly ImmutableStack<T> _after;
    private readonly string? _run;
    private readonly int _depth; // states in _before

    private History(Folding folding, T now, (ImmutableStack<T> Before, int Depth, ImmutableStack<T> Folded) back, ImmutableStack<T> after, string? run)
    {
        _folding = folding;
        Now = now;
        (_before, _depth, _folded) = back;
        _after = after;
        _run = run;
    }

    /// <summary>A history that starts at <paramref name="state"/>.</summary>
    /// <param name="state">The state.</param>
    /// <param name="fold">What is kept of a state long past; all of it when absent.</param>
    /// <param name="unfold">The state again from what was kept.</param>
    public History(T state, Func<T, T>? fold = null, Func<T, T>? unfold = null)
        : this(new(fold ?? (s => s), unfold ?? (s => s)), state, ([], 0, []), [], null)
    {
    }

    /// <summary>The present state.</summary>
    public T Now { get; }

    /// <summary>Whether there is a state before.</summary>
    public bool CanUndo => !_before.IsEmpty || !_folded.IsEmpty;

    /// <summary>Whether a state was undone.</summary>
    public bool CanRedo => !_after.IsEmpty;

    private (ImmutableStack<T> Before, int Depth, ImmutableStack<T> Folded) Back => (_before, _depth, _folded);

    /// <summary>
    /// A step to <paramref name="state"/>. Steps with the same <paramref name="run"/> one after another (the keystrokes in
    /// one field) count as one.
    /// </summary>
    public History<T> To(T state, string? run = null) => run is not null && run == _run ? new(_folding, state, Back, [], run) : new(_folding, state, Pushed(), [], run);

    /// <summary>Another present state without a step: what is looked at changed, not the work.</summary>
    public History<T> Showing(T state) => new(_folding, state, Back, _after, _run);

    /// <summary>Ends the run, so that the next step stands for itself.</summary>
    public History<T> Sealed() => _run is null ? this : new(_folding, Now, Back, _after, null);

    /// <summary>One step back; the same when there is none.</summary>
    public History<T> Undone()
    {
        if (!_before.IsEmpty) return new(_folding, _before.Peek(), (_before.Pop(), _depth - 1, _folded), _after.Push(Now), null);
        return _folded.IsEmpty ? this : new(_folding, _folding.Unfold(_folded.Peek()), (_before, 0, _folded.Pop()), _after.Push(Now), null);
    }

    /// <summary>One step forth; the same when there is none.</summary>
    public History<T> Redone() => CanRedo ? new(_folding, _after.Peek(), Pushed(), _after.Pop(), null) : this;

    // With the present state among those before; of more than can be whole, the oldest are folded.
    private (ImmutableStack<T> Before, int Depth, ImmutableStack<T> Folded) Pushed()
    {
        ImmutableStack<T> before = _before.Push(Now);
        if (_depth + 1 < Whole + Slack) return (before, _depth + 1, _folded);
        ImmutableStack<T> folded = _folded;
        foreach (T old in before.Skip(Whole).Reverse()) folded = folded.Push(_folding.Fold(old));
        return (ImmutableStack.CreateRange(before.Take(Whole).Reverse()), Whole, folded);
    }

    private sealed record Folding(Func<T, T> Fold, Func<T, T> Unfold);
}
