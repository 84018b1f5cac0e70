using System.Globalization;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Viewing;

/// <summary>
/// The plans that browsers look at, each under a version of its own. A version is kept as long as someone holds its
/// <see cref="ViewedPlan"/>, and no longer: a mesh may have some ten megabytes. Thread-safe.
/// </summary>
internal sealed class ViewerStore
{
    private readonly Lock _lock = new();
    private readonly List<WeakReference<ViewedPlan>> _viewed = [];

    // A browser may still hold what an earlier run gave out.
    private readonly string _run = Guid.NewGuid().ToString("N")[..8];
    private int _count;

    /// <summary>The plan under its version: the same for the same plan while it is held.</summary>
    public ViewedPlan Publish(Plan plan)
    {
        lock (_lock)
        {
            if (First(v => ReferenceEquals(v.Plan, plan)) is { } known) return known;
            ViewedPlan viewed = new(plan, string.Create(CultureInfo.InvariantCulture, $"{_run}-{++_count}"));
            _viewed.RemoveAll(w => !w.TryGetTarget(out _));
            _viewed.Add(new(viewed));
            return viewed;
        }
    }

    /// <summary>The plan of a version; null when nobody holds it any more.</summary>
    public ViewedPlan? Find(string version)
    {
        lock (_lock) return First(v => v.Version == version);
    }

    /// <summary>Whether a version was given out by this run, be it kept or not: what asks for it may have been overtaken by an edit.</summary>
    public bool WasGiven(string version)
    {
        lock (_lock)
        {
            return version.StartsWith(_run + "-", StringComparison.Ordinal)
                && int.TryParse(version.AsSpan(_run.Length + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= _count;
        }
    }

    private ViewedPlan? First(Func<ViewedPlan, bool> wanted)
    {
        foreach (WeakReference<ViewedPlan> held in _viewed)
            if (held.TryGetTarget(out ViewedPlan? viewed) && wanted(viewed)) return viewed;
        return null;
    }
}
