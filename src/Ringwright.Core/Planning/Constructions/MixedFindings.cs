using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What the maker should know about a mixed ring.</summary>
internal static class MixedFindings
{
    public static IEnumerable<Finding> Of(MixedRing ring, MixedCourse course, ImmutableArray<WedgeBatch> batches, ImmutableArray<SpacerBatch> spacers, ClosingBudget budget, Shop shop, FigureBook book)
    {
        foreach (Finding finding in Findings.Rim(ring, batches.MinBy(b => b.Glued.RimEdge)!.Glued, shop)) yield return finding;
        foreach (Finding finding in Findings.Closing(ring, batches.Max(b => b.Glued.Reach), budget)) yield return finding;
        if (batches.Length > 1)
            yield return new(Weight.Note, ring.Name, Sentence.Of("{0} settings of fence and stop: saw every wedge of one, its spares too, before you change to the next.", Measured.Count(batches.Length)));
        if (!spacers.IsEmpty)
            foreach (Finding finding in Spacers(ring, course, batches, shop)) yield return finding;
        foreach (Finding finding in Findings.Dust(ring, batches.MaxBy(b => b.Strip.DustShare)!.Strip).Concat(Findings.SpareNotes(ring, shop, book))) yield return finding;
    }

    private static IEnumerable<Finding> Spacers(MixedRing ring, MixedCourse course, ImmutableArray<WedgeBatch> batches, Shop shop)
    {
        WedgeBatch narrowest = batches.MinBy(b => b.Glued.HalfAngle)!;
        double gap = shop.Wanted.JointGap.Millimetres;
        yield return new(Weight.Note, ring.Name, Sentence.Of("A spacer that is too thick or too thin opens no joint: it shifts the segments. If all are off by {0}, the ring grows or shrinks by up to {1} across; plane them to one thickness.",
            Measured.Fine(gap), Measured.Length(gap / Math.Sin(narrowest.Glued.HalfAngle))));
        yield return new(Weight.Note, ring.Name, Sentence.Of("The spacers' grain runs from rim to centre, the segments' around the ring: as the air changes, the segments move in depth and the spacers hardly do. Keep them thin, and the wood dry."));
        if (course.Wedges.Any(w => w.Aside != 0))
            yield return new(Weight.Note, ring.Name, Sentence.Of("Some segments have unequal spacers at their sides and stand a little beside their middle line; follow the order around the ring."));
    }
}
