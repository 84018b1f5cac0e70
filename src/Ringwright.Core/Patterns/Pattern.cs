using System.Collections.Immutable;

namespace Ringwright.Core.Patterns;

/// <summary>
/// Which wood goes where, defined by numbers and independent of the piece: laid on a piece's <see cref="Lattice"/> it gives
/// each segment its wood. Patterns that count columns around use the columns they are given or, when they are given none,
/// those of the ring with most segments; a ring with another count, or turned by part of a segment, is filled by angle:
/// each segment asks at its middle.
/// </summary>
public abstract record Pattern
{
    /// <summary>The pattern in one sentence.</summary>
    public abstract string Describe();

    /// <summary>The wood of every segment: per ring from the bottom up, per segment counter-clockwise.</summary>
    /// <exception cref="BadInputException">The pattern's numbers do not make sense, or not on this piece.</exception>
    public ImmutableArray<ImmutableArray<string>> On(Lattice lattice)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        Check(lattice);
        return [.. Enumerable.Range(0, lattice.Rings.Length).Select(r => Row(lattice, r))];
    }

    /// <summary>What will look broken although it can be made, one sentence each: a sequence that jumps where it meets its start.</summary>
    public virtual IEnumerable<string> Doubts(Lattice lattice) => [];

    /// <summary>The wood at one place.</summary>
    internal abstract string WoodAt(Cell cell);

    /// <summary>Refuses numbers that make no pattern on this piece.</summary>
    internal abstract void Check(Lattice lattice);

    private ImmutableArray<string> Row(Lattice lattice, int ring) =>
        [.. Enumerable.Range(0, lattice.Rings[ring].Segments).Select(k => WoodAt(new Cell(lattice, ring, k)))];
}
