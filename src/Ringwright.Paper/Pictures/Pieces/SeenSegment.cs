using System.Collections.Immutable;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A piece of wood at one level of the wall.</summary>
/// <param name="Wall">The level.</param>
/// <param name="From">Where it begins around, radians.</param>
/// <param name="To">Where it ends; where it begins when there is nothing of it.</param>
internal readonly record struct SeenLevel(WallLevel Wall, double From, double To);

/// <summary>A piece of wood as it shows on the outer wall: from where to where around, at heights between which its sides run on.</summary>
internal sealed class SeenSegment
{
    private const int Halvings = 30;
    private const int Steps = 16; // along the whole wall, at least

    private readonly TurnedSegment _segment;

    private SeenSegment(TurnedSegment segment, string wood, ImmutableArray<WallLevel> levels, ImmutableArray<WallLevel> finer)
    {
        (_segment, Wood) = (segment, wood);
        Levels = segment.Within is SegmentJoints within ? WithCuts(finer, within) : [.. levels.Select(At)];
    }

    /// <summary>Sees a ring's pieces of wood at these levels, and besides where a strip of a glued segment is cut off by the segment's joints.</summary>
    public static IEnumerable<SeenSegment> Of(ImmutableArray<TurnedSegment> segments, Func<int, string> wood, ImmutableArray<WallLevel> levels)
    {
        ImmutableArray<WallLevel> finer = segments.Any(s => s.Within is not null) ? Finer(levels) : levels;
        return segments.Select((segment, i) => new SeenSegment(segment, wood(i), levels, finer));
    }

    /// <summary>Its wood.</summary>
    public string Wood { get; }

    /// <summary>It at each level, from the bottom up.</summary>
    public ImmutableArray<SeenLevel> Levels { get; }

    /// <summary>Whether it runs all around, without a joint.</summary>
    public bool IsWhole => _segment.To.Direction - _segment.From.Direction > (2 * Math.PI) - 1e-9;

    /// <summary>Its width along the wall at a level as if nothing cut it off, mm; of much more than a radian, the radius.</summary>
    public static double Width(TurnedSegment segment, WallLevel level) => level.Outer * Math.Min(1, Angle(segment.To, level) - Angle(segment.From, level));

    /// <summary>It at any level.</summary>
    public SeenLevel At(WallLevel level)
    {
        double from = Angle(_segment.From, level), to = Angle(_segment.To, level);
        return _segment.Within is SegmentJoints within ? Cut(level, from, to, Angle(within.From, level), Angle(within.To, level)) : new(level, from, Math.Max(from, to));
    }

    private static SeenLevel Cut(WallLevel level, double from, double to, double first, double last)
    {
        double begins = Math.Clamp(from, first, last);
        return new(level, begins, Math.Max(begins, Math.Clamp(to, first, last)));
    }

    private static double Angle(JointPlane joint, WallLevel level) => joint.AngleAt(level.Outer, level.Z);

    // A leaning side bends a little around the wall.
    private static ImmutableArray<WallLevel> Finer(ImmutableArray<WallLevel> levels)
    {
        double step = levels.Zip(levels[1..], Length).Sum() / Steps;
        return [levels[0], .. levels.Zip(levels[1..]).SelectMany(pair => Divided(pair.First, pair.Second, (int)Math.Ceiling(Length(pair.First, pair.Second) / step)))];
    }

    private static double Length(WallLevel low, WallLevel high) => double.Hypot(high.Z - low.Z, high.Outer - low.Outer);

    // The levels between in this many steps, and the upper one.
    private static IEnumerable<WallLevel> Divided(WallLevel low, WallLevel high, int steps) =>
        Enumerable.Range(1, Math.Max(0, steps - 1)).Select(i => WallLevel.Between(low, high, (double)i / steps)).Append(high);

    // The levels, and heights between them at which a side crosses a joint.
    private ImmutableArray<SeenLevel> WithCuts(ImmutableArray<WallLevel> levels, SegmentJoints within)
    {
        var seen = ImmutableArray.CreateBuilder<SeenLevel>(levels.Length + 4);
        JointPlane[] planes = [_segment.From, _segment.To, within.From, within.To];
        Span<double> below = stackalloc double[4], above = stackalloc double[4];
        List<double> cuts = [];
        for (int i = 0; i < levels.Length; i++)
        {
            for (int k = 0; k < planes.Length; k++) above[k] = Angle(planes[k], levels[i]);
            cuts.Clear();
            for (int side = 0; i > 0 && side < 2; side++)
                for (int joint = 2; joint < 4; joint++)
                    if (below[side] < below[joint] != above[side] < above[joint]) cuts.Add(Crossing(levels[i - 1], levels[i], planes[side], planes[joint]));
            cuts.Sort();
            foreach (double share in cuts) seen.Add(At(WallLevel.Between(levels[i - 1], levels[i], share)));
            seen.Add(Cut(levels[i], above[0], above[1], above[2], above[3]));
            above.CopyTo(below);
        }

        return seen.DrainToImmutable();
    }

    // How far from one level to the next a strip's side crosses a joint, found by halving.
    private static double Crossing(WallLevel low, WallLevel high, JointPlane side, JointPlane joint)
    {
        bool before = IsBefore(low);
        (double from, double to) = (0, 1);
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (from + to) / 2;
            if (before == IsBefore(WallLevel.Between(low, high, middle))) from = middle;
            else to = middle;
        }

        return to;

        bool IsBefore(WallLevel level) => Angle(side, level) < Angle(joint, level);
    }
}
