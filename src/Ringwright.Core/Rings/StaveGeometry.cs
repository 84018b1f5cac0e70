using Ringwright.Core.Geometry;

namespace Ringwright.Core.Rings;

/// <summary>
/// One of <paramref name="Segments"/> equal staves around the axis z, its two joint faces in planes through the axis, its outer
/// and inner face flat and parallel, leaning by <paramref name="Lean"/>. Lengths in mm, angles in radians. Compound angles:
/// tan(mitre) = sin(lean) · tan(π/N), sin(tilt) = cos(lean) · sin(π/N) (published as the rule for work with sloping sides).
/// </summary>
/// <param name="Segments">Staves around, N.</param>
/// <param name="Lean">Lean of the faces from the axis, less than a right angle; above 0 the ring is wider at the top.</param>
/// <param name="Bottom">Height of the lower ends.</param>
/// <param name="Top">Height of the upper ends.</param>
/// <param name="Outer">Distance of the outer face's plane from the point of the axis at z = 0.</param>
/// <param name="Inner">Distance of the inner face's plane from it.</param>
public readonly record struct StaveGeometry(int Segments, double Lean, double Bottom, double Top, double Outer, double Inner)
{
    /// <summary>Below this lean, radians, the edges meet so far away that they count as parallel.</summary>
    public const double Straight = 1e-6;

    /// <summary>Whether the staves stand upright: their edges are parallel, and only the blade is tilted.</summary>
    public bool IsUpright => Math.Abs(Lean) < Straight;

    /// <summary>Half the angle a stave takes of the turn, π/N.</summary>
    public double HalfAngle => Math.PI / Segments;

    /// <summary>Angle of each edge from square across the stave's face; 0 when upright.</summary>
    public double Mitre => IsUpright ? 0 : Math.Atan(Math.Sin(Math.Abs(Lean)) * Math.Tan(HalfAngle));

    /// <summary>Tilt of the blade from square to the stave's face.</summary>
    public double Tilt => Math.Asin(Math.Cos(Lean) * Math.Sin(HalfAngle));

    /// <summary>What part of an error of the tilt turns the joint about the axis, cos(lean) · cos(mitre): from cos(π/N) = cos(tilt) · cos(mitre).</summary>
    public double TiltCounts => Math.Cos(Lean) * Math.Cos(Mitre);

    /// <summary>The same for an error of the mitre, sin(lean).</summary>
    public double MitreCounts => Math.Sin(Math.Abs(Lean));

    /// <summary>Thickness of the board.</summary>
    public double Thickness => Outer - Inner;

    /// <summary>Length of a stave along its grain, from end to end on one face.</summary>
    public double Length => (Top - Bottom) / Math.Cos(Lean);

    /// <summary>Height of the wider end.</summary>
    public double WideEnd => Lean >= 0 ? Top : Bottom;

    /// <summary>Height of the narrower end.</summary>
    public double NarrowEnd => Lean >= 0 ? Bottom : Top;

    /// <summary>Distance between axis and outer face, square to the axis, at height <paramref name="z"/>.</summary>
    public double OuterApothem(double z) => Apothem(Outer, z);

    /// <summary>The same for the inner face.</summary>
    public double InnerApothem(double z) => Apothem(Inner, z);

    /// <summary>The same for the plane half way through the board.</summary>
    public double MiddleApothem(double z) => Apothem((Outer + Inner) / 2, z);

    /// <summary>Width of a stave where its face is <paramref name="apothem"/> from the axis, 2 · apothem · tan(π/N).</summary>
    public double Width(double apothem) => 2 * apothem * Math.Tan(HalfAngle);

    /// <summary>
    /// Volume of all staves between two heights, mm³: N · tan(π/N) · ∫(Ao² − Ai²) dz, a pyramid cut off at both ends less another one.
    /// </summary>
    public double RingVolume(double from, double to)
    {
        static double Squares(double low, double high) => ((low * low) + (low * high) + (high * high)) / 3;
        double mean = Squares(OuterApothem(from), OuterApothem(to)) - Squares(InnerApothem(from), InnerApothem(to));
        return Segments * Math.Tan(HalfAngle) * (to - from) * mean;
    }

    /// <summary>The stave before <paramref name="perFace"/> mm were sanded off each joint face: wider, not thicker.</summary>
    public StaveGeometry BeforeSanding(double perFace)
    {
        double grown = perFace * Math.Cos(Lean) / Math.Sin(HalfAngle);
        return this with { Outer = Outer + grown, Inner = Inner + grown };
    }

    /// <summary>
    /// What lies flat on the saw, half way through the board: for leaning staves their trapezoid, whose joints meet at the mitre;
    /// for upright ones their end, whose joints meet at the tilt and whose depth is the board's thickness.
    /// </summary>
    public WedgeGeometry Flat => IsUpright
        ? new(Segments, Outer, Inner)
        : new(Segments, MiddleApothem(WideEnd) / Math.Abs(Math.Sin(Lean)), MiddleApothem(NarrowEnd) / Math.Abs(Math.Sin(Lean))) { HalfAngle = Mitre };

    /// <summary>Direction along the stave towards its wider end, in the ring, for the stave at the angle <paramref name="middle"/>.</summary>
    public Vector3D TowardsWideEnd(double middle)
    {
        (double sin, double cos) = Math.SinCos(Lean);
        Vector3D up = (sin * Radial(middle)) + new Vector3D(0, 0, cos);
        return Lean >= 0 ? up : -up;
    }

    /// <summary>Direction square out of the outer face.</summary>
    public Vector3D Outward(double middle)
    {
        (double sin, double cos) = Math.SinCos(Lean);
        return (cos * Radial(middle)) - new Vector3D(0, 0, sin);
    }

    /// <summary>The six planes around the stave at the angle <paramref name="middle"/>: joints, faces, ends.</summary>
    public HalfSpace[] Sides(double middle)
    {
        Vector3D outward = Outward(middle);
        return
        [
            new(new(-Math.Sin(middle + HalfAngle), Math.Cos(middle + HalfAngle), 0), 0),
            new(new(Math.Sin(middle - HalfAngle), -Math.Cos(middle - HalfAngle), 0), 0),
            new(outward, Outer), new(-outward, -Inner), new(new(0, 0, 1), Top), new(new(0, 0, -1), -Bottom),
        ];
    }

    private static Vector3D Radial(double middle) => new(Math.Cos(middle), Math.Sin(middle), 0);

    private double Apothem(double distance, double z) => (distance + (z * Math.Sin(Lean))) / Math.Cos(Lean);
}
