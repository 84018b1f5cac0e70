namespace Ringwright.Core.Geometry;

/// <summary>
/// A right-handed frame laid into an outer space: a rigid motion with a name for each column. Used both ways:
/// from the frame's own coordinates to the outer ones and back.
/// </summary>
/// <param name="X">The frame's x direction in outer coordinates, unit length.</param>
/// <param name="Y">The frame's y direction in outer coordinates, unit length, square to X.</param>
/// <param name="Z">The frame's z direction in outer coordinates: X × Y.</param>
/// <param name="Origin">The frame's origin in outer coordinates, mm.</param>
public readonly record struct Frame3D(Vector3D X, Vector3D Y, Vector3D Z, Vector3D Origin)
{
    /// <summary>The outer frame itself.</summary>
    public static Frame3D Identity => new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), default);

    /// <summary>The outer frame laid into this one: leads the other way.</summary>
    public Frame3D Inverse => new(
        new(X.X, Y.X, Z.X), new(X.Y, Y.Y, Z.Y), new(X.Z, Y.Z, Z.Z), new(-X.Dot(Origin), -Y.Dot(Origin), -Z.Dot(Origin)));

    /// <summary>Its directions and origin; the generated text would follow <see cref="Inverse"/> without end.</summary>
    public override string ToString() => $"x {X}, y {Y}, z {Z}, origin {Origin}";

    /// <summary>A point of the frame in outer coordinates, mm.</summary>
    public Vector3D ToOuter(Vector3D point) => Origin + TurnToOuter(point);

    /// <summary>An outer point in the frame's coordinates, mm.</summary>
    public Vector3D ToLocal(Vector3D point) => TurnToLocal(point - Origin);

    /// <summary>A direction of the frame in outer coordinates.</summary>
    public Vector3D TurnToOuter(Vector3D direction) => (direction.X * X) + (direction.Y * Y) + (direction.Z * Z);

    /// <summary>An outer direction in the frame's coordinates.</summary>
    public Vector3D TurnToLocal(Vector3D direction) => new(X.Dot(direction), Y.Dot(direction), Z.Dot(direction));

    /// <summary>A half-space of the frame in outer coordinates.</summary>
    public HalfSpace ToOuter(HalfSpace half)
    {
        Vector3D normal = TurnToOuter(half.Normal);
        return new(normal, half.Offset + normal.Dot(Origin));
    }

    /// <summary>An outer half-space in the frame's coordinates.</summary>
    public HalfSpace ToLocal(HalfSpace half) => new(TurnToLocal(half.Normal), half.Offset - half.Normal.Dot(Origin));
}
