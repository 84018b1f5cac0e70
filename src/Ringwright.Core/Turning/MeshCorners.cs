namespace Ringwright.Core.Turning;

/// <summary>Who uses a corner of the mesh.</summary>
public enum MeshCorners
{
    /// <summary>All faces of a segment that meet there: least memory, and each segment is closed by its indices alone.</summary>
    Shared,

    /// <summary>
    /// Each face has its own, at the same place to the bit, so that every corner has one normal: for pictures. Smooth along
    /// the turned wall, sharp at joints, faces and steps.
    /// </summary>
    PerFace,
}
