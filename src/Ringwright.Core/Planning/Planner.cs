using System.Collections.Immutable;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

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
        TurnedForm? form = piece.Shape is Shape shape ? TurnedForm.Of(shape) : null;
        ImmutableArray<Ring> sized = Sizing.Of(piece, form);
        IReadOnlyDictionary<string, RingPlan> fromBoards = BoardRings.Plan(sized, shop);
        ImmutableArray<RingPlan> rings = [.. sized.Select((ring, i) => fromBoards.GetValueOrDefault(ring.Name) ?? PlanRing(ring, sized, i, shop))];
        if (form is not null) rings = ShapeFindings.Add(rings, form, piece);
        var timber = new TimberPlan(shop);
        rings = timber.Add(rings);
        var plan = new Plan(piece, shop, rings, form, PieceFigures.Of(rings, form, timber), Sentence.Of(""));
        var lathe = LatheFit.Of(plan);
        rings = lathe.AddTo(plan.Rings);
        plan = plan with { Rings = rings, Verdict = Verdicts.Of(rings), Lathe = lathe };
        plan = plan with { Weighed = SpeedFigures.Weigh(plan, timber) };
        return plan with { Figures = plan.Figures.AddRange(SpeedFigures.Balance(plan)) };
    }

    private static RingPlan PlanRing(Ring ring, ImmutableArray<Ring> all, int index, Shop shop) => ring switch
    {
        WedgeDisc or SegmentRing => ClosedRing.Plan(ring, shop),
        OpenRing open => OpenSegments.Plan(open, shop),
        MixedRing mixed => MixedSegments.Plan(mixed, shop),
        StaveRing staves => Staves.Plan(staves, shop),
        LaminatedRing laminated => MotifBand.Plan(laminated, shop),
        SolidLayer layer => PlainLayer.Plan(layer, Beside(all, index), shop),
        _ => throw NotPlanned(ring),
    };

    private static IEnumerable<Ring> Beside(ImmutableArray<Ring> all, int index) => all.Where((_, i) => Math.Abs(i - index) == 1);

    private static BadInputException NotPlanned(Ring ring) => new($"ring {ring.Name}, construction", "this version does not plan it", "one of the constructions in docs/schema is needed");
}
