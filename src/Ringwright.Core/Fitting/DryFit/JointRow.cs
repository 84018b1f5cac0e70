using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// How the two faces of a joint lie to each other: the next wedge's joint frame seen from this wedge's,
/// moved across the joint (mm), turned (radians) and moved along the face (mm). All zero: closed, rims flush.
/// Gradients and matrices keep this order: stiff contacts act almost only on the first part, and elimination
/// that begins with the stiffest loses the fewest digits.
/// </summary>
internal readonly record struct JointState(double Across, double Turn, double Along)
{
    /// <summary>The state a fraction <paramref name="step"/> of <paramref name="change"/> further.</summary>
    public JointState Moved(double step, Vector3D change) =>
        new(Across + (step * change.X), Turn + (step * change.Y), Along + (step * change.Z));
}

/// <summary>One clearance of a joint, mm, and its gradient by the parts of <see cref="JointState"/>.</summary>
internal readonly record struct JointRow(double Clearance, Vector3D Gradient);
