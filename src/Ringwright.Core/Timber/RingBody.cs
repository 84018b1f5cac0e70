namespace Ringwright.Core.Timber;

/// <summary>A ring or disc of equal segments as turned, for what moisture does to it.</summary>
/// <param name="Segments">Segments around, at least 3.</param>
/// <param name="Outer">Outer radius, mm.</param>
/// <param name="Inner">Radius of the hole, mm; 0 for a full disc.</param>
/// <param name="Grain">Which way the grain runs.</param>
public readonly record struct RingBody(int Segments, double Outer, double Inner, SegmentGrain Grain = SegmentGrain.Around)
{
    /// <summary>
    /// Stress is read this far inside an edge, mm (a quarter of the depth in a small ring): at the very edge of a small hole it
    /// peaks over less wood than can break. Point-stress criterion of Whitney and Nuismer (1974, from memory); the distance is a rough guess.
    /// </summary>
    public const double ReadingDepth = 1;

    /// <summary>Half the wedge angle, radians.</summary>
    public double HalfAngle => Math.PI / Segments;

    /// <summary>Depth along the radius, mm.</summary>
    public double Depth => Outer - Inner;

    /// <summary>Where stress at the hole is read, over the outer radius.</summary>
    public double NearHole => (Inner + Math.Min(ReadingDepth, Depth / 4)) / Outer;

    /// <summary>Closing strain for each unit of strain of the depth: the gap of all wedges, N·sin(2a), over a full turn.</summary>
    public double ClosingPerStrain => Segments * Math.Sin(2 * HalfAngle) / (2 * Math.PI);
}
