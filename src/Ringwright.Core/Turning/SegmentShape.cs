namespace Ringwright.Core.Turning;

/// <summary>
/// The sides of a segment that starts at direction 0, to tell which segments of a ring are alike but for their direction: as most
/// are, only the first of a kind need be weighed and planned. Places to 1e-9 mm, angles to 1e-12 radians.
/// </summary>
internal readonly record struct SegmentShape(SideShape From, SideShape To, SideShape WithinFrom, SideShape WithinTo, bool IsWithin)
{
    public static SegmentShape Of(TurnedSegment atZero)
    {
        SegmentJoints within = atZero.Within ?? default;
        return new(SideShape.Of(atZero.From), SideShape.Of(atZero.To), SideShape.Of(within.From), SideShape.Of(within.To), atZero.Within is not null);
    }

    /// <summary>The segment turned so that it starts at direction 0; its board stays.</summary>
    public static TurnedSegment AtZero(TurnedSegment segment)
    {
        double back = -segment.From.Direction;
        return segment with { From = segment.From.Turned(back), To = segment.To.Turned(back), Within = segment.Within?.Turned(back) };
    }
}

/// <summary>One side of it, in steps of <see cref="PerMillimetre"/> and <see cref="PerRadian"/>.</summary>
internal readonly record struct SideShape(long Direction, long Offset, long Tilt)
{
    private const double PerMillimetre = 1e9;
    private const double PerRadian = 1e12;

    public static SideShape Of(JointPlane plane) => new(
        (long)Math.Round(plane.Direction * PerRadian), (long)Math.Round(plane.Offset * PerMillimetre), (long)Math.Round(plane.Tilt * PerRadian));
}
