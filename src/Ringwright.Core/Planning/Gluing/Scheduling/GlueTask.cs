using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What the hands do in one go.</summary>
public enum GlueTaskKind
{
    /// <summary>Glue within a ring or board that does not close it.</summary>
    Part,

    /// <summary>True the halves of a ring.</summary>
    True,

    /// <summary>Close a ring.</summary>
    Close,

    /// <summary>Flatten a ring.</summary>
    Flatten,

    /// <summary>Lay a ring on the stack, or join two sections.</summary>
    Stack,
}

/// <summary>A piece of handwork and the waiting that follows from it. Whole minutes, rounded up.</summary>
/// <param name="Kind">What kind of work.</param>
/// <param name="Ring">Number of the ring it is about, 0-based; in the stack the one that is laid on.</param>
/// <param name="Text">What is done, in a few words.</param>
/// <param name="Hands">Minutes of handwork.</param>
/// <param name="Clamp">What holds it afterwards.</param>
/// <param name="Clamps">How many of that; 0 for none.</param>
/// <param name="Clamped">Minutes from the start until the clamp comes off.</param>
/// <param name="Length">Minutes from the start until the next work on it may begin.</param>
public sealed record GlueTask(GlueTaskKind Kind, int Ring, string Text, int Hands, GlueClamp Clamp, int Clamps, int Clamped, int Length);

/// <summary>Collects tasks with what they come after.</summary>
internal sealed class GlueTaskList(Shop shop)
{
    private readonly List<(GlueTask Task, int[] After)> _all = [];

    public IReadOnlyList<(GlueTask Task, int[] After)> All => _all;

    /// <summary>Handwork without glue.</summary>
    public int Hand(GlueTaskKind kind, int ring, string text, double minutes, params int[] after) =>
        Add(new(kind, ring, text, Whole(minutes), GlueClamp.Rubbed, 0, 0, Whole(minutes)), after);

    /// <summary>Glue-ups made one right after the other; what comes after them waits for the clamp, or until the glue has cured.</summary>
    public int Glue(GlueTaskKind kind, int ring, string text, double minutes, GlueClamp clamp, int clamps, bool cure, params int[] after)
    {
        int hands = Whole(minutes), clamped = hands + Whole(shop.Adhesive.ClampTime.Minutes);
        int most = clamp switch { GlueClamp.Band => shop.Gluing.BandClamps, GlueClamp.Press => shop.Gluing.Presses, _ => 0 };
        return Add(new(kind, ring, text, hands, clamp, Math.Min(clamps, most), clamped, cure ? hands + Whole(shop.Adhesive.CureTime.Minutes) : clamped), after);
    }

    /// <summary>The resources, and the tasks that use them.</summary>
    public WorkProblem Problem()
    {
        // A task longer than a day in the shop stretches the day.
        int? session = shop.Gluing.Session is Duration day ? Math.Max(Whole(day.Minutes), _all.Select(t => t.Task.Hands).DefaultIfEmpty(0).Max()) : null;
        return new(
            [new("hands", 1) { Session = session >= WorkResource.Day ? null : session }, new("band clamps", shop.Gluing.BandClamps), new("presses", shop.Gluing.Presses)],
            _all.Select(t => new WorkTask(t.Task.Length, [.. Uses(t.Task)], [.. t.After])));
    }

    private static IEnumerable<ResourceUse> Uses(GlueTask task)
    {
        yield return new(0, task.Hands);
        if (task.Clamps > 0) yield return new(task.Clamp == GlueClamp.Band ? 1 : 2, task.Clamped, task.Clamps);
    }

    private int Add(GlueTask task, int[] after)
    {
        _all.Add((task, after));
        return _all.Count - 1;
    }

    // The hair keeps what is whole but for rounding.
    private static int Whole(double minutes) => (int)Math.Ceiling(minutes - 1e-9);
}
