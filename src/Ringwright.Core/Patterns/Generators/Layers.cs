using System.Collections.Immutable;

namespace Ringwright.Core.Patterns.Generators;

/// <summary>Each ring of one wood, in a sequence upwards.</summary>
/// <param name="Woods">The sequence, from the bottom up, repeated.</param>
public sealed record Layers(ImmutableArray<string> Woods) : Pattern
{
    /// <inheritdoc/>
    public override string Describe() => Woods.Length == 1 ? $"All of {Woods[0]}." : $"Rings of {PatternWords.List(Woods)} in turn, from the bottom up.";

    internal override string WoodAt(Cell cell) => Woods[Whole.Modulo(cell.Row, Woods.Length)];

    internal override void Check(Lattice lattice) => PatternWords.CheckWoods("layers", Woods);
}
