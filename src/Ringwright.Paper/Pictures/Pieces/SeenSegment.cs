using System.Collections.Immutable;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A piece of wood as it shows on the outer wall: from where to where around, at heights between which its sides run on.</summary>
internal sealed class SeenSegment
{
    private const int Halvings = 30;
    private const int Steps = 8; // from level to level

    private readonly TurnedSegment _segment;

    /// <summary>Sees a segment at these levels, and besides where a strip of a glued segment is cut off by the segment's joints.</summary>
    public SeenSegment(TurnedSegment segment, string wood, ImmutableArray<WallLevel> levels)
    {
        (_segment, Wood) = (segment, wood);
        Levels = segment.Within is SegmentJoints within ? [.. WithCuts(Finer(levels), within)] : levels;
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
    private static ImmutableArray<WallLevel> Finer(ImmutableArray<WallLevel> levels) =>
        [levels[0], .. levels.Zip(levels[1..]).SelectMany(pair => Enumerable.Range(1, Steps).Select(i => Between(pair.First, pair.Second, (double)i / Steps)))];

    private static WallLevel Between(WallLevel low, WallLevel high, double share) => share == 1
        ? high
        : new(low.Z + (share * (high.Z - low.Z)), low.Outer + (share * (high.Outer - low.Outer)), low.Inner + (share * (high.Inner - low.Inner)));

    private IEnumerable<WallLevel> WithCuts(ImmutableArray<WallLevel> levels, SegmentJoints within)
    {
        yield return levels[0];
        for (int i = 1; i < levels.Length; i++)
        {
            (WallLevel low, WallLevel high) = (levels[i - 1], levels[i]);
            var cuts = from side in new[] { _segment.From, _segment.To } from joint in new[] { within.From, within.To } select Cut(low, high, side, joint);
            foreach (WallLevel cut in cuts.OfType<WallLevel>().OrderBy(c => c.Z)) yield return cut;
            yield return high;
        }
    }

    // Where a strip's side crosses a joint between two levels, found by halving.
    private static WallLevel? Cut(WallLevel low, WallLevel high, JointPlane side, JointPlane joint)
    {
        double Apart(WallLevel level) => At(side, level) - At(joint, level);
        bool before = Apart(low) < 0;
        if (before == Apart(high) < 0) return null;
        for (int i = 0; i < Halvings; i++)
        {
            WallLevel middle = Between(low, high, 0.5);
            if (before == Apart(middle) < 0) low = middle;
            else high = middle;
        }

        return high;
    }
}
