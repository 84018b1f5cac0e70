using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>Makes lenses on the shop, for one page.</summary>
/// <param name="station">The station they belong to.</param>
/// <param name="url">Address of the page that shows them; the station's own when absent.</param>
/// <param name="prefix">What stands before each key, such as <c>lathe.</c>.</param>
internal sealed class ShopLens(Station station, string? url = null, string prefix = "")
{
    private readonly Place _place = new(station, _ => "") { Url = url ?? station.Url() };

    public Lens Length(string key, string label, string hint, Func<Shop, Length> get, Func<Shop, Length, Shop> set) =>
        Of(new(key, label, FieldKind.Length, hint), Codecs.Length, get, set);

    public Lens Length(string key, string label, string hint, string blank, Func<Shop, Length?> get, Func<Shop, Length?, Shop> set) =>
        Of(new(key, label, FieldKind.Length, hint, blank), Codecs.Length.OrBlank(), get, set);

    public Lens Lengths(string key, string label, string hint, string? blank, Func<Shop, ImmutableArray<Length>> get, Func<Shop, ImmutableArray<Length>, Shop> set) =>
        Of(new(key, label, FieldKind.List, hint, blank), Codecs.Length.List("such as 27 mm, 34 mm"), get, set);

    public Lens Angle(string key, string label, string hint, Func<Shop, Angle> get, Func<Shop, Angle, Shop> set) =>
        Of(new(key, label, FieldKind.Angle, hint), Codecs.Angle, get, set);

    public Lens Time(string key, string label, string hint, Func<Shop, Duration> get, Func<Shop, Duration, Shop> set) =>
        Of(new(key, label, FieldKind.Time, hint), Codecs.Duration, get, set);

    public Lens Time(string key, string label, string hint, string blank, Func<Shop, Duration?> get, Func<Shop, Duration?, Shop> set) =>
        Of(new(key, label, FieldKind.Time, hint, blank), Codecs.Duration.OrBlank(), get, set);

    public Lens Share(string key, string label, string hint, Func<Shop, double> get, Func<Shop, double, Shop> set) =>
        Of(new(key, label, FieldKind.Percent, hint), Codecs.Share, get, set);

    public Lens Share(string key, string label, string hint, string blank, Func<Shop, double?> get, Func<Shop, double?, Shop> set) =>
        Of(new(key, label, FieldKind.Percent, hint, blank), Codecs.Share.OrBlank(), get, set);

    public Lens Number(string key, string label, string hint, string unit, Func<Shop, double> get, Func<Shop, double, Shop> set) =>
        Of(new(key, label, FieldKind.Number, hint), Codecs.Number(unit), get, set);

    public Lens Number(string key, string label, string hint, string unit, string blank, Func<Shop, double?> get, Func<Shop, double?, Shop> set) =>
        Of(new(key, label, FieldKind.Number, hint, blank), Codecs.Number(unit).OrBlank(), get, set);

    public Lens Whole(string key, string label, string hint, Func<Shop, int> get, Func<Shop, int, Shop> set) =>
        Of(new(key, label, FieldKind.WholeNumber, hint), Codecs.Whole, get, set);

    public Lens Words(string key, string label, string hint, string blank, Func<Shop, string?> get, Func<Shop, string?, Shop> set) =>
        Of(new(key, label, FieldKind.Words, hint, blank), Codecs.WordsOrBlank, get, set);

    public Lens Text(string key, string label, string hint, string blank, Func<Shop, string?> get, Func<Shop, string?, Shop> set) =>
        Of(new(key, label, FieldKind.Text, hint, blank), Codecs.WordsOrBlank, get, set);

    public Lens Of<T>(Field field, Codec<T> codec, Func<Shop, T> get, Func<Shop, T, Shop> set) =>
        Lens.Of(_place, field with { Key = prefix + field.Key }, codec, w => get(w.Shop), (w, v) => w.WithShop(s => set(s, v)));
}
