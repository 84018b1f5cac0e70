namespace Ringwright.Core.Geometry;

/// <summary>A point or direction in space, in millimetres (points) or without unit (directions).</summary>
/// <param name="X">Along the first axis, mm or without unit.</param>
/// <param name="Y">Along the second, mm or without unit.</param>
/// <param name="Z">Up, mm or without unit.</param>
public readonly record struct Vector3D(double X, double Y, double Z)
{
    /// <summary>Distance from the origin, mm.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The scalar product: mm² of two points, mm of a point and a direction, a bare number of two directions.</summary>
    public double Dot(Vector3D other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>The vector product.</summary>
    public Vector3D Cross(Vector3D other) => new(
        (Y * other.Z) - (Z * other.Y),
        (Z * other.X) - (X * other.Z),
        (X * other.Y) - (Y * other.X));

    /// <summary>The unit vector of the same direction. Not defined for the zero vector (gives NaN).</summary>
    public Vector3D Normalized() => (1 / Length) * this;

    /// <summary>The sum.</summary>
    public static Vector3D operator +(Vector3D a, Vector3D b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The difference.</summary>
    public static Vector3D operator -(Vector3D a, Vector3D b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The opposite.</summary>
    public static Vector3D operator -(Vector3D a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>The multiple.</summary>
    public static Vector3D operator *(double s, Vector3D a) => new(s * a.X, s * a.Y, s * a.Z);
}
