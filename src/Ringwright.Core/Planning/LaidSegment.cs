using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>One piece of wood where it stands in its glued ring, whose bottom face is z = 0.</summary>
/// <param name="From">The side it starts at, counter-clockwise.</param>
/// <param name="To">The side it ends at.</param>
/// <param name="Wood">Its wood.</param>
/// <param name="Board">Which of the ring's boards of this wood it was sawn from, 0-based.</param>
/// <param name="Cut">Which wedge of that board it was, 0-based.</param>
/// <param name="Frame">
/// Its board laid into the ring: from board coordinates (x along the board and its grain, y across its width, z through its
/// thickness, mm) to the ring's.
/// </param>
public sealed record LaidSegment(JointPlane From, JointPlane To, string Wood, int Board, int Cut, Frame3D Frame)
{
    /// <summary>
    /// The joints of the segment it is a part of, when one segment is made of several woods: it lies between these too. From and To
    /// are then glue lines that may lean and leave the segment part of the way up; at one radius and height the piece starts at
    /// the later of both starts and ends at the earlier of both ends, and is absent there when that is no stretch. Null for a
    /// segment of one wood.
    /// </summary>
    public SegmentJoints? Within { get; init; }

    /// <summary>What of <paramref name="plan"/>, the plan of a segment or a ring around it, this piece covers at height <paramref name="z"/> mm.</summary>
    public ConvexPolygon At(ConvexPolygon plan, double z)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ConvexPolygon piece = plan.Clip(Side(From, z).Complement).Clip(Side(To, z));
        return Within is SegmentJoints joints ? piece.Clip(Side(joints.From, z).Complement).Clip(Side(joints.To, z)) : piece;
    }

    // All points before the plane, counter-clockwise.
    private static HalfPlane Side(JointPlane plane, double z)
    {
        (double sin, double cos) = Math.SinCos(plane.Tilt);
        return new(new(-Math.Sin(plane.Direction), Math.Cos(plane.Direction)), (plane.Offset + (z * sin)) / cos);
    }
}
