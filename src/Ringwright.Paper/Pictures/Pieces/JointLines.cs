using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>The joints of one ring on the paper; those that would run together are left out.</summary>
internal sealed class JointLines
{
    private const double LeastApart = 0.35; // mm on the paper: nearer, two fine lines become one
    private const double LeastWide = 0.7;   // widest segment on the paper, mm: narrower, joints would fill the ring

    private readonly List<IReadOnlyList<Vector2D>> _lines = [];

    /// <summary>A joint from its lower end to its upper one.</summary>
    public void Add(IReadOnlyList<Vector2D> line) => _lines.Add(line);

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
