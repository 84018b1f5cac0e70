using System.Collections.Immutable;

namespace Ringwright.Core.Patterns.Generators;

/// <summary>A sequence of woods around every ring.</summary>
/// <param name="Woods">The sequence, counter-clockwise.</param>
/// <param name="Columns">
/// Columns around on which the sequence is counted, filled by angle, so that woods stand above each other on rings of
/// different counts; absent: each ring counts its own segments from its first.
/// </param>
public sealed record Repeat(ImmutableArray<string> Woods, int? Columns = null) : Pattern
{
    /// <inheritdoc/>
    public override string Describe() => $"{PatternWords.List(Woods)} in turn around each ring{PatternWords.Columns(Columns)}.";

    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => Sequence.Doubts(lattice, Columns, Woods.Length);

    internal override string WoodAt(Cell cell) => Woods[Sequence.Column(cell, Columns) % Woods.Length];

    internal override void Check(Lattice lattice)
    {
        PatternWords.CheckWoods("repeat", Woods);
        PatternWords.CheckColumns("repeat", Columns);
    }
}
