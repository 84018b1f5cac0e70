namespace Ringwright.Core.Turning;

/// <summary>What segments that differ only by rotation and wood have in common.</summary>
internal sealed record SegmentPlan(SectionOutline Outline, FaceGroups Groups, MeshPattern Pattern, int Facets, bool FullTurn);

/// <summary>Plans segments one ring after the other, and plans like ones once.</summary>
internal sealed class SegmentPlanner(Facets facets, MeshCorners corners)
{
    // Directions come from sums of angles: below this two angles are the same.
    private const double SameAngle = 1e-12;

    private readonly List<(TurnedSegment Like, SegmentPlan Plan)> _ofRing = [];
    private WallSection? _section;
    private SectionOutline? _radial;
    private SegmentPlan? _last;

    public void StartRing(TurnedRing ring)
    {
        _section = SolidCheck.Tidy(ring.Section);
        _radial = null;
        _ofRing.Clear();
    }

    public SegmentPlan Plan(TurnedSegment segment)
    {
        foreach ((TurnedSegment like, SegmentPlan plan) in _ofRing)
        {
            if (IsLike(segment, like)) return plan;
        }

        SegmentPlan made = Make(new(segment));
        _ofRing.Add((segment, made));
        return made;
    }

    private static bool IsLike(TurnedSegment a, TurnedSegment b) =>
        a.From.Offset == b.From.Offset && a.From.Tilt == b.From.Tilt && a.To.Offset == b.To.Offset && a.To.Tilt == b.To.Tilt
        && Math.Abs(a.To.Direction - a.From.Direction - (b.To.Direction - b.From.Direction)) < SameAngle;

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
