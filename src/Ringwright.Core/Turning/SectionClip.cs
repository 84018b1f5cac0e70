namespace Ringwright.Core.Turning;

/// <summary>
/// What of a wall's cut lies between a segment's sides: the sides of an open segment meet before they reach the axis, and there
/// is no wood behind that; the parts of a strip end where its glue lines run into the joints. Levels are added where the walls run into the meeting line, so that nothing is cut off or filled.
/// </summary>
internal static class SectionClip
{
    private const double Same = SolidCheck.Resolution;
    private const int Halvings = 60;
    private const double Straight = 1e-11; // mm

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
        if (span.Kinks.IsEmpty) return section;
        List<WallLevel> levels = new(section.Levels.Length + span.Kinks.Length) { section.Levels[0] };
        for (int i = 1; i < section.Levels.Length; i++)
        {
            (WallLevel below, WallLevel above) = (levels[^1], section.Levels[i]);
            foreach (double z in span.Kinks)
                if (z - levels[^1].Z > Same && above.Z - z > Same) levels.Add(Between(below, above, (z - below.Z) / (above.Z - below.Z)));
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
                WallLevel crossing = Between(section.Levels[i - 1], section.Levels[i], share);
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
        (double least, double greatest) from = span.Reach(below.Z), to = span.Reach(above.Z);
        if (below.Inner > from.least != above.Inner > to.least) shares.Add(Crossing(below, above, span, (level, reach) => level.Inner - reach.Least));
        if (below.Outer > from.least != above.Outer > to.least) shares.Add(Crossing(below, above, span, (level, reach) => level.Outer - reach.Least));
        if (below.Inner > from.greatest != above.Inner > to.greatest) shares.Add(Crossing(below, above, span, (level, reach) => level.Inner - reach.Greatest));
        if (below.Outer > from.greatest != above.Outer > to.greatest) shares.Add(Crossing(below, above, span, (level, reach) => level.Outer - reach.Greatest));
        return shares;
    }

    // Where the depth changes its sign; by halving, because the meeting line of tilted sides is a hyperbola in this cut. Most
    // limits are straight lines, and the first guess is right.
    private static double Crossing(WallLevel below, WallLevel above, in SegmentSpan span, Func<WallLevel, (double Least, double Greatest), double> depth)
    {
        double first = depth(below, span.Reach(below.Z)), straight = first / (first - depth(above, span.Reach(above.Z)));
        WallLevel guess = Between(below, above, straight);
        if (Math.Abs(depth(guess, span.Reach(guess.Z))) < Straight) return straight;
        bool start = first > 0;
        double low = 0;
        double high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            WallLevel at = Between(below, above, middle);
            if (depth(at, span.Reach(at.Z)) > 0 == start) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    public static WallLevel Between(WallLevel below, WallLevel above, double share) => new(
        below.Z + (share * (above.Z - below.Z)),
        below.Outer + (share * (above.Outer - below.Outer)),
        below.Inner + (share * (above.Inner - below.Inner)));

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
                : HasWood(Clipped(Between(levels[i - 1], levels[i], 0.5), span));
            if (connected && !open) runs.Add([below]);
            if (connected) runs[^1].Add(above);
            open = connected && (HasWood(above) || SolidCheck.SameHeight(below, above));
        }

        return runs;
    }

    private static bool HasWood(WallLevel level) => level.Outer - level.Inner > Same;

    public static WallLevel Clipped(WallLevel level, in SegmentSpan span)
    {
        (double least, double greatest) = span.Reach(level.Z);
        double inner = Math.Clamp(level.Inner, Math.Min(least, level.Outer), level.Outer);
        return level with { Inner = inner, Outer = Math.Max(inner, Math.Min(level.Outer, greatest)) };
    }
}
