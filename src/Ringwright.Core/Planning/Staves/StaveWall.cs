using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>
/// From a turned wall of any shape to what a ring of staves is planned from: a lean, and a straight wall that leans with the staves and
/// holds the turned one. Lengths in mm, angles in radians.
/// </summary>
public static class StaveWall
{
    /// <summary>The lean of the line between the middles of the wall at its two faces; above 0 the ring is wider at the top.</summary>
    public static double LeanOf(WallSection wall)
    {
        ArgumentNullException.ThrowIfNull(wall);
        WallLevel low = wall.Levels[0], high = wall.Levels[^1];
        return Math.Atan2((high.Outer + high.Inner - low.Outer - low.Inner) / 2, high.Z - low.Z);
    }

    /// <summary>
    /// The diameter outside at the wider end and the diameter inside at the narrower end of the narrowest straight wall at
    /// <paramref name="lean"/> that holds <paramref name="wall"/>. Exact: between levels the wall runs straight, so its levels decide.
    /// The inside may be 0 or less, where staves cannot be.
    /// </summary>
    public static (double Outside, double Inside) Diameters(WallSection wall, double lean)
    {
        ArgumentNullException.ThrowIfNull(wall);
        double bottom = wall.Levels[0].Z, top = wall.Levels[^1].Z, slope = Math.Tan(Math.Abs(lean));
        double ToWide(double z) => lean >= 0 ? top - z : z - bottom;
        return (
            2 * wall.Levels.Max(level => level.Outer + (slope * ToWide(level.Z))),
            2 * wall.Levels.Min(level => level.Inner - (slope * (top - bottom - ToWide(level.Z)))));
    }
}
