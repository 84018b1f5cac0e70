using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Boards;

/// <summary>What a plan needs from the boards.</summary>
public static class StripDemands
{
    /// <summary>
    /// Every ring's pieces by wood, from the bottom ring up. Rings out of one flat board need the wedges of that board; a laminated
    /// ring needs its strips; a stave needs the rectangle it is sawn from. Veneers come from no board and are left out.
    /// </summary>
    public static ImmutableArray<StripDemand> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Rings.SelectMany(ring => Of(ring, plan.Shop))];
    }

    private static IEnumerable<StripDemand> Of(RingPlan plan, Shop shop)
    {
        if (plan.Lamination is Lamination lamination) return Strips(plan, lamination, shop);
        if (plan.Stave is StaveGeometry stave) return Staves(plan, stave, shop);
        if (plan.Ring is SolidLayer layer) return layer.IsVeneer ? [] : [Layer(plan, layer, shop)];
        return Wedges(plan).Concat(Spacers(plan, shop));
    }

    private static IEnumerable<StripDemand> Wedges(RingPlan plan) => plan.Woods.Select(need =>
    {
        StripLayout strip = plan.Batches[need.Batch].Strip;
        // Half the slant lies before the first wedge, half behind the last.
        double start = strip.Overhead - strip.EndTrim - strip.HoldingLength;
        return new StripDemand(plan.Ring.Name, need.Wood, StripPiece.Wedge, plan["board-thickness"].Value, strip.Wedge.Depth, need.Needed, need.ToSaw, start, strip.Pitch) { MeanLength = (strip.Wedge.RimEdge + strip.Wedge.Tip) / 2 };
    });

    private static IEnumerable<StripDemand> Spacers(RingPlan plan, Shop shop) => plan.Spacers.Select(s =>
        Crosscut(plan, s.Wood, StripPiece.Spacer, (s.Thickness, s.Height, s.Length), s.Need.Needed, s.Need.ToSaw, shop));

    private static IEnumerable<StripDemand> Strips(RingPlan plan, Lamination lamination, Shop shop) => lamination.Kinds.Select(kind =>
        Crosscut(plan, kind.Wood, StripPiece.LaminationStrip, (kind.Thickness, plan["strip-width"].Value, kind.Height), kind.Count, kind.Count, shop));

    // Head to tail in a wide board they take less; a rectangle each is what any strip can give.
    private static IEnumerable<StripDemand> Staves(RingPlan plan, StaveGeometry glued, Shop shop)
    {
        StaveGeometry sawn = glued.BeforeSanding(shop.Sanding.PerFace.Millimetres);
        double width = sawn.Width(sawn.OuterApothem(sawn.WideEnd)), length = sawn.Length + (sawn.Thickness * Math.Tan(Math.Abs(sawn.Lean)));
        return plan.Woods.Select(need => Crosscut(plan, need.Wood, StripPiece.StaveBlank, (sawn.Thickness, width, length), need.Needed, need.ToSaw, shop));
    }

    // More than one board beside each other when the shop's are too narrow, as the plan of the layer says.
    // The last blank is long enough to be held by itself, so its strip needs no rest.
    private static StripDemand Layer(RingPlan plan, SolidLayer layer, Shop shop)
    {
        int across = plan.Find("boards-across") is Figure boards ? (int)boards.Value : 1;
        double round = plan["board-width"].Value;
        return Crosscut(plan, layer.Wood, StripPiece.LayerBlank, (plan["board-thickness"].Value, round / across, round), across, across, shop) with { Start = -shop.Saw.HoldingLength.Millimetres };
    }

    private static StripDemand Crosscut(RingPlan plan, string wood, StripPiece piece, (double Thickness, double Width, double Length) size, int needed, int toSaw, Shop shop) =>
        new(plan.Ring.Name, wood, piece, size.Thickness, size.Width, needed, toSaw, 0, size.Length + shop.Saw.Kerf.Millimetres) { MeanLength = size.Length };
}
