using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Staves as a caliper reads them: at an end, along the edge that shows outside (as the rim) and along the one inside (as the tip).
/// Both lie in one plane square to the ring's axis, thickness / cos(lean) apart. Upright staves are read at one end; leaning ones
/// at both, the lower end below, the upper end above.
/// </summary>
internal static class MeasuredStaves
{
    /// <summary>Radial distance between the outer and the inner edge of a stave's end, mm.</summary>
    public static double Depth(StaveGeometry stave) => stave.Thickness / Math.Cos(stave.Lean);

    /// <summary>How the ring leans from the widths of its staves at both ends, radians: of mean outer widths, tan(lean) = (upper − lower) / (2 · height · tan(π/N)).</summary>
    public static double Lean(StaveGeometry stave, IReadOnlyList<MeasuredWedge> staves) => Math.Atan(Grown(stave, staves) / (stave.Top - stave.Bottom));

    /// <summary>The staves' sections at the ring's two ends. The ring leans as their widths say, for only so their joints stand upright in the mean.</summary>
    public static ImmutableArray<FitWedge> Lay(StaveGeometry stave, IReadOnlyList<MeasuredWedge> staves, double depth)
    {
        Vector2D outwards = new(Grown(stave, staves), 0);
        return [.. staves.Select(s =>
        {
            ConvexPolygon below = Section(s.Below, depth), above = Section(s.Above, depth);
            return new FitWedge(below, outwards == Vector2D.Zero && ReferenceEquals(s.Below, s.Above) ? below : new([.. above.Vertices.Select(v => v + outwards)]));
        })];
    }

    /// <summary>Refuses readings that do not tell enough of a leaning stave.</summary>
    /// <exception cref="BadInputException">One was read at one end only.</exception>
    public static void Check(StaveGeometry stave, IReadOnlyList<MeasuredWedge> staves)
    {
        if (!stave.IsUpright && staves.FirstOrDefault(s => ReferenceEquals(s.Below, s.Above)) is { } once)
            throw new BadInputException($"stave {once.Below.Number}", "it was read at one end only", "a leaning stave is read at its lower and its upper end");
    }

    // How much farther out the outer edges lie at the upper end, mm.
    private static double Grown(StaveGeometry stave, IReadOnlyList<MeasuredWedge> staves) => staves.Average(s => s.Above.Rim - s.Below.Rim) / (2 * Math.Tan(stave.HalfAngle));

    private static ConvexPolygon Section(CaliperReading reading, double depth)
    {
        double deep = reading.Depth ?? depth;
        Vector2D inwards = new(-deep, 0);
        return new([.. FitWedge.FromCaliper(reading.Rim, reading.Tip, deep).Bottom.Vertices.Select(v => v + inwards)]);
    }
}
