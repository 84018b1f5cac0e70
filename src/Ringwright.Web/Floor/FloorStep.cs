using System.Text.Json.Serialization;

namespace Ringwright.Web.Floor;

/// <summary>Something done on the shop floor, on this machine or another device, that can be taken back and done again.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">When.</param>
/// <param name="By">Which device; empty for this machine.</param>
/// <param name="What">What was done, in a few words.</param>
/// <param name="Before">How to take it back; when it is taken back, how to do it again.</param>
public sealed record FloorStep(long Number, DateTimeOffset At, string By, string What, FloorReturn Before)
{
    /// <summary>Whether it is taken back.</summary>
    public bool IsBack { get; init; }

    /// <summary>The run that it added to the record.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public long? Run { get; init; }
}

/// <summary>
/// The way back from a change: just what it touched, so that what others did meanwhile stays. Marks are taken back by marks, for
/// a tablet sends its own again; counts by their difference; the rest is put back as it was.
/// </summary>
public sealed record FloorReturn
{
    /// <summary>Marks to take back, by job.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<string>> Marks { get; init; } = ImmutableSortedDictionary.Create<string, ImmutableArray<string>>(StringComparer.Ordinal);

    /// <summary>Ticks, and whether they were set.</summary>
    public ImmutableSortedDictionary<string, bool> Ticks { get; init; } = ImmutableSortedDictionary.Create<string, bool>(StringComparer.Ordinal);

    /// <summary>Clocks as they were; one that was never started is <see cref="Watch.Zero"/>.</summary>
    public ImmutableSortedDictionary<string, Watch> Watches { get; init; } = ImmutableSortedDictionary.Create<string, Watch>(StringComparer.Ordinal);

    /// <summary>What is to be added to counts.</summary>
    public ImmutableSortedDictionary<string, int> Counts { get; init; } = ImmutableSortedDictionary.Create<string, int>(StringComparer.Ordinal);

    /// <summary>What the counts were of; an empty list where nothing was said.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<CutBasis>> Bases { get; init; } = ImmutableSortedDictionary.Create<string, ImmutableArray<CutBasis>>(StringComparer.Ordinal);

    /// <summary>Whether there is nothing to go back to.</summary>
    [JsonIgnore]
    public bool IsEmpty => Marks.IsEmpty && Ticks.IsEmpty && Watches.IsEmpty && Counts.IsEmpty && Bases.IsEmpty;

    /// <summary>The way back from one state to the one before.</summary>
    public static FloorReturn From(FloorState after, FloorState before)
    {
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(before);
        var back = new FloorReturn();
        return back with
        {
            Marks = back.Marks.AddRange(after.Marks.Where(j => before.Marks.GetValueOrDefault(j.Key) != j.Value).Select(j =>
                KeyValuePair.Create(j.Key, j.Value.Select(m => m.Id).Except((before.Marks.TryGetValue(j.Key, out ImmutableArray<Mark> was) ? was : []).Select(m => m.Id)).ToImmutableArray())).Where(j => !j.Value.IsEmpty)),
            Ticks = back.Ticks.AddRange(after.Ticks.SymmetricExcept(before.Ticks).Select(t => KeyValuePair.Create(t, before.Ticks.Contains(t)))),
            Watches = back.Watches.AddRange(Keys(after.Watches, before.Watches).Select(k => KeyValuePair.Create(k, before.WatchOf(k)))),
            Counts = back.Counts.AddRange(Keys(after.Counts, before.Counts).Select(k => KeyValuePair.Create(k, before.Counts.GetValueOrDefault(k) - after.Counts.GetValueOrDefault(k)))),
            Bases = back.Bases.AddRange(after.Bases.Keys.Union(before.Bases.Keys).Where(k => !after.BasisOf(k).SequenceEqual(before.BasisOf(k))).Select(k => KeyValuePair.Create(k, before.BasisOf(k)))),
        };
    }

    /// <summary>Goes that way from a state.</summary>
    /// <param name="now">The state.</param>
    /// <param name="at">The time for marks that take others back.</param>
    public FloorState Apply(FloorState now, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(now);
        FloorState state = now;
        foreach ((string job, ImmutableArray<string> ids) in Marks)
        {
            HashSet<string> back = [.. ids];
            foreach (Mark mark in now.MarksOf(job).Where(m => back.Contains(m.Id)))
                state = state.Mark(job, mark.Cut, MarkKind.Undone, at, mark.Id);
        }

        foreach ((string tick, bool set) in Ticks) state = state with { Ticks = set ? state.Ticks.Add(tick) : state.Ticks.Remove(tick) };
        foreach ((string name, Watch watch) in Watches) state = state with { Watches = watch == Watch.Zero ? state.Watches.Remove(name) : state.Watches.SetItem(name, watch) };
        foreach ((string name, int more) in Counts) state = state.Count(name, more);
        foreach ((string job, ImmutableArray<CutBasis> basis) in Bases) state = state with { Bases = basis.IsEmpty ? state.Bases.Remove(job) : state.Bases.SetItem(job, basis) };
        return state;
    }

    private static IEnumerable<string> Keys<T>(ImmutableSortedDictionary<string, T> after, ImmutableSortedDictionary<string, T> before) =>
        after.Keys.Union(before.Keys).Where(k => !(after.TryGetValue(k, out T? now) && before.TryGetValue(k, out T? was) && Equals(now, was)));
}
