using System.Globalization;
using Ringwright.Core.Planning;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Stations;

/// <summary>How far the gluing has come, from what is ticked off.</summary>
internal sealed class GlueTicks
{
    private readonly GluePlan _plan;
    private readonly Func<string, bool> _isDone;
    private readonly ImmutableArray<GlueTask> _tasks;

    /// <param name="plan">The glue plan.</param>
    /// <param name="tasks">Its tasks.</param>
    /// <param name="isDone">Whether a step is ticked off.</param>
    /// <param name="marks">The marks of the piece's rings.</param>
    public GlueTicks(GluePlan plan, ImmutableArray<GlueTask> tasks, Func<string, bool> isDone, ImmutableArray<string> marks)
    {
        (_plan, _tasks, _isDone) = (plan, tasks, isDone);
        Steps = [.. tasks.Select((t, i) => NameOf(tasks, i, marks))];
    }

    /// <summary>The name of each task among the piece's ticks.</summary>
    public ImmutableArray<string> Steps { get; }

    /// <summary>Tasks that are done.</summary>
    public int Done => Steps.Count(s => _isDone(s));

    /// <summary>Whether all of a ring is glued; a ring of one piece always is.</summary>
    public bool IsGlued(int ring) => Within(ring).All(_isDone);

    /// <summary>Whether the parts of a ring are glued that close it.</summary>
    public bool HasParts(int ring) => Of(ring, GlueTaskKind.Part).ToArray() is { Length: > 0 } parts && parts.All(_isDone);

    /// <summary>Whether a ring is closed.</summary>
    public bool IsClosed(int ring) => Of(ring, GlueTaskKind.Close).All(_isDone);

    /// <summary>Whether a ring lies on the stack, or another on it.</summary>
    public bool IsStacked(int ring) => _tasks.Index().Any(t => t.Item.Kind == GlueTaskKind.Stack && _isDone(Steps[t.Index]) && Joins(t.Item, ring));

    private static string NameOf(ImmutableArray<GlueTask> tasks, int index, ImmutableArray<string> marks)
    {
        GlueTask task = tasks[index];
        int number = tasks.Take(index).Count(t => t.Kind == task.Kind && t.Ring == task.Ring) + 1;
        return string.Create(CultureInfo.InvariantCulture, $"{FloorNames.Gluing(marks[task.Ring])}{task.Kind} {number}");
    }

    private bool Joins(GlueTask task, int ring)
    {
        int at = _tasks.Where(t => t.Kind == GlueTaskKind.Stack).ToList().FindIndex(t => ReferenceEquals(t, task));
        StackJoint joint = _plan.Stack[at];
        return joint.Lower == ring || joint.Upper == ring;
    }

    private IEnumerable<string> Within(int ring) => _tasks.Index().Where(t => t.Item.Ring == ring && t.Item.Kind != GlueTaskKind.Stack).Select(t => Steps[t.Index]);

    private IEnumerable<string> Of(int ring, GlueTaskKind kind) => _tasks.Index().Where(t => t.Item.Ring == ring && t.Item.Kind == kind).Select(t => Steps[t.Index]);
}
