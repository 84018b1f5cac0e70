using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Pictures;

/// <summary>Polygons drawn edge by edge, where the picture ends inside one.</summary>
internal static class PolygonEdges
{
    /// <summary>The edges in the order of the corners, the closing one too.</summary>
    public static IEnumerable<(Vector2D From, Vector2D To)> Edges(this ConvexPolygon polygon)
    {
        for (int i = 0; i < polygon.Vertices.Length; i++)
            yield return (polygon.Vertices[i], polygon.Vertices[(i + 1) % polygon.Vertices.Length]);
    }
}
