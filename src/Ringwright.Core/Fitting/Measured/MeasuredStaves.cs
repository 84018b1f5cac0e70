using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Staves as a caliper reads them: at an end, along the edge that shows outside (as the rim) and along the one inside (as the tip),
/// thickness / cos(planned lean) apart. Upright staves are read at one end; leaning ones at both, the lower end below, the upper
/// end above. Pressed together they lean as their edges converge, which is not quite as planned, so their ends do not lie quite
/// square to the axis; <see cref="Level"/> tells the widths as they lie in a plane that does.
/// </summary>
internal static class MeasuredStaves
{
    /// <summary>Distance between the outer and the inner edge of a stave's end, mm.</summary>
    public static double Depth(StaveGeometry stave) => stave.Thickness / Math.Cos(stave.Lean);

    /// <summary>
    /// How the ring leans when its joints stand upright in the mean, radians: tan(lean) = g / (2k), where g is how much wider a stave
    /// grows by each mm of its length, and 2k by each mm through its thickness (right staves have g = 2·sin(lean)·tan(π/N) and
    /// k = cos(lean)·tan(π/N)). The inner edge that is read lies t·tan(planned lean) lower than the outer one.
    /// </summary>
    /// <param name="stave">The stave as planned.</param>
    /// <param name="staves">The readings.</param>
    /// <param name="depth">Between the two edges that were read, mm.</param>
    public static double Lean(StaveGeometry stave, IReadOnlyList<MeasuredWedge> staves, double depth)
    {
        double thickness = depth * Math.Cos(stave.Lean), growth = staves.Average(s => s.Above.Rim - s.Below.Rim) / stave.Length;
        double across = staves.Average(s => s.Above.Rim + s.Below.Rim - s.Above.Tip - s.Below.Tip) / 2;
        return Math.Atan2(growth * thickness, across - (growth * thickness * Math.Tan(stave.Lean)));
    }

    /// <summary>
    /// The widths in planes square to the axis, through the outer edges that were read, and the depth there. Seen along a stave of
    /// thickness t the inner edge of such a plane lies t·tan(lean) below the outer one, that of the end t·tan(planned lean); between
    /// them the width changes as it does from end to end.
    /// </summary>
    /// <param name="stave">The stave as planned.</param>
    /// <param name="staves">The readings.</param>
    /// <param name="depth">Between the two edges that were read, mm.</param>
    public static (IReadOnlyList<MeasuredWedge> Staves, double Depth) Level(StaveGeometry stave, IReadOnlyList<MeasuredWedge> staves, double depth)
    {
        double thickness = depth * Math.Cos(stave.Lean), lean = Lean(stave, staves, depth), lower = thickness * (Math.Tan(stave.Lean) - Math.Tan(lean));
        if (lower == 0) return (staves, thickness / Math.Cos(lean));
        return ([.. staves.Select(s =>
        {
            double more = (s.Above.Rim - s.Below.Rim) / stave.Length * lower;
            return new MeasuredWedge(s.Below with { Tip = s.Below.Tip + more }, s.Above with { Tip = s.Above.Tip + more });
        })], thickness / Math.Cos(lean));
    }

    /// <summary>The staves' sections at the ring's two ends, from level widths.</summary>
    /// <param name="stave">The stave as planned.</param>
    /// <param name="level">The level widths.</param>
    /// <param name="depth">The depth they are level at, mm.</param>
    /// <param name="lean">How the ring leans.</param>
    public static ImmutableArray<FitWedge> Lay(StaveGeometry stave, IReadOnlyList<MeasuredWedge> level, double depth, double lean)
    {
        Vector2D outwards = new(stave.Length * Math.Sin(lean), 0);
        return [.. level.Select(s =>
        {
            ConvexPolygon below = Section(s.Below, depth), above = Section(s.Above, depth);
            return new FitWedge(below, ReferenceEquals(s.Below, s.Above) ? below : new([.. above.Vertices.Select(v => v + outwards)]));
        })];
    }

    /// <summary>Refuses readings that do not tell enough of a leaning stave.</summary>
    /// <exception cref="BadInputException">One was read at one end only.</exception>
    public static void Check(StaveGeometry stave, IReadOnlyList<MeasuredWedge> staves)
    {
        if (!stave.IsUpright && staves.FirstOrDefault(s => ReferenceEquals(s.Below, s.Above)) is { } once)
            throw new BadInputException($"stave {once.Below.Number}", "it was read at one end only", "a leaning stave is read at its lower and its upper end");
    }

    private static ConvexPolygon Section(CaliperReading reading, double depth)
    {
        Vector2D inwards = new(-depth, 0);
        return new([.. FitWedge.FromCaliper(reading.Rim, reading.Tip, depth).Bottom.Vertices.Select(v => v + inwards)]);
    }
}
