namespace Ringwright.Core.Turning;

/// <summary>
/// A segment but for its direction around the axis, to tell which segments of a ring are alike: as most are, only the first
/// of a kind need be weighed. Places to 1e-9 mm, angles to 1e-12 radians.
/// </summary>
internal readonly record struct SegmentShape(SideShape From, SideShape To, SideShape WithinFrom, SideShape WithinTo, bool IsWithin)
{
    public static SegmentShape Of(TurnedSegment segment)
    {
        double zero = segment.From.Direction;
        SegmentJoints within = segment.Within ?? default;
        return new(SideShape.Of(segment.From, zero), SideShape.Of(segment.To, zero), SideShape.Of(within.From, zero), SideShape.Of(within.To, zero), segment.Within is not null);
    }

    /// <summary>The segment turned so that it starts at direction 0.</summary>
    public static TurnedSegment AtZero(TurnedSegment segment)
    {
        double zero = segment.From.Direction;
        return segment with
        {
            From = Turned(segment.From, zero),
            To = Turned(segment.To, zero),
            Within = segment.Within is SegmentJoints within ? new(Turned(within.From, zero), Turned(within.To, zero)) : null,
        };
    }

    private static JointPlane Turned(JointPlane plane, double zero) => plane with { Direction = plane.Direction - zero };
}

/// <summary>One side of it, in steps of <see cref="PerMillimetre"/> and <see cref="PerRadian"/>.</summary>
internal readonly record struct SideShape(long Direction, long Offset, long Tilt)
{
    private const double PerMillimetre = 1e9;
    private const double PerRadian = 1e12;

    public static SideShape Of(JointPlane plane, double zero) => new(
        (long)Math.Round((plane.Direction - zero) * PerRadian), (long)Math.Round(plane.Offset * PerMillimetre), (long)Math.Round(plane.Tilt * PerRadian));
}
