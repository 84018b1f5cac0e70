using System.Collections.Immutable;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>The heart: from what is wanted and what it is made with to everything the shop needs. Pure.</summary>
public static class Planner
{
    /// <summary>Plans <paramref name="piece"/> for <paramref name="shop"/>.</summary>
    /// <exception cref="BadInputException">A ring cannot be made as it is described.</exception>
    public static Plan Plan(Piece piece, Shop shop)
    {
        PieceCheck.Check(piece);
        ShopCheck.Check(shop);
        ImmutableArray<RingPlan> rings = [.. piece.Rings.Select(ring => PlanRing(ring, shop))];
        return new(piece, shop, rings, Verdicts.Of(rings));
    }

    private static RingPlan PlanRing(Ring ring, Shop shop) => ring switch
    {
        WedgeDisc or SegmentRing => ClosedRing.Plan(ring, shop),
        OpenRing => throw NotPlanned(ring),
        MixedRing => throw NotPlanned(ring),
        StaveRing staves => Staves.Plan(staves, shop),
        LaminatedRing laminated => MotifBand.Plan(laminated, shop),
        BoardRing => throw NotPlanned(ring),
        SolidLayer => throw NotPlanned(ring),
        _ => throw NotPlanned(ring),
    };

    private static BadInputException NotPlanned(Ring ring) => new($"ring {ring.Name}, construction", "this version does not plan it", "a wedge disc or a segment ring can be planned");
}
