using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>
/// One side of a segment: the plane cos(Tilt) · t − sin(Tilt) · z = Offset, where t is the distance from the half-plane through
/// the axis at <paramref name="Direction"/>, counted counter-clockwise. Upright joints have tilt 0; a joint plane through
/// the axis has offset 0. At radius r and height z it stands at the angle Direction + asin((Offset + z sin Tilt)/(r cos Tilt)).
/// </summary>
/// <param name="Direction">Angle of the half-plane around the axis, radians.</param>
/// <param name="Offset">Distance of the plane from that half-plane, mm; positive counter-clockwise.</param>
/// <param name="Tilt">Lean of the plane out of upright, about the radial direction, radians; 0 for a joint.</param>
public readonly record struct JointPlane(double Direction, double Offset = 0, double Tilt = 0)
{
    /// <summary>The same plane turned about the axis by <paramref name="angle"/> radians, counter-clockwise.</summary>
    public JointPlane Turned(double angle) => this with { Direction = Direction + angle };

    /// <summary>The angle at which it stands, radians; at its nearest where it does not come so near the axis.</summary>
    /// <param name="radius">Distance from the axis, mm.</param>
    /// <param name="z">Height, mm.</param>
    public double AngleAt(double radius, double z)
    {
        double offset = (Offset / Math.Cos(Tilt)) + (z * Math.Tan(Tilt));
        return Direction + (Math.Abs(offset) < radius ? Math.Asin(offset / radius) : Math.Sign(offset) * Math.PI / 2);
    }
}

/// <summary>One piece of wood of a turned ring: what lies between two planes, counter-clockwise from one to the other.</summary>
/// <param name="From">The side it starts at.</param>
/// <param name="To">
/// The side it ends at, its direction counted on from the first one's and not wrapped: a whole disc in one piece ends 2π further.
/// </param>
/// <param name="Wood">Number of its wood in the solid's list.</param>
/// <param name="Board">
/// Its board laid into the piece: from board coordinates (x along the board and its grain, y across its width, z through its
/// thickness, mm) to the piece's.
/// </param>
public readonly record struct TurnedSegment(JointPlane From, JointPlane To, int Wood, Frame3D Board)
{
    /// <summary>
    /// The upright joints through the axis that it lies between too, when it is a strip of a glued segment: it then starts at the
    /// later of both starts and ends at the earlier of both ends. Null for a segment of one wood.
    /// </summary>
    public SegmentJoints? Within { get; init; }
}

/// <summary>The two joints of a segment.</summary>
/// <param name="From">The side it starts at, counter-clockwise.</param>
/// <param name="To">The side it ends at.</param>
public readonly record struct SegmentJoints(JointPlane From, JointPlane To)
{
    /// <summary>The same joints turned about the axis by <paramref name="angle"/> radians, counter-clockwise.</summary>
    public SegmentJoints Turned(double angle) => new(From.Turned(angle), To.Turned(angle));
}

/// <summary>One ring of the turned solid.</summary>
/// <param name="Section">Its cut along the axis.</param>
/// <param name="Segments">Its pieces of wood.</param>
public sealed record TurnedRing(WallSection Section, System.Collections.Immutable.ImmutableArray<TurnedSegment> Segments);
