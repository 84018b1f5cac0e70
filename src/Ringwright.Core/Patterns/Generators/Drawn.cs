using System.Collections.Immutable;

namespace Ringwright.Core.Patterns.Generators;

/// <summary>
/// A pattern given wood by wood: drawn by hand, read from a file, or reduced from a picture. A ring whose count is not that
/// of its row is filled by angle; above the last row the rows come again.
/// </summary>
/// <param name="Rows">Per ring from the bottom up, per segment counter-clockwise.</param>
public sealed record Drawn(ImmutableArray<ImmutableArray<string>> Rows) : Pattern
{
    /// <inheritdoc/>
    public override string Describe() => $"Drawn segment by segment: {PatternWords.Count(Rows.Length, "ring")}, {PatternWords.Count(Rows.Sum(r => r.Length), "segment")}.";

    internal override string WoodAt(Cell cell)
    {
        ImmutableArray<string> row = Rows[Whole.Modulo(cell.Row, Rows.Length)];
        return row[Sequence.Column(cell, row.Length == cell.On.Segments ? null : row.Length)];
    }

    internal override void Check(Lattice lattice)
    {
        if (Rows.IsDefaultOrEmpty) throw new BadInputException("drawn pattern", "it has no row", "give one for each ring");
        for (int r = 0; r < Rows.Length; r++) PatternWords.CheckWoods($"drawn pattern, row {r + 1}", Rows[r]);
        if (Rows.Length > lattice.Rings.Length)
            throw new BadInputException($"drawn pattern, row {lattice.Rings.Length + 1}", $"there are {Rows.Length} rows for {lattice.Rings.Length} rings", "take rows away or add rings");
    }
}
