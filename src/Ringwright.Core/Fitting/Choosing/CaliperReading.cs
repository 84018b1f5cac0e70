namespace Ringwright.Core.Fitting;

/// <summary>One wedge as the caliper reads it.</summary>
/// <param name="Number">The number written on the wedge; no two wedges share one.</param>
/// <param name="Wood">Its wood; upper and lower case are the same.</param>
/// <param name="Rim">Tangential width near the rim, mm.</param>
/// <param name="Tip">Tangential width near the tip, mm.</param>
/// <param name="Depth">Radial distance between the two reading places, mm; null when it is the one common to all wedges.</param>
public sealed record CaliperReading(int Number, string Wood, double Rim, double Tip, double? Depth = null)
{
    /// <summary>
    /// Wedge angle in radians, 2 atan((rim − tip) / (2 depth)): the wedge is symmetric and both widths are read square to its middle line.
    /// A caliper's zero error is in both readings and cancels.
    /// </summary>
    /// <param name="commonDepth">Distance between the reading places, mm, where the wedge has none of its own.</param>
    public double Angle(double commonDepth) => 2 * Math.Atan(HalfSlope(commonDepth));

    /// <summary>
    /// Standard deviation of the angle in radians from the caliper alone, to first order: √2 sd / (depth (1 + t²)) with
    /// t = (rim − tip) / (2 depth), the two readings being independent. An error of the depth is not in it.
    /// </summary>
    /// <param name="commonDepth">Distance between the reading places, mm, where the wedge has none of its own.</param>
    /// <param name="caliperSd">Standard deviation of one reading, mm.</param>
    public double AngleSd(double commonDepth, double caliperSd)
    {
        double t = HalfSlope(commonDepth);
        return Math.Sqrt(2) * caliperSd / ((Depth ?? commonDepth) * (1 + t * t));
    }

    private double HalfSlope(double commonDepth) => (Rim - Tip) / (2 * (Depth ?? commonDepth));
}
