using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>
/// How wood lies at a tool, in the wood's own coordinates: one face down on the table, one long edge against the fence.
/// </summary>
/// <param name="Along">Along the fence, out of the face that the tool makes on the piece.</param>
/// <param name="Across">From the fence across the table, square to Along.</param>
/// <param name="Up">Off the table.</param>
/// <param name="Foot">A point where table and fence meet, mm.</param>
internal readonly record struct ToolPose(Vector3D Along, Vector3D Across, Vector3D Up, Vector3D Foot)
{
    /// <summary>Wood with its plane <paramref name="down"/> on the table and <paramref name="edge"/> at the fence.</summary>
    /// <param name="down">Outward plane on the table.</param>
    /// <param name="edge">Outward plane at the fence.</param>
    /// <param name="towards">Roughly the direction from the piece to the blade.</param>
    public static ToolPose On(HalfSpace down, HalfSpace edge, Vector3D towards)
    {
        Vector3D up = -down.Normal;
        Vector3D line = down.Normal.Cross(edge.Normal).Normalized();
        Vector3D along = line.Dot(towards) < 0 ? -line : line;
        double lap = down.Normal.Dot(edge.Normal);
        Vector3D across = -(edge.Normal - (lap * down.Normal)).Normalized();
        double share = 1 / (1 - (lap * lap));
        Vector3D foot = (share * (down.Offset - (lap * edge.Offset)) * down.Normal)
            + (share * (edge.Offset - (lap * down.Offset)) * edge.Normal);
        return new(along, across, up, foot);
    }

    /// <summary>
    /// The half-space of the piece that a flat tool leaves: its boundary meets the line of table and fence at
    /// <paramref name="at"/> (mm, measured by <see cref="Along"/>), turned by <paramref name="angle"/> from a square cut so
    /// that the piece narrows away from the fence, and leaning by <paramref name="lean"/> so that it narrows upwards, rad.
    /// </summary>
    public HalfSpace Tool(double at, double angle, double lean)
    {
        (double sinAngle, double cosAngle) = Math.SinCos(angle);
        (double sinLean, double cosLean) = Math.SinCos(lean);
        Vector3D normal = (cosLean * ((cosAngle * Along) + (sinAngle * Across))) + (sinLean * Up);
        Vector3D point = Foot + ((at - Along.Dot(Foot)) * Along);
        return new(normal, normal.Dot(point));
    }

    /// <summary>Where <paramref name="plane"/> meets the line of table and fence, mm, measured by <see cref="Along"/>.</summary>
    public double Meets(HalfSpace plane) =>
        Along.Dot(Foot) - (plane.Distance(Foot) / plane.Normal.Dot(Along));
}
