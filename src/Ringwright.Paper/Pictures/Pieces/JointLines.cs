using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>The joints of one ring on the paper; those that would run together are left out.</summary>
internal sealed class JointLines
{
    private const double LeastApart = 0.35; // mm on the paper: nearer, two fine lines become one
    private const double LeastWide = 0.7;   // widest segment on the paper, mm: narrower, joints would fill the ring

    private readonly List<IReadOnlyList<Vector2D>> _lines = [];

    /// <summary>The joints of a piece of wood that are in view; one that runs all around has none.</summary>
    /// <param name="view">What is in view.</param>
    /// <param name="segment">The piece.</param>
    /// <param name="move">By which whole turns it is moved, radians.</param>
    /// <param name="from">Where it begins on the paper, from its lower end to its upper one.</param>
    /// <param name="to">Where it ends.</param>
    public void Add(AroundView view, SeenSegment segment, double move, IReadOnlyList<Vector2D> from, IReadOnlyList<Vector2D> to)
    {
        if (segment.IsWhole) return;
        if (segment.Levels.Any(level => view.Shows(level.From + move))) _lines.Add(from);
        if (segment.Levels.Any(level => view.Shows(level.To + move))) _lines.Add(to);
    }

    /// <summary>What is drawn of them.</summary>
    /// <param name="widest">Width of the widest segment on the paper, mm.</param>
    public IEnumerable<Outline> Shown(double widest)
    {
        if (widest < LeastWide) yield break;
        IReadOnlyList<Vector2D>? last = null;
        foreach (IReadOnlyList<Vector2D> line in _lines.OrderBy(l => l[0].X + l[^1].X))
        {
            if (last is not null && line[0].X - last[0].X < LeastApart && line[^1].X - last[^1].X < LeastApart) continue;
            yield return Outline.Polyline(line);
            last = line;
        }
    }
}
