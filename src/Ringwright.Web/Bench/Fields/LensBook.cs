using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>Finds the field at an address. Addresses are the places that the library's refusals name.</summary>
public static class LensBook
{
    /// <summary>Address of the piece's name.</summary>
    public const string PieceName = "name";

    private const string RingStart = "ring ", SpeciesStart = "species ";

    private static readonly Place OfPiece = new(Station.Shape, _ => "");

    private static readonly Lens Name = Lens.Of(OfPiece, new Field(PieceName, "Name", FieldKind.Words, "Stands on every sheet"), Codecs.Words,
        w => w.Piece.Name, (w, v) => w with { Piece = w.Piece with { Name = v } });

    /// <summary>What its maker notes of the piece.</summary>
    public static Lens Notes { get; } = Lens.Of(OfPiece, new Field("notes", "Notes", FieldKind.Text, "For yourself; kept in the piece’s file", "none"), Codecs.WordsOrBlank,
        w => w.Piece.Notes, (w, v) => w with { Piece = w.Piece with { Notes = v } });

    /// <summary>Every field of the work as it stands.</summary>
    public static IEnumerable<Lens> All(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        return [Name, Notes, .. ShapeLenses.Of(work), .. ShopLenses.Of(work), .. OwnWoods(work), .. work.Piece.Rings.SelectMany((_, i) => RingLenses.Of(work, i))];
    }

    /// <summary>The field at <paramref name="address"/> in <paramref name="work"/>, or null.</summary>
    public static Lens? Find(Work work, string address)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(address);
        return Among(work, address).FirstOrDefault(l => l.AddressIn(work) == address);
    }

    /// <summary>The field that a refusal at <paramref name="where"/> is about; the first of those it may be about when it is not exact.</summary>
    public static Lens? Nearest(Work work, string where) =>
        Find(work, where)
        ?? Among(work, where).FirstOrDefault(l => Digitless(l.AddressIn(work)) == Digitless(where))
        ?? Among(work, where).FirstOrDefault(l => l.AddressIn(work).StartsWith(where + " ", StringComparison.Ordinal) || l.AddressIn(work).StartsWith(where + ",", StringComparison.Ordinal))
        ?? Among(work, where).FirstOrDefault(l => where.StartsWith(l.AddressIn(work), StringComparison.Ordinal))
        ?? NamedByNumber(work, where);

    private static IEnumerable<Lens> Among(Work work, string address)
    {
        if (address.StartsWith(RingStart, StringComparison.Ordinal)) return RingAt(work.Piece, address) is int ring ? RingLenses.Of(work, ring) : [];
        if (address.StartsWith(SpeciesStart, StringComparison.Ordinal)) return OwnWoods(work);
        return [Name, Notes, .. ShapeLenses.Of(work), .. ShopLenses.Of(work)];
    }

    private static IEnumerable<Lens> OwnWoods(Work work) => work.Shop.Species is { IsDefault: false } own ? own.SelectMany((_, i) => OwnWoodLenses.Of(i)) : [];

    // Of names where one begins with another and a comma, the longer fits better.
    private static int? RingAt(Piece piece, string address) => piece.Rings.Index()
        .Where(r => address.StartsWith($"{RingStart}{r.Item.Name}, ", StringComparison.Ordinal))
        .OrderByDescending(r => r.Item.Name.Length).Select(r => (int?)r.Index).FirstOrDefault();

    // "parts, share" may be about any part; a list's refusal does not say which.
    private static string Digitless(string address) => string.Concat(address.Where(c => !char.IsDigit(c))).Replace(" ,", ",", StringComparison.Ordinal);

    // A ring without a usable name is named by its number: "rings 3 name".
    private static Lens? NamedByNumber(Work work, string where) =>
        where.Split(' ') is ["rings", var number, "name"] && int.TryParse(number, out int n) && n >= 1 && n <= work.Piece.Rings.Length
            ? RingLenses.Of(work, n - 1).First(l => l.Field.Key == RingFields.Name.Key)
            : null;
}
