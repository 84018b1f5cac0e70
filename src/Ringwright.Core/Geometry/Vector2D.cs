namespace Ringwright.Core.Geometry;

/// <summary>A point or direction in a plane, in millimetres (points) or without unit (directions).</summary>
/// <param name="X">To the right, mm or without unit.</param>
/// <param name="Y">Up, or away from the viewer, mm or without unit.</param>
public readonly record struct Vector2D(double X, double Y)
{
    /// <summary>The origin.</summary>
    public static Vector2D Zero => default;

    /// <summary>Distance from the origin, mm.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The unit vector at <paramref name="angle"/> radians, counter-clockwise from +x.</summary>
    public static Vector2D AtAngle(double angle) => new(Math.Cos(angle), Math.Sin(angle));

    /// <summary>The point at <paramref name="radius"/> mm and <paramref name="angle"/> radians from the origin.</summary>
    public static Vector2D Polar(double radius, double angle) => radius * AtAngle(angle);

    /// <summary>The scalar product: mm² of two points, mm of a point and a direction, a bare number of two directions.</summary>
    public double Dot(Vector2D other) => (X * other.X) + (Y * other.Y);

    /// <summary>The z component of the vector product, in units as <see cref="Dot"/>: positive when <paramref name="other"/> lies counter-clockwise.</summary>
    public double Cross(Vector2D other) => (X * other.Y) - (Y * other.X);

    /// <summary>This vector turned by a quarter counter-clockwise.</summary>
    public Vector2D Perpendicular() => new(-Y, X);

    /// <summary>This vector turned by <paramref name="angle"/> radians counter-clockwise.</summary>
    public Vector2D Rotated(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return new((cos * X) - (sin * Y), (sin * X) + (cos * Y));
    }

    /// <summary>The sum.</summary>
    public static Vector2D operator +(Vector2D a, Vector2D b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>The difference.</summary>
    public static Vector2D operator -(Vector2D a, Vector2D b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite.</summary>
    public static Vector2D operator -(Vector2D a) => new(-a.X, -a.Y);

    /// <summary>The multiple.</summary>
    public static Vector2D operator *(double s, Vector2D a) => new(s * a.X, s * a.Y);
}
