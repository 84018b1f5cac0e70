using System.Collections.Immutable;
using System.Globalization;

namespace Ringwright.Core.Turning;

/// <summary>Whether rings can be meshed and weighed; otherwise one sentence with the ring's number, from 1 at the bottom.</summary>
internal static class SolidCheck
{
    /// <summary>Differences below this count as none, mm: what single precision keeps apart at the size of a lathe.</summary>
    public const double Resolution = 5e-5;

    /// <exception cref="BadInputException">Something cannot be used.</exception>
    public static void Check(IReadOnlyList<TurnedRing> rings)
    {
        ArgumentNullException.ThrowIfNull(rings);
        for (int i = 0; i < rings.Count; i++) Check(rings[i], $"ring {i + 1}");
    }

    public static void Check(TurnedRing ring, string where)
    {
        CheckSection(ring.Section, where);
        for (int i = 0; i < ring.Segments.Length; i++)
        {
            if (Problem(ring.Segments[i]) is { } found)
                throw new BadInputException($"{where}, segment {i + 1}", found.Problem, found.Right);
        }
    }

    private static void CheckSection(WallSection section, string where)
    {
        if (section.Levels.Length < 2) throw new BadInputException(where, $"the wall has {section.Levels.Length} levels", "it takes at least two, bottom and top");
        for (int i = 0; i < section.Levels.Length; i++) CheckLevel(section.Levels, i, where);
        if (section.Levels[^1].Z - section.Levels[0].Z <= Resolution) throw new BadInputException(where, "its wall has no height", "the top must be above the bottom");
    }

    private static void CheckLevel(ImmutableArray<WallLevel> levels, int i, string where)
    {
        WallLevel level = levels[i];
        string at = $"{where}, height {Mm(level.Z)}";
        if (!double.IsFinite(level.Z + level.Outer + level.Inner)) throw new BadInputException(at, "a size is not a number", "heights and radii are plain numbers of mm");
        if (level.Inner < 0) throw new BadInputException(at, $"the inner radius is {Mm(level.Inner)}", "it is 0 or more");
        bool end = i == 0 || i == levels.Length - 1;
        if (level.Outer - level.Inner is var wall && (end ? wall < 0 : wall <= Resolution))
            throw new BadInputException(at, $"the outer radius {Mm(level.Outer)} leaves no wall around the inner radius {Mm(level.Inner)}", "the outer radius must be the larger one");
        if (i == 0) return;
        WallLevel below = levels[i - 1];
        if (level.Z < below.Z) throw new BadInputException(at, $"the level lies under the one before it at {Mm(below.Z)}", "levels go from the bottom up");
        if (!SameHeight(below, level)) return;
        if (i > 1 && SameHeight(levels[i - 2], level)) throw new BadInputException(at, "three levels share this height", "a height comes twice at most, below and above a step");
        if (Math.Min(below.Outer, level.Outer) - Math.Max(below.Inner, level.Inner) <= Resolution)
            throw new BadInputException(at, "the wood below and above the step does not meet", "their walls must overlap");
    }

    private static (string Problem, string Right)? Problem(TurnedSegment segment)
    {
        if (!IsPlane(segment.From) || !IsPlane(segment.To)) return ("a joint is not a number or lies flat", "directions, offsets and tilts are finite and a tilt is under 90°");
        if (segment.To.Direction - segment.From.Direction > (2 * Math.PI) + 1e-9) return ("it reaches around the axis more than once", "a segment takes a full turn at most");
        if (segment.Within is SegmentJoints joints && !Surround(joints, segment))
            return ("its glue lines do not lie between its joints", "joints stand upright through the axis, less than a quarter turn to either side of the glue lines' directions");
        return segment.Wood < 0 ? ($"its wood has the number {segment.Wood}", "woods count from 0") : null;
    }

    private static bool Surround(SegmentJoints joints, TurnedSegment segment) =>
        joints.From == new JointPlane(joints.From.Direction) && joints.To == new JointPlane(joints.To.Direction)
        && IsBefore(joints.From, segment.From) && IsBefore(joints.From, segment.To) && IsBefore(segment.From, joints.To) && IsBefore(segment.To, joints.To);

    private static bool IsBefore(JointPlane first, JointPlane second) => second.Direction - first.Direction is > 0 and < Math.PI / 2;

    private static bool IsPlane(JointPlane plane) =>
        double.IsFinite(plane.Direction + plane.Offset) && Math.Abs(plane.Tilt) < (Math.PI / 2) - 1e-6;

    /// <summary>
    /// The section without levels that say nothing: one like the level before it, and the far side of a step that lies in the
    /// ring's own face, where this ring has no wood.
    /// </summary>
    public static WallSection Tidy(WallSection section)
    {
        ImmutableArray<WallLevel> levels = section.Levels;
        bool telling = !SameHeight(levels[0], levels[1]);
        for (int i = 1; i < levels.Length; i++) telling &= Tells(levels, i);
        return telling ? section : new([.. levels.Where((_, i) => i == 0 ? !SameHeight(levels[0], levels[1]) : Tells(levels, i))]);
    }

    private static bool Tells(ImmutableArray<WallLevel> levels, int i) =>
        !SameHeight(levels[i - 1], levels[i]) || i == 1 || (i < levels.Length - 1 && !Same(levels[i - 1], levels[i]));

    private static bool Same(WallLevel a, WallLevel b) =>
        Math.Abs(a.Outer - b.Outer) <= Resolution && Math.Abs(a.Inner - b.Inner) <= Resolution;

    public static bool SameHeight(WallLevel a, WallLevel b) => Math.Abs(a.Z - b.Z) <= Resolution;

    private static string Mm(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.###} mm");
}
