using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns.Generators;

/// <summary>Two woods in a chequerboard of fields.</summary>
/// <param name="First">Wood of the field at the bottom, at the first segment.</param>
/// <param name="Second">The other wood.</param>
/// <param name="Wide">Width of a field, columns.</param>
/// <param name="High">Height of a field, rings.</param>
/// <param name="Columns">Columns around, filled by angle; absent: each ring counts its own segments.</param>
public sealed record Checker(string First, string Second, int Wide = 1, int High = 1, int? Columns = null) : Pattern
{
    /// <inheritdoc/>
    public override string Describe() =>
        $"A chequerboard of {First} and {Second}, fields {PatternWords.Count(Wide, "segment")} wide and {PatternWords.Count(High, "ring")} high{PatternWords.Columns(Columns)}.";

    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => Sequence.Doubts(lattice, Columns, 2 * Wide);

    internal override string WoodAt(Cell cell)
    {
        int field = (Sequence.Column(cell, Columns) / Wide) + Whole.Floor((double)cell.Row / High);
        return Whole.Modulo(field, 2) == 0 ? First : Second;
    }

    internal override void Check(Lattice lattice)
    {
        PatternWords.CheckWoods("checker", [First, Second]);
        PatternWords.CheckColumns("checker", Columns);
        Require.Count("checker, width", Wide, 1, Columns ?? lattice.MostSegments);
        Require.Count("checker, height", High, 1, lattice.Rings.Length);
    }
}
