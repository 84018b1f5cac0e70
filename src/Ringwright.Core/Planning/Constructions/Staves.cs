using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>Plans rings of staves, upright or leaning.</summary>
internal static class Staves
{
    public static RingPlan Plan(StaveRing ring, Shop shop)
    {
        var book = new FigureBook();
        StaveGeometry glued = StaveSizes.Glued(ring, shop, book);
        StaveGeometry sawn = glued.BeforeSanding(shop.Sanding.PerFace.Millimetres);
        StaveBoard board = StaveBoard.Of(sawn, shop);
        StaveSizes.Add(glued, ring, shop, book);
        StaveSettings.Add(glued, sawn, shop, book);
        ImmutableArray<WoodNeed> woods = StaveWoods.Add(board, ring, shop, book);
        ClosingBudget budget = StaveClosing.Add(glued, ring, shop, book);
        ImmutableArray<Finding> findings = [.. Findings(ring, glued, budget, shop, book).OrderByDescending(f => f.Weight)];
        return new(ring, [new(FromAbove(ring, book), board.Across, [.. Enumerable.Range(0, ring.Around)])], woods, Layout(ring, glued, board, book),
            book.Figures, [.. StaveSteps.Of(glued, ring, shop, book)], findings)
        { Stave = glued };
    }

    // What a look along the axis shows: outside at the wider end, the opening at the narrower one.
    private static WedgeGeometry FromAbove(StaveRing ring, FigureBook book) =>
        new(ring.Segments, book["across-flats"].Value / 2, book.Known("Ai"));

    private static ImmutableArray<LaidSegment> Layout(StaveRing ring, StaveGeometry glued, StaveBoard board, FigureBook book)
    {
        int columns = (int)book["staves-across"].Value, perBoard = (int)book["wedges-per-board"].Value;
        var counts = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        var laid = ImmutableArray.CreateBuilder<LaidSegment>(ring.Around);
        for (int i = 0; i < ring.Around; i++)
        {
            string wood = ring.WoodOf(i);
            int taken = counts.GetValueOrDefault(wood), cut = taken % perBoard;
            counts[wood] = taken + 1;
            double middle = (i + ring.Shift) * 2 * glued.HalfAngle;
            laid.Add(new(new JointPlane(middle - glued.HalfAngle), new JointPlane(middle + glued.HalfAngle), wood, taken / perBoard, cut,
                board.Frame(glued, cut / columns, cut % columns, middle)));
        }

        return laid.MoveToImmutable();
    }

    private static IEnumerable<Finding> Findings(StaveRing ring, StaveGeometry glued, ClosingBudget budget, Shop shop, FigureBook book)
    {
        foreach (Finding finding in Planning.Findings.Pattern(ring).Concat(Planning.Findings.Closing(ring, FromAbove(ring, book).OuterCorner, budget))) yield return finding;
        double least = Math.Min(book["tip"].Value, glued.Width(glued.InnerApothem(glued.NarrowEnd)));
        if (least < shop.Wanted.LeastRimEdge.Millimetres)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of("The narrower end is only {0} wide on its inside, less than the {1} these hands hold and sand: use fewer staves.", Measured.Length(least), Measured.Length(shop.Wanted.LeastRimEdge.Millimetres)));
        if (book["narrow-outside"].Value <= ring.InnerDiameter!.Value.Millimetres)
            yield return new(Weight.Stop, ring.Name, Sentence.Of("Turned with the lean of the staves no wall is left: {0} outside at the narrower end, {1} inside. Lean them less, or make the wider end wider.", book["narrow-outside"].Measured, Measured.Length(ring.InnerDiameter.Value.Millimetres)));
        if (!glued.IsUpright)
            yield return new(Weight.Note, ring.Name, Sentence.Of("The wall is taken to lean with the staves: {0} outside at the wider end and at most {1} at the narrower one. A wall that bulges needs thicker boards.",
                Measured.Length(ring.Outside.Millimetres), book["narrow-outside"].Measured));
        if (shop.Boards.Width is null)
            yield return new(Weight.Note, ring.Name, Sentence.Of("The shop does not say how wide its boards are: {0} is taken.", Measured.Length(book.Known("Wb"))));
        foreach (Finding finding in Planning.Findings.SpareNotes(ring, shop, book)) yield return finding;
    }
}
