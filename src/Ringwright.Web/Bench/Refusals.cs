using Ringwright.Core;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench;

/// <summary>Finds the field that a refusal of the library is about.</summary>
internal static class Refusals
{
    public static FieldProblem Problem(BadInputException refusal, Piece piece)
    {
        string where = refusal.Where;
        string key = where[(where.LastIndexOf(", ", StringComparison.Ordinal) is >= 0 and int comma ? comma + 2 : 0)..];
        string sentence = DraftReader.Capital($"{refusal.Problem}; {refusal.Right}.");
        if (ShopFields.All.Any(f => f.Field.Key == key)) return new(null, key, sentence);
        bool ofRing = key == WoodsKey || RingFields.All.Any(f => f.Key == key);
        if (ofRing) return new(RingNamed(where, piece), key, sentence);
        return where == NameKey ? new(null, NameKey, sentence) : new(null, null, refusal.Message);
    }

    /// <summary>Key of the list of woods.</summary>
    public const string WoodsKey = "woods";

    /// <summary>Key of the piece's name.</summary>
    public const string NameKey = "name";

    private static int RingNamed(string where, Piece piece)
    {
        for (int i = 0; i < piece.Rings.Length; i++)
            if (where.StartsWith($"ring {piece.Rings[i].Name}, ", StringComparison.Ordinal)) return i;
        return 0;
    }
}
