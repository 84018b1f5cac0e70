using Ringwright.Core.Geometry;

namespace Ringwright.Core.Rings;

/// <summary>
/// One of <paramref name="Segments"/> equal wedges around a ring, an isosceles trapezoid (a triangle when it reaches a
/// point). Lengths in mm, angles in radians. Formulas: design, section 4 (regular polygon: flat = 2 · apothem · tan(π/N)).
/// </summary>
/// <param name="Segments">Number of wedges around, N.</param>
/// <param name="OuterApothem">Distance from the centre to the outer flat, Ao.</param>
/// <param name="InnerApothem">Distance from the centre to the inner flat, Ai; 0 for a point. Negative is not a wedge.</param>
public readonly record struct WedgeGeometry(int Segments, double OuterApothem, double InnerApothem)
{
    /// <summary>
    /// Half the wedge's angle, a: the mitre. π/N unless set: less where gaps stay open between the wedges, another share of
    /// the turn where segments are unequal. Apothems then count from where this wedge's own two faces would meet.
    /// </summary>
    public double HalfAngle { get; init; } = Math.PI / Segments;

    /// <summary>Distance of that meeting point from the ring's axis, towards the rim; 0 unless spacers of even thickness lie between the wedges.</summary>
    public double ApexRadius { get; init; }

    /// <summary>The angle between the two joint faces, 2π/N.</summary>
    public double WedgeAngle => 2 * HalfAngle;

    /// <summary>Length of the outer flat (rim edge), Lo = 2 Ao tan a.</summary>
    public double RimEdge => 2 * OuterApothem * Math.Tan(HalfAngle);

    /// <summary>Length of the inner flat (tip), Li = 2 Ai tan a.</summary>
    public double Tip => 2 * InnerApothem * Math.Tan(HalfAngle);

    /// <summary>Radial depth w = Ao − Ai: the width to rip.</summary>
    public double Depth => OuterApothem - InnerApothem;

    /// <summary>Length of a joint face from rim to tip, w / cos a.</summary>
    public double FaceLength => Depth / Math.Cos(HalfAngle);

    /// <summary>Distance from the centre to the outer corners, Ao / cos a.</summary>
    public double OuterCorner => OuterApothem / Math.Cos(HalfAngle);

    /// <summary>Distance from the ring's axis to the outer corners, wherever the faces meet.</summary>
    public double Reach => ApexRadius == 0 ? OuterCorner : new Vector2D(ApexRadius + OuterApothem, RimEdge / 2).Length;

    /// <summary>Distance from the centre to the inner corners, Ai / cos a.</summary>
    public double InnerCorner => InnerApothem / Math.Cos(HalfAngle);

    /// <summary>Area of one wedge, (Lo + Li)/2 · w.</summary>
    public double Area => (RimEdge + Tip) / 2 * Depth;

    /// <summary>
    /// The wedge before <paramref name="perFace"/> mm were sanded off each joint face: both flats longer by 2 s / cos a, the
    /// depth unchanged; its closed disc would have an apothem larger by s / sin a.
    /// </summary>
    public WedgeGeometry BeforeSanding(double perFace)
    {
        double grown = perFace / Math.Sin(HalfAngle);
        return this with { OuterApothem = OuterApothem + grown, InnerApothem = InnerApothem + grown };
    }

    /// <summary>What is left when <paramref name="perFace"/> mm are sanded off each joint face.</summary>
    public WedgeGeometry AfterSanding(double perFace) => BeforeSanding(-perFace);

    /// <summary>
    /// The wedge in plan, at <paramref name="index"/> in its ring around the origin: the first wedge's middle lies on +x,
    /// further ones counter-clockwise. Three corners when the tip is a point.
    /// </summary>
    public ConvexPolygon Plan(int index) => PlanAt(index * (2 * Math.PI / Segments));

    /// <summary>The wedge in plan with its middle at the angle <paramref name="middle"/> (radians) around the origin.</summary>
    public ConvexPolygon PlanAt(double middle)
    {
        Vector2D apex = Vector2D.Polar(ApexRadius, middle);
        Vector2D from = apex + Vector2D.Polar(OuterCorner, middle - HalfAngle);
        Vector2D to = apex + Vector2D.Polar(OuterCorner, middle + HalfAngle);
        if (InnerApothem <= 0) return new([from, to, apex]);
        return new([from, to, apex + Vector2D.Polar(InnerCorner, middle + HalfAngle), apex + Vector2D.Polar(InnerCorner, middle - HalfAngle)]);
    }
}
