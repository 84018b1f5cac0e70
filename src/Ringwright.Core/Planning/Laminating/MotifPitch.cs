using Ringwright.Core.Pieces;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>
/// How far apart the segments lie in a laminated board. Every second wedge shows the pattern mirrored: zigzag takes them all, lines
/// that all lean one way take every second one. So that all segments start at the same place, the distance is rounded up to whole
/// repeats of the pattern, as long as that costs less than as much wood again. Lengths in mm.
/// </summary>
/// <param name="Bare">Distance of used segments without matching.</param>
/// <param name="Matching">The same in whole repeats.</param>
/// <param name="Wedge">Strip each wedge takes by itself.</param>
internal readonly record struct MotifPitch(double Bare, double Matching, double Wedge)
{
    // Whole repeats but for rounding are whole repeats.
    private const double Hair = 1e-9;

    /// <summary>Whether the segments match.</summary>
    public bool IsMatched => Matching < 2 * Bare;

    /// <summary>Distance of used segments.</summary>
    public double Chosen => IsMatched ? Matching : Bare;

    /// <summary>What is left out behind each used wedge: the wedge between included, when it is not used.</summary>
    public double Slip => Math.Max(0, Chosen - Wedge);

    public static MotifPitch Of(StripLayout strip, LaminatedRing ring, double period)
    {
        double bare = (ring.Mirrored || ring.Recut.Radians == 0 ? 1 : 2) * strip.Pitch;
        return new(bare, Math.Ceiling((bare / period) - Hair) * period, strip.Pitch);
    }
}
