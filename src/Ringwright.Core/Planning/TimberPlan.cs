using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>Adds to planned rings what their wood will do: figures, and findings with what helps.</summary>
internal sealed class TimberPlan(Shop shop)
{
    public SpeciesTable Species { get; } = SpeciesTable.For(shop);

    public MoistureRange Range { get; } = MoistureRange.Of(shop.Climate);

    public Length Allowance { get; } = shop.Wanted.Allowance;

    public Climate Climate { get; } = shop.Climate;

    public GlueJoint Joint { get; } = shop.Joint;

    /// <summary>The rings with what their wood will do.</summary>
    public ImmutableArray<RingPlan> Add(ImmutableArray<RingPlan> rings)
    {
        var result = ImmutableArray.CreateBuilder<RingPlan>(rings.Length);
        for (int i = 0; i < rings.Length; i++) result.Add(With(rings, i));
        return result.MoveToImmutable();
    }

    /// <summary>The woods of a ring, each once.</summary>
    public Species[] WoodsOf(Ring ring) => [.. ring.Cycle.Distinct(StringComparer.OrdinalIgnoreCase).Select(Species.FindOrAssume)];

    /// <summary>The ring as turned, or null when it is not one closed ring of segments.</summary>
    public static RingBody? BodyOf(RingPlan plan)
    {
        if (plan.Ring is SolidLayer or OpenRing) return null;
        double outer = plan.Ring.Outside.Millimetres / 2;
        double inner = plan.Ring switch
        {
            WedgeDisc { Bore.Millimetres: double bore } => bore / 2,
            IHollowRing { InnerDiameter.Millimetres: double inside } => inside / 2,
            _ => plan.Batches.IsEmpty ? 0 : Math.Max(0, plan.Glued.InnerApothem),
        };
        return inner < outer ? new(plan.Ring.Around, outer, inner, plan.Ring is StaveRing ? SegmentGrain.Upright : SegmentGrain.Around) : null;
    }

    private RingPlan With(ImmutableArray<RingPlan> rings, int i)
    {
        RingPlan plan = rings[i];
        Species[] woods = WoodsOf(plan.Ring);
        ImmutableArray<Figure> figures = plan.Figures;
        List<Finding> findings = [.. woods.Where(w => !w.IsKnown).Select(w => MovementFindings.NotKnown(plan, w))];
        if (BodyOf(plan) is RingBody body)
        {
            MovementVerdict verdict = MovementVerdict.Of(body, woods, Range, Joint);
            figures = figures.AddRange(MovementFigures.Of(plan, verdict));
            if (MovementFindings.Of(plan, verdict) is Finding finding) findings.Add(finding);
        }

        if (plan.Ring is SolidLayer layer && LayerOn(rings, i, layer) is LayerVerdict solid && MovementFindings.Of(plan, solid) is Finding stiff) findings.Add(stiff);
        if (findings.Count == 0) return plan with { Figures = figures };
        return plan with { Figures = figures, Findings = [.. plan.Findings.Concat(findings).OrderByDescending(f => f.Weight)] };
    }

    // A veneer gives way; on another solid layer it moves with it when their grain is laid alike.
    private LayerVerdict? LayerOn(ImmutableArray<RingPlan> rings, int i, SolidLayer layer)
    {
        if (layer.Thickness.Millimetres < LayerVerdict.Veneer) return null;
        RingPlan? beside = new[] { i + 1, i - 1 }.Where(j => j >= 0 && j < rings.Length).Select(j => rings[j]).FirstOrDefault(r => r.Ring is not (SolidLayer or OpenRing or StaveRing));
        return beside is null ? null : LayerVerdict.Of(WoodsOf(layer)[0], layer.Outside.Millimetres, layer.Thickness.Millimetres, beside.Ring.Around, Range, Joint);
    }
}
