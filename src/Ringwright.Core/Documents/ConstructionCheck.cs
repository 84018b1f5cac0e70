using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>Checks the fields that belong to one kind of construction.</summary>
internal static class ConstructionCheck
{
    /// <summary>Most parts in one mixed ring and most strips in one laminated board.</summary>
    public const int MostParts = 360;

    public static void Check(Ring ring)
    {
        if (ring is SegmentedRing segmented) RingCheck.Segments(ring, segmented.Segments);
        switch (ring)
        {
            case WedgeDisc disc: Disc(disc); break;
            case SegmentRing { BoardWidth: Length width }: RingCheck.Size(ring, "boardWidth", width); break;
            case OpenRing open: Open(open); break;
            case StaveRing stave: Stave(stave); break;
            case LaminatedRing laminated: Laminated(laminated); break;
            case MixedRing mixed: Mixed(mixed); break;
            case BoardRing { Board: var board } when string.IsNullOrWhiteSpace(board) || board.Length > 60:
                throw new BadInputException(RingCheck.Place(ring, "board"), "it is empty or longer than 60 characters", "give the flat board a short name, such as Board A");
            default: break;
        }
    }

    private static void Disc(WedgeDisc disc)
    {
        if (disc.Tip is not null && disc.BoardWidth is not null)
            throw new BadInputException(RingCheck.Place(disc, "boardWidth"), "tip and boardWidth are both given", "give one, the other follows");
        double diameter = disc.Diameter?.Millimetres ?? PieceCheck.LargestSize;
        if (disc.Tip is Length tip) RingCheck.Between(disc, "tip", tip, 0, diameter * Math.Tan(Math.PI / disc.Segments));
        if (disc.Bore is Length bore)
        {
            RingCheck.Size(disc, "bore", bore);
            if (bore.Millimetres >= diameter)
                throw new BadInputException(RingCheck.Place(disc, "bore"), $"a bore of {bore} leaves nothing of a disc of {disc.Diameter}", "it must be smaller than the diameter");
        }

        if (disc.BoardWidth is Length width) RingCheck.Size(disc, "boardWidth", width);
    }

    private static void Open(OpenRing ring)
    {
        double whole = 2 * Math.PI / ring.Segments;
        if (ring.Gap.Radians <= 0 || ring.Gap.Radians > 0.9 * whole)
            throw new BadInputException(RingCheck.Place(ring, "gap"), $"{ring.Gap} cannot stay open between {ring.Segments} segments", $"more than 0° and at most {Math.Round(0.9 * 360.0 / ring.Segments, 2)}° can");
    }

    private static void Stave(StaveRing ring)
    {
        if (ring.Lean is Angle lean && Math.Abs(lean.Degrees) > 80)
            throw new BadInputException(RingCheck.Place(ring, "lean"), $"{lean} cannot be", "from -80° to 80° from the axis can; flatter than that, use flat segments");
    }

    private static void Laminated(LaminatedRing ring)
    {
        RingCheck.Segments(ring, ring.Segments);
        if (ring.Strips.IsDefaultOrEmpty || ring.Strips.Length > MostParts)
            throw new BadInputException(RingCheck.Place(ring, "strips"), "there are none, or too many", $"1 to {MostParts} strips make a board");
        foreach (Strip strip in ring.Strips)
        {
            if (strip is null) throw new BadInputException(RingCheck.Place(ring, "strips"), "one is null", "a strip has a wood and a thickness");
            RingCheck.Between(ring, "strips, thickness", strip.Thickness, 0.1, PieceCheck.LargestSize);
        }

        if (Math.Abs(ring.Recut.Degrees) > 75)
            throw new BadInputException(RingCheck.Place(ring, "recut"), $"{ring.Recut} cannot be", "from -75° to 75° from upright can");
    }

    private static void Mixed(MixedRing ring)
    {
        if (ring.Parts.IsDefaultOrEmpty || ring.Parts.Length > MostParts)
            throw new BadInputException(RingCheck.Place(ring, "parts"), "there are none, or too many", $"1 to {MostParts} parts can go around");
        if (ring.Repeats is < 1 or > PieceCheck.MostSegments)
            throw new BadInputException(RingCheck.Place(ring, "repeats"), $"{ring.Repeats} cannot be", $"1 to {PieceCheck.MostSegments} can");
        foreach (RingPart part in ring.Parts)
        {
            if (part is null) throw new BadInputException(RingCheck.Place(ring, "parts"), "one is null", "a part has a wood, and a share or a thickness");
            Part(ring, part);
        }

        if (ring.Parts[0].IsSpacer) throw new BadInputException(RingCheck.Place(ring, "parts"), "the first is a spacer", "begin with a segment");
        RingCheck.Segments(ring, ring.Around);
        double whole = ring.Parts.Sum(p => p.Weight) * ring.Repeats;
        double largest = ring.Parts.Max(p => p.Weight);
        if (largest / whole > 1.0 / 3)
            throw new BadInputException(RingCheck.Place(ring, "parts, share"), "one segment takes more than a third of the turn", "share it between more segments");
    }

    private static void Part(MixedRing ring, RingPart part)
    {
        RingCheck.Wood(ring, "parts, wood", part.Wood);
        if (part.Share is not null && part.Thickness is not null)
            throw new BadInputException(RingCheck.Place(ring, "parts"), "a part has both a share and a thickness", "a segment has a share, a spacer a thickness");
        if (part.Share is double share && !(share > 0 && share <= 1000))
            throw new BadInputException(RingCheck.Place(ring, "parts, share"), "it is not above 0", "a share is a number such as 1 or 2.5");
        if (part.Thickness is Length thickness) RingCheck.Between(ring, "parts, thickness", thickness, 0.1, 100);
    }
}
