namespace Ringwright.Core.Turning;

/// <summary>Which face of a turned segment.</summary>
public enum SegmentFace
{
    /// <summary>The turned outside, with steps.</summary>
    Outer,

    /// <summary>The turned inside, with floors.</summary>
    Inner,

    /// <summary>The glue face above.</summary>
    Top,

    /// <summary>The glue face below.</summary>
    Bottom,

    /// <summary>The joint face it starts at.</summary>
    From,

    /// <summary>The joint face it ends at, counter-clockwise.</summary>
    To,
}
