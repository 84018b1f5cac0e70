using System.Collections.Immutable;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A piece of wood as it shows on the outer wall: from where to where around, at heights between which its sides run on.</summary>
internal sealed class SeenSegment
{
    private const int Halvings = 30;
    private const int Steps = 16; // along the whole wall, at least

    private readonly TurnedSegment _segment;

    private SeenSegment(TurnedSegment segment, string wood, ImmutableArray<WallLevel> levels, ImmutableArray<WallLevel> finer)
    {
        (_segment, Wood) = (segment, wood);
        Levels = segment.Within is SegmentJoints within ? WithCuts(finer, within) : levels;
    }

    /// <summary>Sees a ring's pieces of wood at these levels, and besides where a strip of a glued segment is cut off by the segment's joints.</summary>
    public static IEnumerable<SeenSegment> Of(ImmutableArray<TurnedSegment> segments, Func<int, string> wood, ImmutableArray<WallLevel> levels)
    {
        ImmutableArray<WallLevel> finer = segments.Any(s => s.Within is not null) ? Finer(levels) : levels;
        return segments.Select((segment, i) => new SeenSegment(segment, wood(i), levels, finer));
    }

    /// <summary>Its wood.</summary>
    public string Wood { get; }

    /// <summary>The levels, from the bottom up.</summary>
    public ImmutableArray<WallLevel> Levels { get; }

    /// <summary>Whether it runs all around, without a joint.</summary>
    public bool IsWhole => _segment.To.Direction - _segment.From.Direction > (2 * Math.PI) - 1e-9;

    /// <summary>Its width along the wall at a level as if nothing cut it off, mm; of much more than a radian, the radius.</summary>
    public static double Width(TurnedSegment segment, WallLevel level) => level.Outer * Math.Min(1, At(segment.To, level) - At(segment.From, level));

    /// <summary>Where it begins at a level, radians.</summary>
    public double From(WallLevel level) => Within(At(_segment.From, level), level);

    /// <summary>Where it ends, radians; where it begins when there is nothing of it.</summary>
    public double To(WallLevel level) => Math.Max(From(level), Within(At(_segment.To, level), level));

    private double Within(double angle, WallLevel level) =>
        _segment.Within is SegmentJoints within ? Math.Clamp(angle, At(within.From, level), At(within.To, level)) : angle;

    private static double At(JointPlane joint, WallLevel level) => joint.AngleAt(level.Outer, level.Z);

    // A leaning side bends a little around the wall.
    private static ImmutableArray<WallLevel> Finer(ImmutableArray<WallLevel> levels)
    {
        double step = levels.Zip(levels[1..], Length).Sum() / Steps;
        return [levels[0], .. levels.Zip(levels[1..]).SelectMany(pair => Between(pair.First, pair.Second, (int)Math.Ceiling(Length(pair.First, pair.Second) / step)))];
    }

    private static double Length(WallLevel low, WallLevel high) => double.Hypot(high.Z - low.Z, high.Outer - low.Outer);

    // In this many steps, at least one; without the lower level itself.
    private static IEnumerable<WallLevel> Between(WallLevel low, WallLevel high, int steps) =>
        Enumerable.Range(1, Math.Max(1, steps)).Select(i => Between(low, high, (double)i / Math.Max(1, steps)));

    private static WallLevel Between(WallLevel low, WallLevel high, double share) => share == 1
        ? high
        : new(low.Z + (share * (high.Z - low.Z)), low.Outer + (share * (high.Outer - low.Outer)), low.Inner + (share * (high.Inner - low.Inner)));

    // Most pieces are cut off nowhere and share the ring's own levels.
    private ImmutableArray<WallLevel> WithCuts(ImmutableArray<WallLevel> levels, SegmentJoints within)
    {
        List<(double Place, WallLevel Level)> cuts = [];
        foreach (JointPlane side in new[] { _segment.From, _segment.To })
            foreach (JointPlane joint in new[] { within.From, within.To })
                for (int i = 1; i < levels.Length; i++)
                    if (Cut(levels[i - 1], levels[i], side, joint) is double share) cuts.Add((i - 1 + share, Between(levels[i - 1], levels[i], share)));
        return cuts.Count == 0 ? levels : [.. levels.Select((level, i) => (Place: (double)i, Level: level)).Concat(cuts).OrderBy(at => at.Place).Select(at => at.Level)];
    }

    // How far from one level to the next a strip's side crosses a joint, found by halving.
    private static double? Cut(WallLevel low, WallLevel high, JointPlane side, JointPlane joint)
    {
        bool before = IsBefore(low);
        if (before == IsBefore(high)) return null;
        (double from, double to) = (0, 1);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (from + to) / 2;
            if (before == IsBefore(Between(low, high, middle))) from = middle;
            else to = middle;
        }

        return to;

        bool IsBefore(WallLevel level) => At(side, level) < At(joint, level);
    }
}
