using System.Globalization;

namespace Ringwright.Core.Geometry;

/// <summary>All points p of space with <c>Normal · p &lt;= Offset</c>; the normal has unit length and points out of the half-space.</summary>
/// <param name="Normal">Unit outward normal.</param>
/// <param name="Offset">Distance of the boundary from the origin along the normal, mm.</param>
public readonly record struct HalfSpace(Vector3D Normal, double Offset)
{
    /// <summary>The other side of the same boundary.</summary>
    public HalfSpace Complement => new(-Normal, -Offset);

    /// <summary>Signed distance of <paramref name="point"/> from the boundary, mm; negative inside.</summary>
    public double Distance(Vector3D point) => Normal.Dot(point) - Offset;

    /// <summary>The half-space with its boundary through <paramref name="point"/>; <paramref name="outward"/> of any length but zero.</summary>
    public static HalfSpace Through(Vector3D point, Vector3D outward)
    {
        Vector3D normal = outward.Normalized();
        return new(normal, normal.Dot(point));
    }

    /// <summary>The same boundary moved outwards by <paramref name="distance"/> mm (inwards when negative).</summary>
    public HalfSpace Moved(double distance) => new(Normal, Offset + distance);

    /// <summary>
    /// What of this half-space lies in the level plane at <paramref name="z"/> mm. The direction of the trace is the
    /// same at every level; only its place moves. Not defined (NaN) for a level boundary.
    /// </summary>
    public HalfPlane Trace(double z)
    {
        var level = new Vector2D(Normal.X, Normal.Y);
        double inverse = 1 / level.Length;
        return new(inverse * level, inverse * (Offset - (Normal.Z * z)));
    }

    /// <summary>Normal and offset; the generated text would follow <see cref="Complement"/> without end.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Normal} · p <= {Offset}");
}
