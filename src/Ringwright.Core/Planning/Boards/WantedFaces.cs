using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>
/// The least outside and the most inside that a board ring must have at its two faces, its allowance included. A ring's
/// diameters are the largest outside and the smallest inside over its height; what the wall is at the face towards a
/// neighbour follows from the neighbour, because the wall runs on; at a face without one the wall is taken to be as thick
/// as at the other face. Radii in mm.
/// </summary>
/// <param name="Ring">The ring.</param>
/// <param name="WideUp">Whether its wide face is up in the piece.</param>
/// <param name="OuterWide">Least outer radius at the wide face.</param>
/// <param name="OuterNarrow">The same at the narrow face.</param>
/// <param name="InnerNarrow">Most inner radius at the narrow face.</param>
/// <param name="InnerWide">The same at the wide face.</param>
internal readonly record struct WantedFaces(BoardRing Ring, bool WideUp, double OuterWide, double OuterNarrow, double InnerNarrow, double InnerWide)
{
    public static WantedFaces Of(ImmutableArray<Ring> all, int index, Shop shop)
    {
        var ring = (BoardRing)all[index];
        Ring? below = index > 0 ? all[index - 1] : null, above = index + 1 < all.Length ? all[index + 1] : null;
        double own = Outer(ring), q = Allowance(ring, shop), inner = Inner(ring);
        bool wideUp = (above is null ? own : Outer(above)) >= (below is null ? own : Outer(below));
        (Ring? narrow, Ring? wide) = wideUp ? (below, above) : (above, below);
        // Where both neighbours are smaller the widest place may be anywhere in the ring; the same for the narrowest inside.
        bool bulge = below is not null && above is not null && own > Outer(below) && own > Outer(above);
        bool waist = below is IHollowRing && above is IHollowRing && inner < Inner(below) && inner < Inner(above);
        double? outerNarrow = bulge ? own : narrow is null ? null : Math.Clamp(Outer(narrow), inner, own);
        double? innerWide = waist ? inner : wide is IHollowRing ? Math.Clamp(Inner(wide), inner, own) : null;
        (double On, double Iw) runsOn = (outerNarrow ?? (inner + own - (innerWide ?? inner)), innerWide ?? (own - ((outerNarrow ?? own) - inner)));
        return new(ring, wideUp, own + q, runsOn.On + q, inner - q, runsOn.Iw - q);
    }

    /// <summary>Wood left on the radius of <paramref name="ring"/> for turning, mm.</summary>
    public static double Allowance(BoardRing ring, Shop shop) => (ring.Allowance ?? shop.Wanted.Allowance).Millimetres;

    /// <summary>Inner radius to be turned, mm.</summary>
    public static double Inner(Ring ring) => ((ring as IHollowRing)?.InnerDiameter
        ?? throw new InvalidOperationException($"Ring {ring.Name} has no inner size yet.")).Millimetres / 2;

    private static double Outer(Ring ring) => ring.Outside.Millimetres / 2;
}
