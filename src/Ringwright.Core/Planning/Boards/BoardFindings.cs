using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What the maker should know about a ring sawn out of a board.</summary>
internal static class BoardFindings
{
    // Common practice, no source: less than 1/8 in of glue surface does not hold a thin wall on the lathe.
    private const double LeastGlue = 3.2;
    private const double Coarse = Math.PI / 180 / 4; // how well a table's own scale is read, rad; common practice, no source

    public static IEnumerable<Finding> Of(BoardGroupPlan board, SawnBoardRing ring, StackedFaces? joint, FigureBook book)
    {
        string name = ring.Ring.Name;
        if (joint is not null)
            foreach (Finding finding in Joint(ring.Ring, joint)) yield return finding;
        if (book["tilt-within"].Value is double within && within < Coarse && ring.Inside.Tilt > 0)
            yield return new(Weight.Doubt, name, Sentence.Of("The cut inside it has no more than {0} to spare either way: set the tilt with a sine bar or a gauge, and try it on scrap.", Measured.Angle(within)));
        if (!ring.WideUp && !Mirrors(ring.Ring))
            yield return new(Weight.Note, name, Sentence.Of("Its wide face is down, so it is turned over and its woods run the other way round."));
        if (ring.Ring == board.Carrier)
            foreach (Finding finding in Whole(board, book)) yield return finding;
    }

    private static IEnumerable<Finding> Joint(BoardRing ring, StackedFaces joint)
    {
        string below = Sentence.Escape(joint.Below.Name);
        double least = Math.Min(joint.AsSawn, joint.AsTurned);
        if (least <= 0)
            yield return new(Weight.Stop, ring.Name, Sentence.Of($"It does not rest on {below}: the inside of one is wider than the outside of the other."));
        else if (least < LeastGlue)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of($"Only {{0}} of it rest on {below} when turned: less than {{1}} hardly holds on the lathe.", Measured.Length(least), Measured.Length(LeastGlue)));
        double apart = Math.Abs(ring.Shift - joint.Below.Shift) % 1;
        if (ring.Segments == joint.Below.Segments && Math.Min(apart, 1 - apart) < 0.05)
            yield return new(Weight.Doubt, ring.Name, Sentence.Of($"Its joints stand above those of {below}: a shift of half a segment, 0.5, lays them like bricks."));
    }

    private static IEnumerable<Finding> Whole(BoardGroupPlan board, FigureBook book)
    {
        int tilts = board.Tilts.Count();
        string disc = Sentence.Escape(board.Name);
        yield return new(Weight.Note, board.Carrier.Name, Sentence.Of(
            tilts == 1 ? $"{{0}} rings come out of {disc}, all cuts at {{1}}." : $"{{0}} rings come out of {disc}; one tilt does not suit all, {{2}} are the fewest.",
            Measured.Count(board.Rings.Length), Measured.Angle(board.Rings[0].Inside.Tilt), Measured.Count(tilts)));
        yield return new(Weight.Note, board.Carrier.Name, Sentence.Of("A disc {0} wide at one face and {1} at the other is left in the middle.", Measured.Length(2 * board.Middle.Wide), Measured.Length(2 * board.Middle.Narrow)));
        double bite = book["hole-bite"].Value, allowance = book.Known("q");
        if (bite > allowance)
            yield return new(Weight.Doubt, board.Carrier.Name, Sentence.Of("The start hole takes {0} from the rings on both sides, and {1} are left for turning: use a narrower blade, or leave more.", Measured.Length(bite), Measured.Length(allowance)));
    }

    // Whether the woods read the same both ways from the first segment.
    private static bool Mirrors(BoardRing ring) => Enumerable.Range(0, ring.Segments)
        .All(i => string.Equals(ring.WoodOf(i), ring.WoodOf((ring.Segments - i) % ring.Segments), StringComparison.OrdinalIgnoreCase));
}
