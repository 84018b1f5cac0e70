namespace Ringwright.Core.Patterns;

/// <summary>
/// The place a pattern is asked about: a segment of a real ring, and the row of the pattern that is wanted there. The two
/// differ where a pattern is moved up or turned over.
/// </summary>
internal readonly record struct Cell
{
    /// <summary>A segment's own place.</summary>
    /// <param name="lattice">The piece's cells.</param>
    /// <param name="ring">Ring from 0 at the bottom.</param>
    /// <param name="segment">Segment from 0, counter-clockwise; any whole number.</param>
    public Cell(Lattice lattice, int ring, int segment)
    {
        Rows = lattice.Rings.Length;
        Columns = lattice.MostSegments;
        On = lattice.Rings[ring];
        Row = ring;
        Segment = Whole.Modulo(segment, On.Segments);
    }

    /// <summary>Number of rows the pattern has to itself: rings of the piece, or of a band.</summary>
    public int Rows { get; private init; }

    /// <summary>Segments of the piece's ring that has most: the columns of a pattern that is given none.</summary>
    public int Columns { get; private init; }

    /// <summary>The ring it is in.</summary>
    public LatticeRing On { get; private init; }

    /// <summary>Row of the pattern, from 0 at its bottom; may lie outside the piece.</summary>
    public int Row { get; private init; }

    /// <summary>Segment, 0 to N − 1.</summary>
    public int Segment { get; private init; }

    /// <summary>Angle of the segment's middle, in turns.</summary>
    public double Turn => (Segment + On.ShiftSegments) / On.Segments;

    /// <summary>
    /// The middle of the segment, counted in equal columns around the piece of which the first has its middle at the
    /// angle 0: from −0.5 up to <paramref name="columns"/> − 0.5.
    /// </summary>
    public double Position(int columns)
    {
        double position = Turn * columns;
        return position - (columns * Whole.Floor((position + 0.5) / columns));
    }

    /// <summary>The same row in another segment of the ring.</summary>
    public Cell At(int segment) => this with { Segment = Whole.Modulo(segment, On.Segments) };

    /// <summary>The segment of the ring whose wood stands at an angle, in turns; a joint belongs to the segment after it.</summary>
    public Cell AtTurn(double turn) => At(Whole.Nearest((turn * On.Segments) - On.ShiftSegments));

    /// <summary>The same segment asked about another row.</summary>
    public Cell AtRow(int row) => this with { Row = row };

    /// <summary>The same segment as part of a band of <paramref name="rows"/> rows that begins at <paramref name="first"/>.</summary>
    public Cell InBand(int first, int rows) => this with { Row = Row - first, Rows = rows };
}
