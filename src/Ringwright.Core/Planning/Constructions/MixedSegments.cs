using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>Plans closed rings of unequal segments with spacers of even thickness between them.</summary>
internal static class MixedSegments
{
    public static RingPlan Plan(MixedRing ring, Shop shop)
    {
        var book = new FigureBook();
        var course = MixedCourse.Of(ring);
        (double inner, double outer) = Flats(ring, course, shop, book);
        MixedFigures.AddRing(ring, course, inner, outer, shop, book);
        ImmutableArray<ImmutableArray<CourseWedge>> alike = course.Alike();
        ImmutableArray<MixedSpacers.Kind> kinds = MixedSpacers.Kinds(course, inner, outer);
        int piles = alike.Sum(b => b.Select(w => w.Wood).Distinct(StringComparer.OrdinalIgnoreCase).Count()) + kinds.Length;
        ImmutableArray<WedgeBatch> batches = [.. alike.Select(wedges => Batch(ring, wedges, inner, outer, shop))];
        ImmutableArray<WoodNeed> woods = [.. batches.SelectMany((batch, b) => MixedFigures.AddBatch(ring, alike[b], batch, (b, batches.Length), piles, shop, book))];
        ImmutableArray<SpacerBatch> spacers = [.. kinds.Select((kind, k) => MixedSpacers.Add(ring, kind, k, kinds.Length, piles, shop, book))];
        ClosingBudget budget = Closing(batches, woods, shop, book);
        ImmutableArray<Finding> findings = [.. MixedFindings.Of(ring, course, batches, spacers, budget, shop, book).OrderByDescending(f => f.Weight)];
        return new(ring, batches, woods, MixedLayout.Of(course, batches, woods, spacers, shop), book.Figures, [.. MixedSteps.Of(ring, course, batches, spacers, shop, book)], findings)
        {
            Spacers = spacers,
        };
    }

    // One width of strip for all segments: the narrowest hole that any of them leaves decides.
    private static (double Inner, double Outer) Flats(MixedRing ring, MixedCourse course, Shop shop, FigureBook book)
    {
        book.Know("N", "segments around the ring", ring.Around, Quantity.Count);
        book.Know("D", "diameter to be turned", ring.Outside.Millimetres, Quantity.Length);
        double allowance = book.Know("q", "wood left on the radius for turning", (ring.Allowance ?? shop.Wanted.Allowance).Millimetres, Quantity.Length);
        double outer = book.Know("Ao", "distance from the axis to the outer flats as glued", (ring.Outside.Millimetres / 2) + allowance, Quantity.Length);
        double radius = book.Know("ρ", "radius within which all inner corners lie", SizeFigures.InnerRadius(ring, allowance, outer, book), Quantity.Length);
        foreach (CourseWedge wedge in course.Wedges) CheckSpacers(ring, wedge, allowance, radius);
        double inner = book.Know("Ai", "distance from the axis to the inner flats as glued", course.Wedges.Min(w => w.InnerFlat(radius)), Quantity.Length);
        return inner < outer ? (inner, outer) : throw new BadInputException($"ring {ring.Name}, innerDiameter", "no wall is left", "a smaller inner diameter is needed");
    }

    private static void CheckSpacers(MixedRing ring, CourseWedge wedge, double allowance, double radius)
    {
        double meet = Math.Sqrt((wedge.Apex * wedge.Apex) + (wedge.Aside * wedge.Aside));
        if (meet < radius - 1e-9) return;
        double least = Math.Ceiling(20 * (meet + allowance)) / 10;
        throw new BadInputException($"ring {ring.Name}, parts, thickness", $"the spacers beside a segment of {Math.Round(2 * wedge.HalfAngle * 180 / Math.PI, 2)}° meet before they reach the inside",
            $"thinner spacers, or an inner diameter of more than {least} mm, are needed");
    }

    private static WedgeBatch Batch(MixedRing ring, ImmutableArray<CourseWedge> wedges, double inner, double outer, Shop shop)
    {
        CourseWedge first = wedges[0];
        if (inner <= first.Apex)
            throw new BadInputException($"ring {ring.Name}, parts, share", $"a segment of {Math.Round(2 * first.HalfAngle * 180 / Math.PI, 2)}° comes to a point before it reaches the inside, which the widest segment sets", "segments more alike, or thinner spacers, are needed");
        WedgeGeometry glued = new(ring.Around, outer - first.Apex, inner - first.Apex) { HalfAngle = first.HalfAngle, ApexRadius = first.Apex };
        return new(glued, ClosedRing.StripOf(glued.BeforeSanding(shop.Sanding.PerFace.Millimetres), shop), [.. wedges.Select(w => w.Place)]);
    }

    private static ClosingBudget Closing(ImmutableArray<WedgeBatch> batches, ImmutableArray<WoodNeed> woods, Shop shop, FigureBook book)
    {
        book.BeginWhole();
        ClosingBudget budget = ClosingBudget.Of(batches, woods, book["closing-limit"].Value, shop);
        book.Know("c", "how often the errors of the cuts count, all batches together", ClosingBudget.CutFactor(batches, woods, shop), Quantity.Count);
        book.Know("Q", "wedges of each angle, squared and added up", ClosingBudget.SettingFactor(batches), Quantity.Count);
        book.Know("τs", "turn of all faces together by uneven sanding", Math.Sqrt(ClosingBudget.SandingVariance(batches, shop)), Quantity.FineAngle);
        ClosingFigures.Add(budget, ClosingTerms.Batches, ClosingWords.Joints, shop, book);
        return budget;
    }
}
