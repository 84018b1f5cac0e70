using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns.Combinators;

/// <summary>A pattern seen in an upright mirror through the axis and the middle of the first segment: what went counter-clockwise goes clockwise.</summary>
/// <param name="Inner">The pattern.</param>
public sealed record Reversed(Pattern Inner) : PatternOf(Inner)
{
    /// <inheritdoc/>
    public override string Describe() => Also("mirrored left to right");

    // On a ring that is turned, the segment whose middle lies nearest to the mirrored place; twice gives back the same for any turn.
    internal override string WoodAt(Cell cell) => Inner.WoodAt(cell.At(-cell.Segment - Whole.Nearest(2 * cell.On.ShiftSegments)));
}

/// <summary>A pattern turned over: its row for the top ring at the bottom.</summary>
/// <param name="Inner">The pattern.</param>
public sealed record UpsideDown(Pattern Inner) : PatternOf(Inner)
{
    /// <inheritdoc/>
    public override string Describe() => Also("mirrored top to bottom");

    internal override string WoodAt(Cell cell) => Inner.WoodAt(cell.AtRow(cell.Rows - 1 - cell.Row));
}

/// <summary>
/// The first part of a pattern, then its mirror image, and so on around: twice as many parts as <paramref name="Times"/>,
/// the first mirror in the middle of the first segment.
/// </summary>
/// <param name="Inner">The pattern.</param>
/// <param name="Times">How many pairs of part and mirror image go around.</param>
public sealed record Mirrored(Pattern Inner, int Times) : PatternOf(Inner)
{
    /// <inheritdoc/>
    public override string Describe() => Also($"its first part and the mirror image of it, {PatternWords.Count(Times, "time")} around");

    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => []; // a mirror always meets itself

    internal override string WoodAt(Cell cell)
    {
        double part = cell.Turn * Times;
        double within = Math.Abs(part - Whole.Nearest(part)); // 0 at the first mirror to 0.5 at the next
        return Inner.WoodAt(cell.AtTurn(within / Times));
    }

    internal override void Check(Lattice lattice)
    {
        base.Check(lattice);
        Require.Count("mirrored pattern, times", Times, 1, lattice.Rings.Min(r => r.Segments));
    }
}
