using System.Collections.Immutable;

namespace Ringwright.Core.Patterns;

/// <summary>One ring as a pattern sees it: a row of equal cells around the piece.</summary>
/// <param name="Segments">Number of segments around, 1 (a solid layer) or 3 to 360.</param>
/// <param name="ShiftSegments">
/// How far the ring is turned counter-clockwise (seen from above) when it is stacked, in its own segments; 0.5 on every
/// other ring is brick-laid. The middle of segment k stands at the angle (k + shift) · 2π/N.
/// </param>
/// <param name="Radius">Radius of the visible surface at its middle height, mm.</param>
/// <param name="Height">Height of the ring as it is seen, mm: along the outline where that leans.</param>
public readonly record struct LatticeRing(int Segments, double ShiftSegments, double Radius, double Height)
{
    /// <summary>Visible area of one segment, mm².</summary>
    public double CellArea => 2 * Math.PI * Radius / Segments * Height;
}

/// <summary>The cells of a piece's surface: its rings from the bottom up, each with its own count and turn. Immutable.</summary>
public sealed class Lattice
{
    // Angles that should meet differ by rounding only; a share of a segment below this is not an overlap.
    private const double Tiny = 1e-9;

    /// <summary>Takes the rings from the bottom up.</summary>
    /// <exception cref="BadInputException">There is no ring, or a ring's number is out of range; rings are counted from 1.</exception>
    public Lattice(IEnumerable<LatticeRing> rings)
        : this([.. rings], 0)
    {
    }

    private Lattice(ImmutableArray<LatticeRing> rings, int leastColumns)
    {
        Rings = rings;
        if (Rings.IsEmpty) throw new BadInputException("pattern", "the piece has no ring", "give at least one");
        for (int r = 0; r < Rings.Length; r++) Check($"ring {r + 1}", Rings[r]);
        MostSegments = Math.Max(leastColumns, Rings.Max(r => r.Segments));
        Height = Rings.Sum(r => r.Height);
        MeanRadius = Rings.Sum(r => r.Radius * r.Height) / Height;
    }

    /// <summary>The rings from the bottom up.</summary>
    public ImmutableArray<LatticeRing> Rings { get; }

    /// <summary>Segments of the ring that has most.</summary>
    public int MostSegments { get; }

    /// <summary>Height of all rings together, mm.</summary>
    public double Height { get; }

    /// <summary>Mean radius of the surface, each ring weighted by its height, mm.</summary>
    public double MeanRadius { get; }

    /// <summary>
    /// The segments of a ring (0-based from the bottom) that an interval of turns around the axis meets, counter-clockwise,
    /// each with the part of a turn they share. At most one turn long.
    /// </summary>
    public IEnumerable<(int Segment, double Turns)> Meeting(int ring, double fromTurn, double toTurn)
    {
        (int n, double shift, _, _) = Rings[ring];
        double from = (fromTurn * n) - shift + 0.5, to = (toTurn * n) - shift + 0.5;
        for (double k = Math.Floor(from + Tiny); k < to - Tiny; k++)
            yield return (Whole.Modulo((int)k, n), (Math.Min(to, k + 1) - Math.Max(from, k)) / n);
    }

    /// <summary>Some of the rings, counted from 1; columns around stay those of the whole, so that a band lines up with the rest.</summary>
    internal Lattice Part(int firstRing, int lastRing) => new(Rings[(firstRing - 1)..lastRing], MostSegments);

    /// <summary>Where a segment begins and ends around the axis, in turns.</summary>
    internal (double From, double To) Span(int ring, int segment)
    {
        (int n, double shift, _, _) = Rings[ring];
        return ((segment + shift - 0.5) / n, (segment + shift + 0.5) / n);
    }

    private static void Check(string where, LatticeRing ring)
    {
        if (ring.Segments is < 1 or 2 or > 360) throw new BadInputException(where, $"{ring.Segments} segments cannot make a ring", "3 to 360 can");
        Sawing.Require.Between($"{where}, radius", ring.Radius, 1e-3, 1e5, "mm");
        Sawing.Require.Between($"{where}, height", ring.Height, 1e-3, 1e5, "mm");
        Sawing.Require.Between($"{where}, shift", ring.ShiftSegments, -360, 360, "segments");
    }
}
