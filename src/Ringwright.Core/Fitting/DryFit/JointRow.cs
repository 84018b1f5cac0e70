using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// How the two faces of a joint lie to each other: the next wedge's joint frame seen from this wedge's,
/// moved across the joint (mm), turned (radians) and moved along the face (mm). All zero: closed, rims flush.
/// </summary>
/// <remarks>
/// Gradients and changes are written by the openings at the ends of the joint instead: (rim, tip, along), all mm, with
/// rim = across and tip = across + turn times the tip's place on the face line. Stiff contacts then act on one part
/// each, and elimination loses no digits.
/// </remarks>
internal readonly record struct JointState(double Across, double Turn, double Along)
{
    /// <summary>The state a fraction <paramref name="step"/> of <paramref name="change"/> (by ends) further.</summary>
    public JointState Moved(double step, Vector3D change, double tipX) =>
        new(Across + (step * change.X), Turn + (step * (change.Y - change.X) / tipX), Along + (step * change.Z));

    /// <summary>A gradient by across, turn and along, written by the ends.</summary>
    public static Vector3D ByEnds(double across, double turn, double along, double tipX) =>
        new(across - (turn / tipX), turn / tipX, along);
}

/// <summary>One clearance of a joint, mm, and its gradient by the ends of the joint.</summary>
internal readonly record struct JointRow(double Clearance, Vector3D Gradient);
