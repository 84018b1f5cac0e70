using System.Diagnostics.CodeAnalysis;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of the shop's own woods.</summary>
public static class OwnWoodLenses
{
    private static readonly Codec<string?> Optional = new(v => v ?? "", (string t, LengthUnit _, out string? v, [NotNullWhen(false)] out ParseError? e) =>
    {
        (v, e) = (string.IsNullOrWhiteSpace(t) ? null : t, null);
        return true;
    });

    /// <summary>The fields of the own wood at <paramref name="index"/>.</summary>
    public static IEnumerable<Lens> Of(int index)
    {
        Lens Number(string key, string label, string hint, string unit, Func<OwnWood, double?> get, Func<OwnWood, double?, OwnWood> set) =>
            Of(index, new(key, label, FieldKind.Number, hint, "as the table"), Codecs.Number(unit).OrBlank(), get, set);
        yield return Of(index, new("name", "Name", FieldKind.Words, "As rings name it"), Codecs.Words, w => w.Name, (w, v) => w with { Name = v });
        yield return Number("density", "Density", "At 12 % moisture", "kg/m³", w => w.Density, (w, v) => w with { Density = v });
        yield return Number("shrinkageRadial", "Shrinks, radial", "Green to oven-dry", "%", w => w.ShrinkageRadial, (w, v) => w with { ShrinkageRadial = v });
        yield return Number("shrinkageTangential", "Shrinks, tangential", "Green to oven-dry", "%", w => w.ShrinkageTangential, (w, v) => w with { ShrinkageTangential = v });
        yield return Of(index, new("swatch", "Colour", FieldKind.Words, "Such as #c08a52", "as the table"), Optional, w => w.Swatch, (w, v) => w with { Swatch = v });
        yield return Of(index, new("caution", "Caution", FieldKind.Words, "Dust, allergy", "none noted"), Optional, w => w.Caution, (w, v) => w with { Caution = v });
        yield return Of(index, new("source", "Source", FieldKind.Words, "Where the values are from", "the shop’s own"), Optional, w => w.Source, (w, v) => w with { Source = v });
    }

    private static Lens Of<T>(int index, Field field, Codec<T> codec, Func<OwnWood, T> get, Func<OwnWood, T, OwnWood> set) => Lens.Of(
        new Place(Station.Timber, w => $"species {w.Shop.Species!.Value[index].Name}, ", $"species-{index + 1}-"), field, codec,
        w => get(w.Shop.Species!.Value[index]),
        (w, v) => w.WithShop(s => s with { Species = s.Species!.Value.SetItem(index, set(s.Species.Value[index], v)) }));
}
