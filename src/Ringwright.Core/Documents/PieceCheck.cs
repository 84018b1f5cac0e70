using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a piece can be made at all. Each refusal names ring, field and value.</summary>
public static class PieceCheck
{
    /// <summary>Fewest segments that enclose an area.</summary>
    public const int FewestSegments = 3;

    /// <summary>Most segments around one ring: one degree each.</summary>
    public const int MostSegments = 360;

    /// <summary>Most rings in one piece.</summary>
    public const int MostRings = 2000;

    /// <summary>Largest diameter or thickness, mm: beyond it nobody's lathe turns.</summary>
    public const double LargestSize = 3000;

    /// <summary>Smallest diameter, thickness or bore, mm.</summary>
    public const double SmallestSize = 0.5;

    /// <summary>Throws for the first thing that cannot be.</summary>
    /// <exception cref="BadInputException">With ring, field, value and what would be right.</exception>
    public static void Check(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        if (string.IsNullOrWhiteSpace(piece.Name)) throw new BadInputException("name", "the piece has no name", "give it one, it stands on every sheet");
        if (piece.Name.Length > 120) throw new BadInputException("name", $"it has {piece.Name.Length} characters", "at most 120 fit on a sheet");
        if (piece.Rings.IsDefaultOrEmpty) throw new BadInputException("rings", "there is none", "a piece has at least one ring");
        if (piece.Rings.Length > MostRings) throw new BadInputException("rings", $"there are {piece.Rings.Length}", $"at most {MostRings} are planned");
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < piece.Rings.Length; i++)
        {
            Ring ring = piece.Rings[i] ?? throw new BadInputException($"rings {i + 1}", "it is null", "a ring is a group of fields");
            CheckRing(ring, i);
            if (!names.Add(ring.Name)) throw new BadInputException(Place(ring, "name"), "another ring has the same name", "each ring needs its own");
        }
    }

    private static void CheckRing(Ring ring, int index)
    {
        if (string.IsNullOrWhiteSpace(ring.Name) || ring.Name.Length > 60)
            throw new BadInputException($"rings {index + 1} name", "it is empty or longer than 60 characters", "a short name is needed, such as Rim");
        if (ring.Segments is < FewestSegments or > MostSegments)
            throw new BadInputException(Place(ring, "segments"), $"{ring.Segments} segments cannot make a ring", $"{FewestSegments} to {MostSegments} can");
        Size(ring, "diameter", ring.Diameter);
        Size(ring, "thickness", ring.Thickness);
        if (ring.Allowance is Length allowance) Between(ring, "allowance", allowance, 0, ring.Diameter.Millimetres);
        CheckWoods(ring);
        if (ring is WedgeDisc disc) CheckDisc(disc);
        if (ring is SegmentRing open) CheckOpen(open);
    }

    private static void CheckWoods(Ring ring)
    {
        if (ring.Woods.IsDefaultOrEmpty) throw new BadInputException(Place(ring, "woods"), "there is none", "name at least one wood");
        if (ring.Woods.Length > ring.Segments)
            throw new BadInputException(Place(ring, "woods"), $"{ring.Woods.Length} woods are listed for {ring.Segments} segments", "list at most one for each segment; the list repeats");
        foreach (string wood in ring.Woods)
            if (string.IsNullOrWhiteSpace(wood) || wood.Length > 40)
                throw new BadInputException(Place(ring, "woods"), "a wood's name is empty or longer than 40 characters", "a short name is needed, such as maple");
    }

    private static void CheckDisc(WedgeDisc disc)
    {
        double diameter = disc.Diameter.Millimetres;
        if (disc.Tip is not null && disc.BoardWidth is not null)
            throw new BadInputException(Place(disc, "boardWidth"), "tip and boardWidth are both given", "give one, the other follows");
        if (disc.Tip is Length tip) Between(disc, "tip", tip, 0, diameter * Math.Tan(Math.PI / disc.Segments));
        if (disc.Bore is Length bore)
        {
            Size(disc, "bore", bore);
            if (bore.Millimetres >= diameter)
                throw new BadInputException(Place(disc, "bore"), $"a bore of {bore} leaves nothing of a disc of {disc.Diameter}", "it must be smaller than the diameter");
        }

        if (disc.BoardWidth is Length width) Between(disc, "boardWidth", width, SmallestSize, LargestSize);
    }

    private static void CheckOpen(SegmentRing ring)
    {
        Size(ring, "innerDiameter", ring.InnerDiameter);
        if (ring.InnerDiameter.Millimetres >= ring.Diameter.Millimetres)
            throw new BadInputException(Place(ring, "innerDiameter"), $"{ring.InnerDiameter} inside leaves no wall within {ring.Diameter}", "it must be smaller than the diameter");
    }

    private static void Size(Ring ring, string field, Length length) => Between(ring, field, length, SmallestSize, LargestSize);

    private static void Between(Ring ring, string field, Length length, double least, double most) => Between(Place(ring, field), length, least, most);

    internal static void Between(string place, Length length, double least, double most)
    {
        if (length.Millimetres < least || length.Millimetres > most)
            throw new BadInputException(place, $"{length} cannot be", string.Create(CultureInfo.InvariantCulture, $"{least:0.###} mm to {most:0.###} mm can"));
    }

    private static string Place(Ring ring, string field) => $"ring {ring.Name}, {field}";
}
