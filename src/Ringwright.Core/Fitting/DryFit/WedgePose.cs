using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>Where a wedge lies on the table: its frame's origin, mm, and the direction of its +x axis, radians.</summary>
/// <param name="Origin">Where the origin of the wedge's frame lies.</param>
/// <param name="Angle">Direction of the wedge's +x axis, counter-clockwise.</param>
public readonly record struct WedgePose(Vector2D Origin, double Angle)
{
    /// <summary>The place on the table of a point given in the wedge's frame, mm.</summary>
    public Vector2D Place(Vector2D point) => Origin + point.Rotated(Angle);

    /// <summary>This pose followed by a motion given in this frame.</summary>
    internal WedgePose Then(WedgePose inner) => new(Place(inner.Origin), Angle + inner.Angle);

    /// <summary>The motion that undoes this one.</summary>
    internal WedgePose Inverse() => new((-Origin).Rotated(-Angle), -Angle);
}
