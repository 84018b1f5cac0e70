using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench;

/// <summary>Everything as it stands in the fields, readable or not. Immutable.</summary>
/// <param name="Name">The piece's name.</param>
/// <param name="Units">How lengths are shown, and the unit of lengths typed without one.</param>
/// <param name="Selected">Index of the ring that is shown.</param>
/// <param name="Rings">The rings from the bottom up.</param>
/// <param name="Sled">What holds the board.</param>
/// <param name="ShopTexts">The text of each field in <see cref="ShopFields.All"/>, by key.</param>
public sealed record Draft(
    string Name, UnitChoice Units, int Selected, ImmutableArray<RingDraft> Rings, SledKind Sled, ImmutableSortedDictionary<string, string> ShopTexts)
{
    /// <summary>The fields of a piece and a shop as texts. The style of inches is kept from <paramref name="units"/> where it fits the piece.</summary>
    public static Draft Of(Piece piece, Shop shop, UnitChoice? units = null)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(shop);
        UnitChoice own = piece.Units == LengthUnit.Inch ? UnitChoice.InchFractions : UnitChoice.Millimetres;
        return new(
            piece.Name,
            units is UnitChoice kept && kept.Unit() == piece.Units ? kept : own,
            0,
            [.. piece.Rings.Select(RingDraft.Of)],
            shop.Sled.Kind,
            ShopFields.All.ToImmutableSortedDictionary(f => f.Field.Key, f => f.Text(shop), StringComparer.Ordinal));
    }

    /// <summary>The ring that is shown.</summary>
    public RingDraft Ring => Rings[Selected];

    /// <summary>With the shown ring changed.</summary>
    public Draft WithRing(Func<RingDraft, RingDraft> change) => this with { Rings = Rings.SetItem(Selected, change(Ring)) };

    /// <summary>The text of a shop field.</summary>
    public string ShopText(ShopField field) => ShopTexts.GetValueOrDefault(field.Field.Key, "");

    /// <summary>With another text in a shop field.</summary>
    public Draft WithShopText(ShopField field, string text) => this with { ShopTexts = ShopTexts.SetItem(field.Field.Key, text) };

    /// <summary>With other units. Lengths typed without a unit get the one they were typed in, so that none changes its meaning.</summary>
    public Draft In(UnitChoice units)
    {
        LengthUnit before = Units.Unit();
        return this with
        {
            Units = units,
            Rings = [.. Rings.Select(r => r with { Texts = Spell(r.Texts, RingFields.All, before) })],
            ShopTexts = Spell(ShopTexts, ShopFields.All.Select(f => f.Field), before),
        };
    }

    private static ImmutableSortedDictionary<string, string> Spell(ImmutableSortedDictionary<string, string> texts, IEnumerable<Field> fields, LengthUnit unit)
    {
        foreach (Field field in fields.Where(f => f.Kind == FieldKind.Length))
            if (Length.TryParse(texts.GetValueOrDefault(field.Key), unit, out Length length, out _)) texts = texts.SetItem(field.Key, length.Written);
        return texts;
    }
}
