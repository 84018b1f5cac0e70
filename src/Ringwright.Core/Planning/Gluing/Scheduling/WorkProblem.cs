using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>Something of which only so much can be in use at one time.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Capacity">How many there are.</param>
public sealed record WorkResource(string Name, int Capacity)
{
    /// <summary>Minutes in a day.</summary>
    public const int Day = 24 * 60;

    /// <summary>Minutes from the start of each day in which it can be used; null when it always can. A use lies within one day.</summary>
    public int? Session { get; init; }

    /// <summary>The first time from <paramref name="minute"/> on at which a use of that length can begin.</summary>
    public int Open(int minute, int length)
    {
        if (Session is not int session) return minute;
        int day = minute / Day, into = minute % Day;
        return into + length <= session ? minute : (day + 1) * Day;
    }
}

/// <summary>A use of a resource, from the start of its task on.</summary>
/// <param name="Resource">Which resource.</param>
/// <param name="Length">For how long, minutes.</param>
/// <param name="Amount">How many of it.</param>
public sealed record ResourceUse(int Resource, int Length, int Amount = 1);

/// <summary>A piece of work.</summary>
/// <param name="Length">Minutes from its start until what comes after it may begin.</param>
/// <param name="Uses">What it uses; a use may end before the task does, but not after.</param>
/// <param name="After">Tasks that must be over before it begins; each has a lower number.</param>
public sealed record WorkTask(int Length, ImmutableArray<ResourceUse> Uses, ImmutableArray<int> After);

/// <summary>
/// Work to be put in an order: tasks with their resources. All times are whole minutes. A job shop is the case in which each task
/// uses one machine for all its length.
/// </summary>
public sealed class WorkProblem
{
    /// <summary>A problem.</summary>
    /// <param name="resources">The resources.</param>
    /// <param name="tasks">The tasks, each behind those it comes after.</param>
    /// <exception cref="ArgumentException">A task cannot be done at all, or comes after itself or a later one.</exception>
    public WorkProblem(IEnumerable<WorkResource> resources, IEnumerable<WorkTask> tasks)
    {
        (Resources, Tasks) = ([.. resources], [.. tasks]);
        for (int i = 0; i < Tasks.Length; i++)
        {
            if (Tasks[i].Length < 0 || Tasks[i].After.Any(a => a < 0 || a >= i)) throw new ArgumentException($"Task {i} has no length or comes after a later one.", nameof(tasks));
            if (Tasks[i].Uses.Any(u => u.Length > Tasks[i].Length || u.Length < 0 || u.Amount > Resources[u.Resource].Capacity || u.Length > Resources[u.Resource].Session))
                throw new ArgumentException($"Task {i} uses more than there is.", nameof(tasks));
        }
    }

    /// <summary>The resources.</summary>
    public ImmutableArray<WorkResource> Resources { get; }

    /// <summary>The tasks.</summary>
    public ImmutableArray<WorkTask> Tasks { get; }

    /// <summary>The earliest each task can begin if nothing but its predecessors held it up.</summary>
    public int[] Heads()
    {
        int[] heads = new int[Tasks.Length];
        for (int i = 0; i < heads.Length; i++)
            foreach (int before in Tasks[i].After) heads[i] = Math.Max(heads[i], heads[before] + Tasks[before].Length);
        return heads;
    }

    /// <summary>From the start of each task to the end of all, along the longest way.</summary>
    public int[] Tails()
    {
        int[] tails = [.. Tasks.Select(t => t.Length)];
        for (int i = tails.Length - 1; i >= 0; i--)
            foreach (int before in Tasks[i].After) tails[before] = Math.Max(tails[before], Tasks[before].Length + tails[i]);
        return tails;
    }

    /// <summary>No order of the work is shorter: the longest chain of tasks, and for each resource its work between the least that comes before and after.</summary>
    public int LowerBound()
    {
        int[] heads = Heads(), tails = Tails();
        int bound = tails.DefaultIfEmpty(0).Max();
        for (int r = 0; r < Resources.Length; r++) bound = Math.Max(bound, LowerBound(r, heads, tails));
        return bound;
    }

    private int LowerBound(int resource, int[] heads, int[] tails)
    {
        long work = 0;
        int before = int.MaxValue, after = int.MaxValue;
        for (int i = 0; i < Tasks.Length; i++)
            foreach (ResourceUse use in Tasks[i].Uses.Where(u => u.Resource == resource && u.Length * u.Amount > 0))
            {
                work += (long)use.Length * use.Amount;
                before = Math.Min(before, heads[i]);
                after = Math.Min(after, tails[i] - use.Length);
            }

        if (work == 0) return 0;
        if (Resources[resource].Session is null && Hours(resource) is int hours) return Math.Max(Busy(), DaysOfStarts(resource, hours, tails));
        return Busy();

        int Busy() => BusyBound(resource, work, before, after);
    }

    private int BusyBound(int resource, long work, int before, int after)
    {
        int length = (int)((work + Resources[resource].Capacity - 1) / Resources[resource].Capacity);
        if (Resources[resource].Session is not int session) return before + length + after;
        // Work that fills days: nights lie between, whatever comes before it.
        int nights = (length - 1) / session;
        return Math.Max(before + length, (nights * WorkResource.Day) + length - (nights * session)) + after;
    }

    // The session in which all uses of a resource begin, when each of them begins with work of the same hours; null when some do not.
    private int? Hours(int resource)
    {
        int?[] hours = [.. Tasks.Where(t => t.Uses.Any(u => u.Resource == resource && u.Length > 0)).Select(t => t.Uses.Where(u => u.Length > 0).Select(u => Resources[u.Resource].Session - u.Length).Max())];
        return hours.Length > 0 && hours.All(h => h is not null) ? hours.Max() : null;
    }

    // What begins only within some hours of a day can begin only so often on one day: the days it takes at least, and the shortest end.
    private int DaysOfStarts(int resource, int hours, int[] tails)
    {
        (ResourceUse Use, int Tail)[] uses = [.. Tasks.SelectMany((t, i) => t.Uses.Where(u => u.Resource == resource && u.Length > 0).Select(u => (u, tails[i])))];
        long perDay = Resources[resource].Capacity * ((hours / uses.Min(u => u.Use.Length)) + 1L), all = uses.Sum(u => (long)u.Use.Amount);
        return (int)(((all + perDay - 1) / perDay) - 1) * WorkResource.Day + uses.Min(u => u.Tail);
    }
}
