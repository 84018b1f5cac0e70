using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Bench;

/// <summary>One state of the work: the fields as typed, the plan of the last values that could be used, and what is wrong since. Immutable.</summary>
/// <param name="Draft">The fields.</param>
/// <param name="Good">The plan of the last good values; of these very fields when nothing is wrong.</param>
/// <param name="Problems">What is wrong with the fields.</param>
public sealed record Sheet(Draft Draft, Plan Good, ImmutableArray<FieldProblem> Problems)
{
    /// <summary>A fresh sheet for a piece made in a shop.</summary>
    /// <exception cref="BadInputException">It cannot be planned.</exception>
    public static Sheet Of(Piece piece, Shop shop, UnitChoice? units = null) => new(Draft.Of(piece, shop, units), Planner.Plan(piece, shop), []);

    /// <summary>How lengths are printed.</summary>
    public MeasureStyle Style => Draft.Units.Style();

    /// <summary>The plan of the ring that is shown.</summary>
    public RingPlan Ring => Good.Rings[Draft.Selected];

    /// <summary>Whether plan and picture are of the fields as they stand.</summary>
    public bool IsCurrent => Problems.IsEmpty;

    /// <summary>The sheet with other fields: planned anew, or with the plan as it was and the reasons why not.</summary>
    public Sheet With(Draft draft)
    {
        var reader = new DraftReader(draft);
        Piece piece = reader.Piece(Good.Piece);
        Shop shop = reader.Shop(Good.Shop);
        if (!reader.Problems.IsEmpty) return new(draft, Good, reader.Problems);
        try
        {
            return new(draft, Planner.Plan(piece, shop), []);
        }
        catch (BadInputException e)
        {
            return new(draft, Good, [Refusals.Problem(e, piece)]);
        }
    }
}
