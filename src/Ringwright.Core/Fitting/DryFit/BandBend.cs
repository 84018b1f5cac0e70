using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>Where the band bends over a joint: the unit directions in which it arrives and leaves, (across, along) in the joint frame.</summary>
internal struct BandBend
{
    /// <summary>Direction of the band up to the joint.</summary>
    public Vector2D Before;

    /// <summary>Direction of the band from the joint on.</summary>
    public Vector2D After;

    /// <summary>Whether the band touches either corner of the joint; if not, it passes over both.</summary>
    public bool OnBand;
}
