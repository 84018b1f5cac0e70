namespace Ringwright.Core.Fitting;

/// <summary>The four ends of a joint, as seen at its two edges and two heights.</summary>
[Flags]
public enum JointCorners
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>Rim, bottom.</summary>
    RimBottom = 1,

    /// <summary>Rim, top.</summary>
    RimTop = 2,

    /// <summary>Tip (towards the centre), bottom.</summary>
    TipBottom = 4,

    /// <summary>Tip (towards the centre), top.</summary>
    TipTop = 8,
}

/// <summary>
/// The opening of one joint in mm, square to the face, at the ends of the two faces where they still look at each
/// other. A rounded edge is not part of the face. Step is how far the next wedge's rim stands out beyond this one's.
/// </summary>
/// <param name="RimBottom">Opening at the rim, on the table.</param>
/// <param name="RimTop">Opening at the rim, upper side.</param>
/// <param name="TipBottom">Opening at the tip, on the table.</param>
/// <param name="TipTop">Opening at the tip, upper side.</param>
/// <param name="Step">Step of the rim at mid height, positive when the next wedge stands out.</param>
public readonly record struct JointGap(double RimBottom, double RimTop, double TipBottom, double TipTop, double Step)
{
    /// <summary>Openings up to this count as touching, mm; far below what light shows, far above rounding.</summary>
    public const double TouchTolerance = 1e-6;

    /// <summary>The widest of the four openings, mm.</summary>
    public double Worst => Math.Max(Math.Max(RimBottom, RimTop), Math.Max(TipBottom, TipTop));

    /// <summary>Which ends touch.</summary>
    public JointCorners Touching =>
        Flag(RimBottom, JointCorners.RimBottom) | Flag(RimTop, JointCorners.RimTop)
        | Flag(TipBottom, JointCorners.TipBottom) | Flag(TipTop, JointCorners.TipTop);

    /// <summary>The end with the widest opening (the first of equals in the order of the flags).</summary>
    public JointCorners Widest =>
        Worst == RimBottom ? JointCorners.RimBottom
        : Worst == RimTop ? JointCorners.RimTop
        : Worst == TipBottom ? JointCorners.TipBottom
        : JointCorners.TipTop;

    private static JointCorners Flag(double gap, JointCorners corner) => gap <= TouchTolerance ? corner : JointCorners.None;
}
