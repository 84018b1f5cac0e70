using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>
/// The colours that can be mixed from some others: the convex hull of points in a colour space. What no mixture of woods
/// reaches is brought into it, or differences handed on would pile up without end.
/// </summary>
internal sealed class ColourHull
{
    // Colours are of size 1 (light) or 100 (CIELAB); below this two of them are the same.
    private const double Tiny = 1e-9;

    private readonly ImmutableArray<Vector3D> _points;
    private readonly ImmutableArray<(Vector3D A, Vector3D B, Vector3D C, Vector3D Out)> _faces;
    private readonly bool _solid;

    public ColourHull(IEnumerable<Vector3D> points)
    {
        _points = [.. points.Distinct()];
        _faces = [.. Faces()];
        _solid = _faces.Any(f => _points.Any(p => f.Out.Dot(p - f.A) < -Tiny));
    }

    /// <summary>The mixture nearest to <paramref name="colour"/>: itself if it can be mixed.</summary>
    public Vector3D Nearest(Vector3D colour)
    {
        if (_solid && _faces.All(f => f.Out.Dot(colour - f.A) <= 0)) return colour;
        IEnumerable<Vector3D> candidates = _faces.IsEmpty
            ? _points.SelectMany(a => _points.Select(b => OnLine(colour, a, b)))
            : _faces.Select(f => OnFace(colour, f.A, f.B, f.C, f.Out));
        return candidates.MinBy(c => (c - colour).Length);
    }

    // Every triangle of points that has no point on its outer side; the woods are few, so trying all is quick.
    private IEnumerable<(Vector3D, Vector3D, Vector3D, Vector3D)> Faces()
    {
        for (int i = 0; i < _points.Length; i++)
            for (int j = i + 1; j < _points.Length; j++)
                for (int k = j + 1; k < _points.Length; k++)
                {
                    (Vector3D a, Vector3D b, Vector3D c) = (_points[i], _points[j], _points[k]);
                    Vector3D across = (b - a).Cross(c - a);
                    if (across.Length <= Tiny * Tiny) continue;
                    Vector3D normal = across.Normalized();
                    if (_points.All(p => normal.Dot(p - a) <= Tiny)) yield return (a, b, c, normal);
                    else if (_points.All(p => normal.Dot(p - a) >= -Tiny)) yield return (a, c, b, -normal);
                }
    }

    private static Vector3D OnFace(Vector3D p, Vector3D a, Vector3D b, Vector3D c, Vector3D normal)
    {
        Vector3D foot = p - (normal.Dot(p - a) * normal);
        bool inside = Left(a, b) && Left(b, c) && Left(c, a);
        return inside ? foot : new[] { OnLine(p, a, b), OnLine(p, b, c), OnLine(p, c, a) }.MinBy(q => (q - p).Length);

        bool Left(Vector3D from, Vector3D to) => (to - from).Cross(foot - from).Dot(normal) >= 0;
    }

    private static Vector3D OnLine(Vector3D p, Vector3D a, Vector3D b)
    {
        Vector3D along = b - a;
        double length = along.Dot(along);
        return length == 0 ? a : a + (Math.Clamp(along.Dot(p - a) / length, 0, 1) * along);
    }
}
