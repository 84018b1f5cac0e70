namespace Ringwright.Web.Floor;

/// <summary>The names under which things are kept on the shop floor: the piece's number and the ring's mark are in them.</summary>
public static class FloorNames
{
    private const string Old = " | ";

    /// <summary>A ring of a piece.</summary>
    public static string Job(string piece, string ring) => $"{piece}/{ring}";

    /// <summary>Count and clock at the sander.</summary>
    public static string Sander(string job) => job + "/sander";

    /// <summary>The clock of the glue.</summary>
    public static string OpenTime(string piece) => piece + "/open time";

    /// <summary>A step of the piece that is ticked off.</summary>
    public static string Tick(string piece, string step) => $"{piece}/{step}";

    /// <summary>The beginning of the gluing steps of a ring.</summary>
    public static string Gluing(string ring) => $"glue | {ring} | ";

    /// <summary>Whether anything stands to a job's account that would mean something else for another wedge.</summary>
    public static bool HasWork(this FloorState state, string job)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableArray<Mark> marks = state.MarksOf(job);
        return marks.Select(m => m.Cut).Distinct().Any(c => CutTally.Of(marks, c).Sawn > 0) || state.Counts.ContainsKey(Sander(job)) || state.TicksOf(job).Any();
    }

    /// <summary>The gluing steps of a ring that are ticked off.</summary>
    public static IEnumerable<string> TicksOf(this FloorState state, string job)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(job);
        return job.Split('/') is [var piece, var ring] ? state.Ticks.Where(t => t.StartsWith(Tick(piece, Gluing(ring)), StringComparison.Ordinal)) : [];
    }

    /// <summary>Whether something is kept by the name of a piece, as the first version did.</summary>
    public static bool HasOld(this FloorState state, string name)
    {
        ArgumentNullException.ThrowIfNull(state);
        string start = name + Old;
        return state.Marks.Keys.Concat(state.Ticks).Concat(state.Watches.Keys).Concat(state.Counts.Keys).Any(k => k.StartsWith(start, StringComparison.Ordinal));
    }

    /// <summary>What is kept by names, under a piece's number and its rings' marks; what fits no ring stays as it was.</summary>
    /// <param name="state">The state.</param>
    /// <param name="name">Name of the piece.</param>
    /// <param name="piece">Its number.</param>
    /// <param name="rings">Names of its rings.</param>
    /// <param name="marks">Their marks.</param>
    public static FloorState Claimed(this FloorState state, string name, string piece, IEnumerable<string> rings, IEnumerable<string> marks)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.HasOld(name)) return state;
        var now = new Dictionary<string, string>(StringComparer.Ordinal) { [$"{name}{Old}open time"] = OpenTime(piece) };
        foreach ((string ring, string mark) in rings.Zip(marks))
        {
            string job = Job(piece, mark);
            now[$"{name}{Old}{ring}"] = job;
            now[$"{name}{Old}{ring}{Old}sander"] = Sander(job);
        }

        return state with
        {
            Marks = Renamed(state.Marks, now, (there, more) => [.. there, .. more]),
            Watches = Renamed(state.Watches, now, (there, _) => there),
            Counts = Renamed(state.Counts, now, (there, more) => there + more),
            Ticks = state.Ticks.Select(t => NewTick(t, name, piece, rings.Zip(marks))).ToImmutableSortedSet(StringComparer.Ordinal),
        };
    }

    /// <summary>What is kept under one number of a piece, under another.</summary>
    public static FloorState Moved(this FloorState state, string from, string to)
    {
        ArgumentNullException.ThrowIfNull(state);
        string start = from + "/";
        string New(string key) => key.StartsWith(start, StringComparison.Ordinal) ? $"{to}/{key[start.Length..]}" : key;
        return !state.Marks.Keys.Concat(state.Ticks).Concat(state.Watches.Keys).Concat(state.Counts.Keys).Any(k => k.StartsWith(start, StringComparison.Ordinal)) ? state : state with
        {
            Marks = state.Marks.ToImmutableSortedDictionary(m => New(m.Key), m => m.Value, StringComparer.Ordinal),
            Watches = state.Watches.ToImmutableSortedDictionary(m => New(m.Key), m => m.Value, StringComparer.Ordinal),
            Counts = state.Counts.ToImmutableSortedDictionary(m => New(m.Key), m => m.Value, StringComparer.Ordinal),
            Bases = state.Bases.ToImmutableSortedDictionary(m => New(m.Key), m => m.Value, StringComparer.Ordinal),
            Ticks = state.Ticks.Select(New).ToImmutableSortedSet(StringComparer.Ordinal),
            Steps = [],
        };
    }

    private static ImmutableSortedDictionary<string, T> Renamed<T>(ImmutableSortedDictionary<string, T> all, Dictionary<string, string> now, Func<T, T, T> both)
    {
        foreach ((string old, string name) in now)
            if (all.TryGetValue(old, out T? value)) all = all.Remove(old).SetItem(name, all.TryGetValue(name, out T? there) ? both(there, value) : value);
        return all;
    }

    private static string NewTick(string tick, string name, string piece, IEnumerable<(string Name, string Mark)> rings)
    {
        string start = name + Old;
        if (!tick.StartsWith(start, StringComparison.Ordinal)) return tick;
        string step = tick[start.Length..];
        if (!step.StartsWith("glue | ", StringComparison.Ordinal)) return Tick(piece, step);
        // Of names where one begins with another, the longer fits better.
        (string Name, string Mark)? ring = rings.OrderByDescending(r => r.Name.Length).Select(r => ((string, string)?)r).FirstOrDefault(r => step.StartsWith(Gluing(r!.Value.Item1), StringComparison.Ordinal));
        return ring is { } found ? Tick(piece, Gluing(found.Mark) + step[Gluing(found.Name).Length..]) : tick;
    }
}
