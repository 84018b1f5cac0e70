using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What to do for a mixed ring, in order: one batch of wedges after the other, then the spacers, then the dry ring.</summary>
internal static class MixedSteps
{
    public static IEnumerable<Sentence> Of(MixedRing ring, MixedCourse course, ImmutableArray<WedgeBatch> batches, ImmutableArray<SpacerBatch> spacers, Shop shop, FigureBook book)
    {
        foreach (Sentence step in CutSteps.Milling(book)) yield return step;
        for (int b = 0; b < batches.Length; b++)
        {
            if (batches.Length > 1)
            {
                yield return Sentence.Of($"Wedge {b + 1}, {{0}} of them in the ring, {{1}} each:", Measured.Count(batches[b].Places.Length), Measured.Angle(batches[b].Glued.WedgeAngle));
                book.Begin(b, "");
            }

            foreach (Sentence step in CutSteps.Settings(shop, book)) yield return step;
            if (b > 0) yield return Sentence.Of("Make a new first cut at this angle, and saw these wedges like the ones before.");
            else foreach (Sentence step in CutSteps.FirstCut().Concat(CutSteps.Sawing(shop))) yield return step;
        }

        book.BeginWhole();
        foreach (Sentence step in CutSteps.Ending(shop).Concat(spacers.Select(Spacer))) yield return step;
        yield return Dry(ring, course, spacers);
    }

    private static Sentence Spacer(SpacerBatch kind) => Sentence.Of(
        $"Plane a strip of {Sentence.Escape(kind.Wood)} to an even {{0}} for spacers, rip it to {{1}}, and cut {{2}} pieces {{3}} long, the grain along them.",
        Measured.Length(kind.Thickness), Measured.Length(kind.Height), Measured.Count(kind.Need.ToSaw), Measured.Length(kind.Length));

    // With an even number of repeats a half ring ends on equal stacks, and its two end faces lie in one plane.
    private static Sentence Dry(MixedRing ring, MixedCourse course, ImmutableArray<SpacerBatch> spacers)
    {
        string with = spacers.IsEmpty ? "" : " with the spacers between them";
        return ring.Repeats % 2 == 0
            ? Sentence.Of($"Lay half the ring dry, {{0}} wedges{with}, none at its ends, against a straightedge: both end faces must touch it.", Measured.Count(course.Wedges.Length / 2))
            : Sentence.Of($"Lay the whole ring dry in its order, {{0}} wedges{with}, and draw a band around it before you glue.", Measured.Count(course.Wedges.Length));
    }
}
