namespace Ringwright.Web.Floor;

/// <summary>A clock that is started and stopped.</summary>
/// <param name="Since">When it was started; null while it stands.</param>
/// <param name="Before">Seconds it ran before that.</param>
public sealed record Watch(DateTimeOffset? Since, double Before)
{
    /// <summary>Never started.</summary>
    public static Watch Zero { get; } = new(null, 0);

    /// <summary>Seconds it has run.</summary>
    public double Seconds(DateTimeOffset now) => Before + (Since is DateTimeOffset since ? Math.Max(0, (now - since).TotalSeconds) : 0);

    /// <summary>Started, or stopped.</summary>
    public Watch Pressed(DateTimeOffset now) => Since is null ? this with { Since = now } : new(null, Seconds(now));
}

/// <summary>
/// What was done on the shop floor. Undo of the plan does not take it back; <see cref="Steps"/> do. All of it is kept under the
/// piece's number and the ring's mark (<see cref="FloorNames"/>), never under their names. Immutable.
/// </summary>
public sealed record FloorState
{
    /// <summary>Steps that can be taken back.</summary>
    public const int MostSteps = 100;

    /// <summary>Nothing done yet.</summary>
    public static FloorState Empty { get; } = new();

    /// <summary>Marks at the saw, by job: piece and ring.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<Mark>> Marks { get; init; } = ImmutableSortedDictionary.Create<string, ImmutableArray<Mark>>(StringComparer.Ordinal);

    /// <summary>What is ticked off.</summary>
    public ImmutableSortedSet<string> Ticks { get; init; } = ImmutableSortedSet.Create<string>(StringComparer.Ordinal);

    /// <summary>Clocks by name.</summary>
    public ImmutableSortedDictionary<string, Watch> Watches { get; init; } = ImmutableSortedDictionary.Create<string, Watch>(StringComparer.Ordinal);

    /// <summary>Counts by name.</summary>
    public ImmutableSortedDictionary<string, int> Counts { get; init; } = ImmutableSortedDictionary.Create<string, int>(StringComparer.Ordinal);

    /// <summary>The wedges that what was done to a ring is of, by job.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<CutBasis>> Bases { get; init; } = ImmutableSortedDictionary.Create<string, ImmutableArray<CutBasis>>(StringComparer.Ordinal);

    /// <summary>What was done last, the newest at the end.</summary>
    public ImmutableArray<FloorStep> Steps { get; init; } = [];

    /// <summary>The marks of a ring.</summary>
    public ImmutableArray<Mark> MarksOf(string job) => Marks.GetValueOrDefault(job, []);

    /// <summary>The wedges that a job's work is of; empty when nothing was done.</summary>
    public ImmutableArray<CutBasis> BasisOf(string job) => Bases.GetValueOrDefault(job, []);

    /// <summary>With more marks of a ring; those that are there already are not added again.</summary>
    /// <param name="job">Piece and ring.</param>
    /// <param name="more">The marks.</param>
    /// <param name="basis">The wedges that were counted; taken when nothing was counted before.</param>
    public FloorState Add(string job, IEnumerable<Mark> more, IEnumerable<CutBasis>? basis = null)
    {
        ImmutableArray<Mark> there = MarksOf(job);
        HashSet<string> known = [.. there.Select(m => m.Id)];
        Mark[] fresh = [.. more.Where(m => known.Add(m.Id))];
        return fresh.Length == 0 ? this : (this with { Marks = Marks.SetItem(job, [.. there, .. fresh]) }).On(job, basis, !this.HasWork(job));
    }

    /// <summary>With one mark more, later than all before.</summary>
    public FloorState Mark(string job, string cut, MarkKind kind, DateTimeOffset now, string? of = null, IEnumerable<CutBasis>? basis = null) =>
        Add(job, [new(Guid.NewGuid().ToString("N"), cut, kind, NextTime(job, now), of)], basis);

    /// <summary>A time for a mark that follows all that are there, whatever the clocks of other devices say.</summary>
    public long NextTime(string job, DateTimeOffset now) => Math.Max(now.ToUnixTimeMilliseconds(), MarksOf(job).Select(m => m.At + 1).DefaultIfEmpty(0).Max());

    /// <summary>With what a job's work is of.</summary>
    /// <param name="job">Piece and ring.</param>
    /// <param name="basis">The wedges now.</param>
    /// <param name="anew">Whether what was said before no longer counts.</param>
    public FloorState On(string job, IEnumerable<CutBasis>? basis, bool anew = false) =>
        basis is null || (!anew && Bases.ContainsKey(job)) || basis.SequenceEqual(BasisOf(job)) ? this : this with { Bases = Bases.SetItem(job, [.. basis]) };

    /// <summary>With a tick set or taken away.</summary>
    public FloorState Turn(string tick) => this with { Ticks = Ticks.SymmetricExcept([tick]) };

    /// <summary>With a count changed, never below nought.</summary>
    public FloorState Count(string name, int by)
    {
        int count = Math.Max(0, Counts.GetValueOrDefault(name) + by);
        return this with { Counts = count == 0 ? Counts.Remove(name) : Counts.SetItem(name, count) };
    }

    /// <summary>A clock.</summary>
    public Watch WatchOf(string name) => Watches.GetValueOrDefault(name, Watch.Zero);
}
