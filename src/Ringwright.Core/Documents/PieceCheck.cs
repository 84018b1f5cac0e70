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
        if (piece.Shape is Shape shape) ShapeCheck.Check(shape);
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < piece.Rings.Length; i++)
        {
            Ring ring = piece.Rings[i] ?? throw new BadInputException($"rings {i + 1}", "it is null", "a ring is a group of fields");
            RingCheck.Check(ring, i + 1, piece.Shape is not null);
            if (!names.Add(ring.Name)) throw new BadInputException(RingCheck.Place(ring, "name"), "another ring has the same name", "each ring needs its own");
        }
    }

    /// <summary>Refuses a length outside <paramref name="least"/> to <paramref name="most"/> mm.</summary>
    internal static void Between(string place, Length length, double least, double most)
    {
        if (length.Millimetres < least || length.Millimetres > most)
            throw new BadInputException(place, $"{length} cannot be", string.Create(CultureInfo.InvariantCulture, $"{least:0.###} mm to {most:0.###} mm can"));
    }
}
