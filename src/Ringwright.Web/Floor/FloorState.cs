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

/// <summary>What was done on the shop floor: done is done, so it is no step that undo of the plan takes back. Immutable.</summary>
public sealed record FloorState
{
    /// <summary>Nothing done yet.</summary>
    public static FloorState Empty { get; } = new();

    /// <summary>Marks at the saw, by piece and ring.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<Mark>> Marks { get; init; } = ImmutableSortedDictionary.Create<string, ImmutableArray<Mark>>(StringComparer.Ordinal);

    /// <summary>What is ticked off.</summary>
    public ImmutableSortedSet<string> Ticks { get; init; } = ImmutableSortedSet.Create<string>(StringComparer.Ordinal);

    /// <summary>Clocks by name.</summary>
    public ImmutableSortedDictionary<string, Watch> Watches { get; init; } = ImmutableSortedDictionary.Create<string, Watch>(StringComparer.Ordinal);

    /// <summary>Counts by name.</summary>
    public ImmutableSortedDictionary<string, int> Counts { get; init; } = ImmutableSortedDictionary.Create<string, int>(StringComparer.Ordinal);

    /// <summary>The name under which the marks of a ring are kept.</summary>
    public static string Job(string piece, string ring) => $"{piece} | {ring}";

    /// <summary>The marks of a ring.</summary>
    public ImmutableArray<Mark> MarksOf(string piece, string ring) => Marks.GetValueOrDefault(Job(piece, ring), []);

    /// <summary>With more marks of a ring; those that are there already are not added again.</summary>
    public FloorState Add(string piece, string ring, IEnumerable<Mark> more)
    {
        ImmutableArray<Mark> there = MarksOf(piece, ring);
        HashSet<string> known = [.. there.Select(m => m.Id)];
        Mark[] fresh = [.. more.Where(m => known.Add(m.Id))];
        return fresh.Length == 0 ? this : this with { Marks = Marks.SetItem(Job(piece, ring), [.. there, .. fresh]) };
    }

    /// <summary>With a tick set or taken away.</summary>
    public FloorState Turn(string tick) => this with { Ticks = Ticks.SymmetricExcept([tick]) };

    /// <summary>A clock.</summary>
    public Watch WatchOf(string name) => Watches.GetValueOrDefault(name, Watch.Zero);
}
