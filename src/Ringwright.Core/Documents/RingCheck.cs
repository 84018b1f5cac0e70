using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a ring can be as it is described. Each refusal names ring, field and value.</summary>
internal static class RingCheck
{
    /// <summary>Throws for the first thing that cannot be.</summary>
    /// <param name="ring">The ring.</param>
    /// <param name="number">Its number in the piece, from 1.</param>
    /// <param name="shaped">Whether the piece has a shape, from which missing sizes follow.</param>
    public static void Check(Ring ring, int number, bool shaped)
    {
        if (string.IsNullOrWhiteSpace(ring.Name) || ring.Name.Length > 60)
            throw new BadInputException($"rings {number} name", "it is empty or longer than 60 characters", "a short name is needed, such as Rim");
        CheckSizes(ring, shaped);
        ConstructionCheck.Check(ring);
        CheckWoods(ring);
        if (!double.IsFinite(ring.Shift) || Math.Abs(ring.Shift) > PieceCheck.MostSegments)
            throw new BadInputException(Place(ring, "shift"), "it is too large", "a shift is a number of segments, such as 0.5");
    }

    /// <summary>Refuses a length outside <paramref name="least"/> to <paramref name="most"/> mm.</summary>
    public static void Between(Ring ring, string field, Length length, double least, double most) =>
        PieceCheck.Between(Place(ring, field), length, least, most);

    /// <summary>Refuses a length that is no size of a ring.</summary>
    public static void Size(Ring ring, string field, Length length) => Between(ring, field, length, PieceCheck.SmallestSize, PieceCheck.LargestSize);

    /// <summary>Refuses a count of segments that makes no ring.</summary>
    public static void Segments(Ring ring, int segments)
    {
        if (segments is < PieceCheck.FewestSegments or > PieceCheck.MostSegments)
            throw new BadInputException(Place(ring, "segments"), $"{segments} segments cannot make a ring", $"{PieceCheck.FewestSegments} to {PieceCheck.MostSegments} can");
    }

    /// <summary>Refuses a wood's name that fits on no sheet.</summary>
    public static void Wood(Ring ring, string field, string wood)
    {
        if (string.IsNullOrWhiteSpace(wood) || wood.Length > 40)
            throw new BadInputException(Place(ring, field), "a wood's name is empty or longer than 40 characters", "a short name is needed, such as maple");
    }

    /// <summary>Where in the piece a field stands.</summary>
    public static string Place(Ring ring, string field) => $"ring {ring.Name}, {field}";

    private static void CheckSizes(Ring ring, bool shaped)
    {
        // A veneer may be thinner than the smallest ring.
        Between(ring, "thickness", ring.Thickness, ring is SolidLayer ? 0.1 : PieceCheck.SmallestSize, PieceCheck.LargestSize);
        if (ring.Diameter is Length diameter) Size(ring, "diameter", diameter);
        else if (!shaped) throw Missing(ring, "diameter");
        if (ring.Allowance is Length allowance) Between(ring, "allowance", allowance, 0, ring.Diameter?.Millimetres ?? PieceCheck.LargestSize);
        if (ring is not IHollowRing hollow) return;
        if (hollow.InnerDiameter is null && !shaped) throw Missing(ring, "innerDiameter");
        if (hollow.InnerDiameter is not Length inner) return;
        Size(ring, "innerDiameter", inner);
        if (ring.Diameter is Length outer && inner.Millimetres >= outer.Millimetres)
            throw new BadInputException(Place(ring, "innerDiameter"), $"{inner} inside leaves no wall within {outer}", "it must be smaller than the diameter");
    }

    private static BadInputException Missing(Ring ring, string field) =>
        new(Place(ring, field), "it is missing", "give it, or give the piece a shape that it follows from");

    private static void CheckWoods(Ring ring)
    {
        if (ring is SegmentedRing segmented)
        {
            if (segmented.Woods.IsDefaultOrEmpty) throw new BadInputException(Place(ring, "woods"), "there is none", "name at least one wood");
            if (segmented.Woods.Length > segmented.Segments)
                throw new BadInputException(Place(ring, "woods"), $"{segmented.Woods.Length} woods are listed for {segmented.Segments} segments", "list at most one for each segment; the list repeats");
        }

        foreach (string wood in ring.Cycle) Wood(ring, "woods", wood);
    }
}
