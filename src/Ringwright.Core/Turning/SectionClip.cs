namespace Ringwright.Core.Turning;

/// <summary>
/// What of a wall's cut lies between a segment's sides: the sides of an open segment meet before they reach the axis, and there
/// is no wood behind that; the parts of a strip end where its glue lines run into the joints. Levels are added where the walls run into the meeting line, so that nothing is cut off or filled.
/// </summary>
internal static class SectionClip
{
    private const double Same = SolidCheck.Resolution;
    private const int Halvings = 60;
    private const double Straight = 1e-11; // mm from the limit

    private static readonly Depth[] Depths =
    [
        (level, reach) => level.Inner - reach.Least, (level, reach) => level.Outer - reach.Least,
        (level, reach) => level.Inner - reach.Greatest, (level, reach) => level.Outer - reach.Greatest,
    ];

    // How far a wall is beyond a limit, mm.
    private delegate double Depth(WallLevel level, (double Least, double Greatest) reach);

    /// <summary>The connected parts of the cut from the bottom up; empty where the sides leave no wood at all.</summary>
    public static List<List<WallLevel>> Runs(WallSection section, in SegmentSpan span)
    {
        section = WithKinks(section, span);
        if (!Touches(section, span)) return [[.. section.Levels]];
        List<WallLevel> levels = WithCrossings(section, span);
        return Connected(levels, span);
    }

    private static bool Touches(WallSection section, in SegmentSpan span)
    {
        if (span.IsRadial && span.Angle > 0) return false;
        foreach (WallLevel level in section.Levels)
        {
            (double least, double greatest) = span.Reach(level.Z);
            if (level.Inner < least || level.Outer > greatest) return true;
        }

        return false;
    }

    // Between levels the limits run straight, like the walls.
    private static WallSection WithKinks(WallSection section, SegmentSpan span)
    {
        double[] kinks = span.Kinks();
        if (kinks.Length == 0) return section;
        List<WallLevel> levels = new(section.Levels.Length + kinks.Length) { section.Levels[0] };
        for (int i = 1; i < section.Levels.Length; i++)
        {
            (WallLevel below, WallLevel above) = (levels[^1], section.Levels[i]);
            foreach (double z in kinks)
                if (z - levels[^1].Z > Same && above.Z - z > Same) levels.Add(WallLevel.Between(below, above, (z - below.Z) / (above.Z - below.Z)));
            levels.Add(above);
        }

        return levels.Count == section.Levels.Length ? section : new([.. levels]);
    }

    private static List<WallLevel> WithCrossings(WallSection section, SegmentSpan span)
    {
        List<WallLevel> levels = [section.Levels[0]];
        for (int i = 1; i < section.Levels.Length; i++)
        {
            List<double> shares = Crossings(section.Levels[i - 1], section.Levels[i], span);
            shares.Sort();
            foreach (double share in shares)
            {
                WallLevel crossing = WallLevel.Between(section.Levels[i - 1], section.Levels[i], share);
                if (crossing.Z - levels[^1].Z > Same && section.Levels[i].Z - crossing.Z > Same) levels.Add(crossing);
            }

            levels.Add(section.Levels[i]);
        }

        return levels;
    }

    // Where each wall runs into each limit between two levels, as shares of the way.
    private static List<double> Crossings(WallLevel below, WallLevel above, in SegmentSpan span)
    {
        List<double> shares = [];
        if (SolidCheck.SameHeight(below, above)) return shares;
        (double Least, double Greatest) from = span.Reach(below.Z), to = span.Reach(above.Z);
        foreach (Depth depth in Depths)
        {
            double first = depth(below, from), last = depth(above, to);
            if (first > 0 != last > 0) shares.Add(Crossing(below, above, span, depth, first, last));
        }

        return shares;
    }

    // Where the depth changes its sign; by halving, because the meeting line of tilted sides is a hyperbola in this cut. Most
    // limits are straight lines, and the first guess is right.
    private static double Crossing(WallLevel below, WallLevel above, in SegmentSpan span, Depth depth, double first, double last)
    {
        double straight = first / (first - last);
        if (Math.Abs(At(straight, span)) < Straight) return straight;
        bool start = first > 0;
        double low = 0;
        double high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            if (At(middle, span) > 0 == start) low = middle;
            else high = middle;
        }

        return (low + high) / 2;

        double At(double share, in SegmentSpan span)
        {
            WallLevel at = WallLevel.Between(below, above, share);
            return depth(at, span.Reach(at.Z));
        }
    }

    private static List<List<WallLevel>> Connected(List<WallLevel> levels, SegmentSpan span)
    {
        List<List<WallLevel>> runs = [];
        bool open = false;
        for (int i = 1; i < levels.Count; i++)
        {
            WallLevel below = Clipped(levels[i - 1], span);
            WallLevel above = Clipped(levels[i], span);
            bool connected = SolidCheck.SameHeight(below, above)
                ? open && i + 1 < levels.Count && Math.Min(below.Outer, above.Outer) - Math.Max(below.Inner, above.Inner) > Same
                : HasWood(Clipped(WallLevel.Between(levels[i - 1], levels[i], 0.5), span));
            if (connected && !open) runs.Add([below]);
            if (connected) runs[^1].Add(above);
            open = connected && (HasWood(above) || SolidCheck.SameHeight(below, above));
        }

        return runs;
    }

    private static bool HasWood(WallLevel level) => level.Outer - level.Inner > Same;

    private static WallLevel Clipped(WallLevel level, in SegmentSpan span) => Clipped(level, span.Reach(level.Z));

    /// <summary>What of a level lies within these radii.</summary>
    public static WallLevel Clipped(WallLevel level, (double Least, double Greatest) reach)
    {
        double inner = Math.Clamp(level.Inner, Math.Min(reach.Least, level.Outer), level.Outer);
        return level with { Inner = inner, Outer = Math.Max(inner, Math.Min(level.Outer, reach.Greatest)) };
    }
}
