using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>How large a picture lies on the piece.</summary>
public enum PictureSizing
{
    /// <summary>As wide as the angle it is wrapped over; its height follows and is cut off or leaves background.</summary>
    Around,

    /// <summary>As large as fits whole into that angle and the piece's height; the rest is background.</summary>
    Whole,

    /// <summary>As small as covers that angle and height; what sticks out is cut off.</summary>
    Cover,

    /// <summary>That angle wide and the piece high, drawn out of proportion.</summary>
    Stretch,
}

/// <summary>
/// Where a picture lies on the unrolled surface. Its left edge to its right edge goes counter-clockwise, as one reads it from
/// outside. Its proportions are true at the mean radius; on a wider ring it is drawn out around, on a narrower one squeezed.
/// </summary>
public sealed record PicturePlacement
{
    /// <summary>How large it is.</summary>
    public PictureSizing Sizing { get; init; } = PictureSizing.Around;

    /// <summary>The angle it is wrapped over, radians, up to a full turn.</summary>
    public double Angle { get; init; } = 2 * Math.PI;

    /// <summary>The angle at which its middle stands, radians, counter-clockwise from the middle of the first segment of a ring that is not turned.</summary>
    public double Middle { get; init; }

    /// <summary>How far its middle lies above the middle of the piece's height, mm.</summary>
    public double Lift { get; init; }

    /// <summary>Whether it is to be read from inside, as in a bowl: its left edge to its right edge then goes clockwise.</summary>
    public bool FromInside { get; init; }

    internal void Check()
    {
        Require.Angle("picture, angle", Angle, 1e-3, 2 * Math.PI + 1e-9);
        Require.Angle("picture, middle", Middle, -100 * Math.PI, 100 * Math.PI);
        Require.Between("picture, lift", Lift, -1e5, 1e5, "mm");
        if (!Enum.IsDefined(Sizing)) throw new BadInputException("picture, sizing", $"{Sizing} is not known", "use around, whole, cover or stretch");
    }
}
