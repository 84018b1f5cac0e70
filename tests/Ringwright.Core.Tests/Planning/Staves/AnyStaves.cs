using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Planning;

/// <summary>Random rings of staves whose wall leans with them.</summary>
internal static class AnyStaves
{
    public static readonly Gen<StaveRing> Ring = Leaning().Where(ReachTheirEnd);

    private static Gen<StaveRing> Leaning() =>
        from n in Gen.Int[3, 60]
        from lean in Gen.OneOf(Gen.Const(0.0), Gen.Double[-70, 70])
        from height in Gen.Double[20, 150]
        from narrow in Gen.Double[40, 200]
        from wall in Gen.Double[3, 25]
        from woods in Gen.Int[1, 3]
        let cone = 2 * height * Math.Tan(double.DegreesToRadians(Math.Abs(lean)))
        select new StaveRing
        {
            Name = "Staves",
            Segments = n,
            Lean = Angle.FromDegrees(lean),
            Thickness = AnyPiece.Mm(height),
            Diameter = AnyPiece.Mm(narrow + (2 * wall) + cone),
            InnerDiameter = AnyPiece.Mm(narrow),
            Woods = [.. new[] { "maple", "padauk", "wenge" }.Take(woods)],
        };

    // Staves that come to a point inside before their narrower end are refused; 2 mm are left for allowance and flattening.
    private static bool ReachTheirEnd(StaveRing ring)
    {
        double slope = Math.Tan(Math.Abs(ring.Lean!.Value.Radians)), cone = ring.Thickness.Millimetres * slope;
        return (((ring.InnerDiameter!.Value.Millimetres / 2) - 2 + cone) * Math.Cos(Math.PI / ring.Segments)) - cone > slope;
    }

    public static readonly Gen<Shop> Shop = AnyPiece.Shop.Select(Gen.Double[0, 1000], (shop, width) => shop with
    {
        Boards = shop.Boards with { Width = width < 300 ? null : AnyPiece.Mm(1000 + width) },
    });

    public static RingPlan Plan(StaveRing ring, Shop shop) => Planner.Plan(new() { Name = "Random", Rings = [ring] }, shop).Rings[0];

    /// <summary>The shop without sanding: what is sawn is what is glued.</summary>
    public static Shop Unsanded(Shop shop) => shop with { Sanding = shop.Sanding with { PerFace = AnyPiece.Mm(0) } };

    /// <summary>The stave in the coordinates of its board.</summary>
    public static ConvexSolid InBoard(RingPlan plan, int segment)
    {
        Frame3D frame = plan.Layout[segment].Frame;
        double middle = (segment + plan.Ring.Shift) * 2 * Math.PI / plan.Ring.Around;
        ConvexSolid solid = Block(-5000, 10000).ToLocal(new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1), new(0, 0, 0)));
        foreach (HalfSpace side in plan.Stave!.Value.Sides(middle)) solid = solid.Clip(frame.ToLocal(side), 0);
        return solid;
    }

    private static ConvexSolid Block(double from, double size) =>
        new BoardBlank(size, size, size).Solid().ToLocal(Frame3D.Identity with { Origin = new(-from, -from, -from) });
}
