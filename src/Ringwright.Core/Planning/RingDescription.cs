using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What a ring is, in one line.</summary>
public static class RingDescription
{
    /// <summary>Such as "Disc of 24 wedges, 19 mm, bored 7 mm". The ring's sizes must be known.</summary>
    public static Sentence Of(Ring ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        Measured outside = Measured.Length(ring.Outside.Millimetres), around = Measured.Count(ring.Around);
        return ring switch
        {
            WedgeDisc { Bore: Length bore } => Sentence.Of("Disc of {0} wedges, {1}, bored {2}", around, outside, Measured.Length(bore.Millimetres)),
            WedgeDisc => Sentence.Of("Disc of {0} wedges, {1}", around, outside),
            MixedRing { InnerDiameter: Length inside } mixed when mixed.Parts.Any(p => p.IsSpacer) => Sentence.Of("Ring of {0} segments and {3} spacers, {1} outside, {2} inside",
                around, outside, Measured.Length(inside.Millimetres), Measured.Count(mixed.Repeats * mixed.Parts.Count(p => p.IsSpacer))),
            SolidLayer { IsVeneer: true } => Sentence.Of($"Veneer of {Sentence.Escape(ring.Cycle[0])}, {{0}}, {{1}} thick", outside, Measured.Length(ring.Thickness.Millimetres)),
            SolidLayer => Sentence.Of($"Layer of {Sentence.Escape(ring.Cycle[0])}, {{0}}, {{1}} high", outside, Measured.Length(ring.Thickness.Millimetres)),
            IHollowRing { InnerDiameter: Length inside } => Sentence.Of(Kind(ring) + ", {1} outside, {2} inside", around, outside, Measured.Length(inside.Millimetres)),
            _ => Sentence.Of(Kind(ring) + ", {1}", around, outside),
        };
    }

    private static string Kind(Ring ring) => ring switch
    {
        OpenRing => "Ring of {0} segments with gaps",
        StaveRing => "Ring of {0} staves",
        LaminatedRing => "Ring of {0} laminated segments",
        MixedRing => "Ring of {0} segments, not all alike",
        BoardRing { Board: var board } => $"Ring of {{0}} segments from {Sentence.Escape(board)}",
        _ => "Ring of {0} segments",
    };
}
