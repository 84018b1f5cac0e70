using System.Globalization;

namespace Ringwright.Core.Geometry;

/// <summary>All points p of a plane with <c>Normal · p &lt;= Offset</c>; the normal has unit length and points out of the half-plane.</summary>
/// <param name="Normal">Unit outward normal.</param>
/// <param name="Offset">Distance of the boundary from the origin along the normal, mm.</param>
public readonly record struct HalfPlane(Vector2D Normal, double Offset)
{
    /// <summary>Signed distance of <paramref name="point"/> from the boundary, mm; negative inside.</summary>
    public double Distance(Vector2D point) => Normal.Dot(point) - Offset;

    /// <summary>The other side of the same boundary.</summary>
    public HalfPlane Complement => new(-Normal, -Offset);

    /// <summary>The half-plane to the left of the line from <paramref name="from"/> to <paramref name="to"/> (distinct points).</summary>
    public static HalfPlane LeftOf(Vector2D from, Vector2D to)
    {
        Vector2D along = to - from;
        Vector2D outward = (1 / along.Length) * new Vector2D(along.Y, -along.X);
        return new(outward, outward.Dot(from));
    }

    /// <summary>Normal and offset; the generated text would follow <see cref="Complement"/> without end.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Normal} · p <= {Offset}");
}
