namespace Ringwright.Core.Patterns.Generators;

/// <summary>Counting around for patterns that can count either a ring's own segments or given columns.</summary>
internal static class Sequence
{
    /// <summary>The column of a cell: its own number, or the given column its middle lies in.</summary>
    public static int Column(Cell cell, int? columns) => columns is { } c ? Whole.Nearest(cell.Position(c)) : cell.Segment;

    /// <summary>A sentence for each count of segments into which the sequence does not go evenly.</summary>
    public static IEnumerable<string> Doubts(Lattice lattice, int? columns, int length)
    {
        if (columns is not null) return PatternWords.Doubts(lattice, columns, length, "rounds of the sequence");
        return lattice.Rings.Select((ring, r) => (ring.Segments, Ring: r + 1)).GroupBy(x => x.Segments).Where(g => g.Key % length != 0)
            .Select(g => $"Ring {g.First().Ring}: {g.Key} segments do not divide evenly by {length} woods: where the pattern meets its start it jumps.");
    }
}
