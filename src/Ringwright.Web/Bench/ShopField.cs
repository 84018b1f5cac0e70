using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench;

/// <summary>A value of the shop: how it is shown as text and how text is put back.</summary>
public sealed class ShopField
{
    private readonly Func<Shop, string> _text;
    private readonly Func<Shop, string, LengthUnit, (Shop Shop, ParseError? Error)> _put;

    private ShopField(Field field, Func<Shop, string> text, Func<Shop, string, LengthUnit, (Shop Shop, ParseError? Error)> put)
    {
        Field = field;
        _text = text;
        _put = put;
    }

    /// <summary>What is typed.</summary>
    public Field Field { get; }

    /// <summary>The shop's value as a person would type it.</summary>
    public string Text(Shop shop) => _text(shop);

    /// <summary>The shop with the typed value, or the shop as it was and what is wrong with the text.</summary>
    public (Shop Shop, ParseError? Error) Put(Shop shop, string text, LengthUnit unit) => _put(shop, text, unit);

    internal static ShopField OfLength(string key, string label, string hint, Func<Shop, Length> get, Func<Shop, Length, Shop> set) =>
        new(new(key, label, FieldKind.Length, hint), shop => get(shop).Written, (shop, text, unit) =>
            Length.TryParse(text, unit, out Length length, out ParseError? error) ? (set(shop, length), null) : (shop, error));

    internal static ShopField OfPercent(string key, string label, string hint, Func<Shop, double> get, Func<Shop, double, Shop> set) =>
        new(new(key, label, FieldKind.Percent, hint), shop => FieldText.Percent(get(shop)), (shop, text, _) =>
            // A share from a file may have more digits than are shown; untouched text keeps them.
            text == FieldText.Percent(get(shop)) ? (shop, null)
            : FieldText.TryPercent(text, out double share, out ParseError? error) ? (set(shop, share), null) : (shop, error));
}
