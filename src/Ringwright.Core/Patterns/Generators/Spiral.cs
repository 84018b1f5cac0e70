using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns.Generators;

/// <summary>
/// A sequence around that moves on from ring to ring. Where a ring really stands counts: with a step of half a segment on
/// brick-laid rings the spiral runs on without a jog.
/// </summary>
/// <param name="Woods">The sequence, counter-clockwise.</param>
/// <param name="Step">Columns it moves counter-clockwise with each ring; negative moves clockwise.</param>
/// <param name="Columns">Columns around on which step and sequence are counted; absent: the largest count of the piece.</param>
public sealed record Spiral(ImmutableArray<string> Woods, double Step, int? Columns = null) : Pattern
{
    /// <summary>A spiral whose step is an angle per ring, in degrees, on <paramref name="columns"/> columns around.</summary>
    public static Spiral ByDegrees(ImmutableArray<string> woods, double degrees, int columns) => new(woods, degrees / 360 * columns, columns);

    /// <inheritdoc/>
    public override string Describe()
    {
        string angle = Columns is { } c ? string.Create(CultureInfo.InvariantCulture, $" ({Math.Abs(Step) / c * 360:0.###}°)") : "";
        string way = Step < 0 ? "clockwise" : "counter-clockwise";
        return $"A spiral of {PatternWords.List(Woods)}, each ring {PatternWords.Count(Math.Abs(Step), "segment")}{angle} further {way}{PatternWords.Columns(Columns)}.";
    }

    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => PatternWords.Doubts(lattice, Columns, Woods.Length, "rounds of the sequence");

    internal override string WoodAt(Cell cell)
    {
        double along = cell.Position(Columns ?? cell.Columns) - (Step * cell.Row);
        return Woods[Whole.Modulo(Whole.Nearest(along), Woods.Length)];
    }

    internal override void Check(Lattice lattice)
    {
        PatternWords.CheckWoods("spiral", Woods);
        PatternWords.CheckColumns("spiral", Columns);
        double around = Columns ?? lattice.MostSegments;
        Require.Between("spiral, step", Step, -around, around, "segments");
    }
}
