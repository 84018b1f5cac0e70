using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>
/// Plans the rings that are sawn out of flat boards. A board's wedges are planned once, as a closed disc, with its largest ring;
/// the other rings name that one.
/// </summary>
internal static class BoardRings
{
    /// <summary>The plans of all board rings of a piece by their names.</summary>
    /// <param name="all">The rings of the piece from the bottom up, their sizes known.</param>
    /// <param name="shop">The shop.</param>
    /// <exception cref="BadInputException">Rings cannot come from one board.</exception>
    public static IReadOnlyDictionary<string, RingPlan> Plan(ImmutableArray<Ring> all, Shop shop)
    {
        int[] places = [.. Enumerable.Range(0, all.Length).Where(i => all[i] is BoardRing)];
        Dictionary<string, BoardGroupPlan> boards = places.GroupBy(i => ((BoardRing)all[i]).Board, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(g => g.Key, g => BoardGroupPlan.Of(all, g, shop), StringComparer.OrdinalIgnoreCase);
        Dictionary<string, RingPlan> discs = boards.ToDictionary(b => b.Key, b => ClosedRing.Plan(Disc(b.Value.Carrier), shop), StringComparer.OrdinalIgnoreCase);
        return places.ToDictionary(i => all[i].Name, i => One(all, i, boards, discs[((BoardRing)all[i]).Board], shop), StringComparer.OrdinalIgnoreCase);
    }

    private static WedgeDisc Disc(BoardRing largest) => new()
    {
        Name = largest.Name,
        Segments = largest.Segments,
        Diameter = largest.Diameter,
        Thickness = largest.Thickness,
        Allowance = largest.Allowance,
        Woods = largest.Woods,
    };

    private static RingPlan One(ImmutableArray<Ring> all, int index, Dictionary<string, BoardGroupPlan> boards, RingPlan disc, Shop shop)
    {
        var ring = (BoardRing)all[index];
        BoardGroupPlan board = boards[ring.Board];
        SawnBoardRing sawn = board[ring.Name];
        var book = new FigureBook();
        BoardFigures.Add(board, board.Rings.IndexOf(sawn), shop, book);
        StackedFaces? joint = StackedFaces.Of(all, index, boards);
        joint?.Add(ring, board, boards[joint.Below.Board], book);
        Finding[] findings = [.. BoardFindings.Of(board, sawn, joint, book)];
        ImmutableArray<LaidSegment> laid = BoardLayout.Of(sawn, disc);
        RingPlan own = ring == board.Carrier
            ? disc with { Ring = ring, Layout = laid, Figures = [.. disc.Figures, .. book.Figures], Steps = [.. disc.Steps, .. BoardSteps.Of(board, book)], Findings = Sorted([.. disc.Findings, .. findings]) }
            : new(ring, [], [], laid, book.Figures, [.. BoardSteps.One(board, sawn)], Sorted(findings));
        return own with { Board = board };
    }

    private static ImmutableArray<Finding> Sorted(IEnumerable<Finding> findings) => [.. findings.OrderByDescending(f => f.Weight)];
}
