using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of the shop's own woods.</summary>
public static class OwnWoodLenses
{
    private static readonly Codec<ImmutableArray<double>> Lab = Codecs.Number("").List("such as 68, 9, 24");
    private static readonly Codec<ImmutableArray<string>> Names = Codecs.Words.List("such as rock maple, sugar maple");

    /// <summary>All fields of the own wood at <paramref name="index"/>.</summary>
    public static IEnumerable<Lens> Of(int index) => [.. Usual(index), .. Seldom(index)];

    /// <summary>Those that a new wood needs.</summary>
    public static IEnumerable<Lens> Usual(int index)
    {
        yield return Of(index, new("name", "Name", FieldKind.Words, "As rings name it"), Codecs.Words, w => w.Name, (w, v) => w with { Name = v });
        yield return Number(index, "density", "Density", "At 12 % moisture", "kg/m³", w => w.Density, (w, v) => w with { Density = v });
        yield return Number(index, "shrinkageRadial", "Shrinks, radial", "Green to oven-dry", "%", w => w.ShrinkageRadial, (w, v) => w with { ShrinkageRadial = v });
        yield return Number(index, "shrinkageTangential", "Shrinks, tangential", "Green to oven-dry", "%", w => w.ShrinkageTangential, (w, v) => w with { ShrinkageTangential = v });
        yield return Words(index, "swatch", "Colour", "Such as #c08a52", "as the table", w => w.Swatch, (w, v) => w with { Swatch = v });
        yield return Words(index, "caution", "Caution", "Dust, allergy", "none noted", w => w.Caution, (w, v) => w with { Caution = v });
        yield return Words(index, "source", "Source", "Where the values are from", "the shop’s own", w => w.Source, (w, v) => w with { Source = v });
    }

    /// <summary>The rest, which follows from those or from the table when it is not given.</summary>
    public static IEnumerable<Lens> Seldom(int index)
    {
        yield return Of(index, new("aliases", "Also called", FieldKind.List, "With commas between", "nothing else"), Names, w => w.Aliases ?? [], (w, v) => w with { Aliases = v.IsEmpty ? null : v });
        yield return Number(index, "changeRadial", "Moves, radial", "Share for each % of moisture", "", w => w.ChangeRadial, (w, v) => w with { ChangeRadial = v });
        yield return Number(index, "changeTangential", "Moves, tangential", "Share for each % of moisture", "", w => w.ChangeTangential, (w, v) => w with { ChangeTangential = v });
        yield return Number(index, "modulus", "Stiffness", "Along the grain", "MPa", w => w.Modulus, (w, v) => w with { Modulus = v });
        yield return Number(index, "shear", "Shears at", "Parallel to the grain", "MPa", w => w.Shear, (w, v) => w with { Shear = v });
        yield return Number(index, "tensionAcross", "Tears at", "Across the grain", "MPa", w => w.TensionAcross, (w, v) => w with { TensionAcross = v });
        yield return Number(index, "hardness", "Hardness", "Of the side (Janka)", "N", w => w.Hardness, (w, v) => w with { Hardness = v });
        yield return Of(index, new("fresh", "Fresh colour", FieldKind.List, "CIELAB: L, a, b", "as the table"), Lab, w => w.Fresh ?? [], (w, v) => w with { Fresh = v.IsEmpty ? null : v });
        yield return Of(index, new("aged", "Aged colour", FieldKind.List, "CIELAB: L, a, b", "as the table"), Lab, w => w.Aged ?? [], (w, v) => w with { Aged = v.IsEmpty ? null : v });
        yield return Of(index, new("mark", "Lines on paper", FieldKind.WholeNumber, "Pattern 0 to 5", "as the table"), Codecs.Whole.OrBlank(), w => w.Mark, (w, v) => w with { Mark = v });
    }

    private static Lens Number(int index, string key, string label, string hint, string unit, Func<OwnWood, double?> get, Func<OwnWood, double?, OwnWood> set) =>
        Of(index, new(key, label, FieldKind.Number, hint, "as the table"), Codecs.Number(unit).OrBlank(), get, set);

    private static Lens Words(int index, string key, string label, string hint, string blank, Func<OwnWood, string?> get, Func<OwnWood, string?, OwnWood> set) =>
        Of(index, new(key, label, FieldKind.Words, hint, blank), Codecs.WordsOrBlank, get, set);

    private static Lens Of<T>(int index, Field field, Codec<T> codec, Func<OwnWood, T> get, Func<OwnWood, T, OwnWood> set) => Lens.Of(
        new Place(Station.Timber, w => $"species {w.Shop.Species!.Value[index].Name}, ", $"species-{index + 1}-"), field, codec,
        w => get(w.Shop.Species!.Value[index]),
        (w, v) => w.WithShop(s => s with { Species = s.Species!.Value.SetItem(index, set(s.Species.Value[index], v)) }));
}
