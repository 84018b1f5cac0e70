namespace Ringwright.Core.Planning;

/// <summary>
/// One cut with a tilted blade around a flat board's middle: a slot between two cones. Its outer side is the inside of one
/// ring, its inner side the outside of the next. Lengths in mm, measured level, from the axis.
/// </summary>
/// <param name="Tilt">Tilt of the blade from upright, radians.</param>
/// <param name="Step">How much wider the cut is at the wide face than at the narrow one, T · tan(tilt).</param>
/// <param name="KerfAcross">Width of the slot measured level, k / cos(tilt).</param>
/// <param name="InsideNarrow">Radius of the outer ring's inside at the narrow face.</param>
public readonly record struct BoardCut(double Tilt, double Step, double KerfAcross, double InsideNarrow)
{
    /// <summary>Radius of the outer ring's inside at the wide face.</summary>
    public double InsideWide => InsideNarrow + Step;

    /// <summary>Radius of the inner ring's outside at the narrow face.</summary>
    public double OutsideNarrow => InsideNarrow - KerfAcross;

    /// <summary>Radius of the inner ring's outside at the wide face.</summary>
    public double OutsideWide => InsideWide - KerfAcross;
}

/// <summary>Radii at one face of a ring as it is sawn, mm.</summary>
/// <param name="Outer">Outside.</param>
/// <param name="Inner">Inside.</param>
public readonly record struct FaceRadii(double Outer, double Inner)
{
    /// <summary>Wood between them, mm.</summary>
    public double Wall => Outer - Inner;
}
