namespace Ringwright.Core.Turning;

/// <summary>What segments that differ only by rotation and wood have in common.</summary>
internal sealed record SegmentPlan(SectionOutline Outline, FaceGroups Groups, MeshPattern Pattern, int Facets, bool FullTurn);

/// <summary>Plans segments one ring after the other, and plans like ones once.</summary>
internal sealed class SegmentPlanner(Facets facets, MeshCorners corners)
{
    private readonly Dictionary<SegmentShape, SegmentPlan[]> _ofRing = [];
    private WallSection? _section;
    private SectionOutline? _radial;
    private SegmentPlan? _last;

    public void StartRing(TurnedRing ring)
    {
        _section = WithSteps(SolidCheck.Tidy(ring.Section), ring);
        _radial = null;
        _ofRing.Clear();
    }

    // A leaning glue line bends where it runs over the round wall: levels are put in so that it keeps to it like the facets do.
    private WallSection WithSteps(WallSection section, TurnedRing ring)
    {
        double steepest = ring.Segments.Max(s => (double?)Steepness(s)) ?? 0;
        if (steepest == 0) return section;
        List<WallLevel> levels = [section.Levels[0]];
        foreach ((WallLevel below, WallLevel above) in section.Levels.Zip(section.Levels.Skip(1)))
        {
            double radius = Math.Max(below.Outer, above.Outer), turn = (above.Z - below.Z) * steepest / radius;
            int steps = turn > 0 ? facets.Over(radius, Math.Min(turn, Math.PI)) : 1;
            for (int i = 1; i < steps; i++) levels.Add(WallLevel.Between(below, above, (double)i / steps));
            levels.Add(above);
        }

        return new([.. levels]);
    }

    // How far around the wall a side moves for each millimetre up; more beside a segment's middle, where it meets the wall at a slant.
    private static double Steepness(TurnedSegment segment)
    {
        double slant = segment.Within is SegmentJoints joints ? Math.Cos((joints.To.Direction - joints.From.Direction) / 2) : 1;
        return Math.Max(Math.Abs(Math.Tan(segment.From.Tilt)), Math.Abs(Math.Tan(segment.To.Tilt))) / slant;
    }

    /// <summary>One plan for each of the segment's cells.</summary>
    public SegmentPlan[] Plan(TurnedSegment segment)
    {
        SegmentShape shape = SegmentShape.Of(SegmentShape.AtZero(segment));
        if (!_ofRing.TryGetValue(shape, out SegmentPlan[]? plans))
        {
            plans = [.. SegmentCells.Of(segment).Select(cell => Make(cell))];
            _ofRing.Add(shape, plans);
        }

        return plans;
    }

    private SegmentPlan Make(SegmentSpan span)
    {
        SectionOutline outline = Outline(span);
        int count = Math.Max(facets.Over(outline.GreatestRadius, Widest(outline, span)), span.IsFullTurn ? 3 : 1);
        FaceGroups groups = corners == MeshCorners.Shared ? FaceGroups.OneForAll : FaceGroups.Smooth(outline);
        MeshPattern pattern = KnownPattern(outline, groups, count, span.IsFullTurn) ?? MeshPattern.Of(outline, groups, count, span.IsFullTurn);
        return _last = new(outline, groups, pattern, count, span.IsFullTurn);
    }

    private SectionOutline Outline(SegmentSpan span)
    {
        if (!span.IsRadial || span.Angle <= 0) return SectionOutline.Of(SectionClip.Runs(_section!, span), span);
        return _radial ??= SectionOutline.Of([[.. _section!.Levels]], span);
    }

    private static double Widest(SectionOutline outline, SegmentSpan span)
    {
        double widest = 0;
        foreach (SectionNode node in outline.Nodes) widest = Math.Max(widest, span.Width(node.R, node.Z));
        return widest;
    }

    // Rings of the same number of levels connect alike, however wide they are.
    private MeshPattern? KnownPattern(SectionOutline outline, FaceGroups groups, int count, bool fullTurn) =>
        _last is { } last && last.Facets == count && last.FullTurn == fullTurn && last.Groups.IsLike(groups) && last.Outline.ConnectsLike(outline)
            ? last.Pattern : null;
}
