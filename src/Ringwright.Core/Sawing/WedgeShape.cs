using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>A wedge on its way from saw to ring, all in the board frame: its wood and the planes that name its sides.</summary>
/// <param name="Solid">The wood.</param>
/// <param name="Minus">The joint face towards -y of the wedge frame.</param>
/// <param name="Plus">The joint face towards +y.</param>
/// <param name="Rim">The board's edge that is the rim.</param>
/// <param name="Far">The board's other edge, where the tip is.</param>
/// <param name="Down">The side it lies on, as it fell.</param>
/// <param name="Upper">The side that is up.</param>
internal readonly record struct WedgeShape(
    ConvexSolid Solid, HalfSpace Minus, HalfSpace Plus, HalfSpace Rim, HalfSpace Far, HalfSpace Down, HalfSpace Upper)
{
    /// <summary>Off the table.</summary>
    public Vector3D Up => -Down.Normal;

    /// <summary>
    /// The wedge frame: z up from the face it lies on; y square to the bisector of the joint faces' traces; x along it
    /// to the rim. The origin lies on the table, on the bisector taken at the height <paramref name="level"/>, midway
    /// between rim and far edge.
    /// </summary>
    public Frame3D Frame(double level)
    {
        Vector3D up = Up;
        Vector3D y = (Level(Plus.Normal, up) - Level(Minus.Normal, up)).Normalized();
        var corner = new Frame3D(y.Cross(up), y, up, Down.Offset * Down.Normal);
        return corner with { Origin = corner.ToOuter(Middle(corner, level)) };
    }

    private Vector3D Middle(Frame3D frame, double level)
    {
        HalfPlane plus = frame.ToLocal(Plus).Trace(level);
        HalfPlane minus = frame.ToLocal(Minus).Trace(level);
        HalfPlane rim = frame.ToLocal(Rim).Trace(level);
        HalfPlane far = frame.ToLocal(Far).Trace(level);
        double y = (plus.Offset - minus.Offset) / (plus.Normal.Y - minus.Normal.Y);
        double x = (rim.Offset - far.Offset - ((rim.Normal.Y - far.Normal.Y) * y)) / (rim.Normal.X - far.Normal.X);
        return new(x, y, 0);
    }

    private static Vector3D Level(Vector3D normal, Vector3D up) => (normal - (normal.Dot(up) * up)).Normalized();
}
