using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>
/// From a turned wall of any shape to what a ring of staves is planned from: a lean, and a straight wall that leans with the staves and
/// holds the turned one. Lengths in mm, angles in radians.
/// </summary>
public static class StaveWall
{
    /// <summary>
    /// The lean of the line between the middles of the wall at its two faces, above 0 when the ring is wider at the top; that of the
    /// outside where a face is solid and so has no wall.
    /// </summary>
    public static double LeanOf(WallSection wall)
    {
        ArgumentNullException.ThrowIfNull(wall);
        WallLevel low = wall.Levels[0], high = wall.Levels[^1];
        double run = high.Z - low.Z, outer = high.Outer - low.Outer, inner = high.Inner - low.Inner;
        return Math.Atan2(low.Inner > 0 && high.Inner > 0 ? (outer + inner) / 2 : outer, run);
    }

    /// <summary>
    /// The diameter outside at the wider end and the diameter inside at the narrower end of the narrowest straight wall at
    /// <paramref name="lean"/> that holds <paramref name="wall"/> in a ring from <paramref name="bottom"/> to <paramref name="top"/>,
    /// which may reach beyond the wall. Exact: between levels the wall runs straight, so its levels decide. The inside may be 0 or
    /// less, where staves cannot be.
    /// </summary>
    public static (double Outside, double Inside) Diameters(WallSection wall, double lean, double bottom, double top)
    {
        ArgumentNullException.ThrowIfNull(wall);
        double slope = Math.Tan(Math.Abs(lean));
        double ToWide(double z) => lean >= 0 ? top - z : z - bottom;
        return (
            2 * wall.Levels.Max(level => level.Outer + (slope * ToWide(level.Z))),
            2 * wall.Levels.Min(level => level.Inner - (slope * (top - bottom - ToWide(level.Z)))));
    }
}
