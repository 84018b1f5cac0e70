namespace Ringwright.Core.Turning;

/// <summary>A line in the cut along the axis: the radius at a height, mm.</summary>
internal readonly record struct RadialLine(double AtZero, double Slope)
{
    public double At(double z) => AtZero + (z * Slope);

    /// <summary>The height at which both have the same radius; not finite when they never do.</summary>
    public double Meets(RadialLine other) => (other.AtZero - AtZero) / (Slope - other.Slope);
}

/// <summary>Between which radii a part of a segment lies: beyond all lines of the first kind and before all of the second.</summary>
internal sealed class RadialLimits(RadialLine[] beyond, RadialLine[] before)
{
    /// <summary>Heights at which another line takes over, or the two kinds meet, from the bottom up.</summary>
    public double[] Kinks()
    {
        RadialLine[] lines = [.. beyond, .. before];
        List<double> heights = new(lines.Length * (lines.Length - 1) / 2);
        for (int i = 0; i < lines.Length; i++)
        {
            for (int j = i + 1; j < lines.Length; j++)
            {
                double height = lines[i].Meets(lines[j]);
                if (double.IsFinite(height)) heights.Add(height);
            }
        }

        heights.Sort();
        return [.. heights];
    }

    /// <summary>The radii at one height, mm; both the same where there is nothing, so that a part runs out in a point.</summary>
    public (double Least, double Greatest) At(double z)
    {
        double least = 0, greatest = double.PositiveInfinity;
        foreach (RadialLine line in beyond) least = Math.Max(least, line.At(z));
        foreach (RadialLine line in before) greatest = Math.Min(greatest, line.At(z));
        return (least, Math.Max(least, greatest));
    }
}
