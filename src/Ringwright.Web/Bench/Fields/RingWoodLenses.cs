using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of what a ring is made of: its woods in turn, its parts, the strips of its board.</summary>
internal static class RingWoodLenses
{
    private static readonly Field Wood = new("", "Wood", FieldKind.Wood, "");
    private static readonly Field Share = new("", "Share of the turn", FieldKind.Number, "Against the others’ shares", "1");
    private static readonly Field Thick = new("", "Thickness", FieldKind.Length, "Its faces are parallel", "a segment");
    private static readonly Field StripThick = new("", "Thickness", FieldKind.Length, "Between the glue lines");

    public static IEnumerable<Lens> Of(RingLens at, Ring ring) => ring switch
    {
        SegmentedRing segmented => segmented.Woods.Select((_, i) => WoodAt(at, i)),
        MixedRing mixed => mixed.Parts.SelectMany((_, i) => Part(at, i)),
        LaminatedRing laminated => laminated.Strips.SelectMany((_, i) => Strip(at, i)),
        _ => [],
    };

    private static Lens WoodAt(RingLens at, int i) => at.Of<SegmentedRing, string>(
        Wood with { Key = RingLenses.WoodKey(i + 1), Label = $"Wood {i + 1}" }, Codecs.Words, r => r.Woods[i], (r, v) => r with { Woods = r.Woods.SetItem(i, v) });

    private static IEnumerable<Lens> Part(RingLens at, int i)
    {
        Lens Of<T>(Field field, string key, Codec<T> codec, Func<RingPart, T> get, Func<RingPart, T, RingPart> set) => at.Of<MixedRing, T>(
            field with { Key = $"parts {i + 1}, {key}" }, codec, r => get(r.Parts[i]), (r, v) => r with { Parts = r.Parts.SetItem(i, set(r.Parts[i], v)) });
        yield return Of(Wood, "wood", Codecs.Words, p => p.Wood, (p, v) => p with { Wood = v });
        // Typing one takes the other back: a part is a segment with a share or a spacer with a thickness.
        yield return Of(Share, "share", Codecs.Number("").OrBlank(), p => p.Share, (p, v) => p with { Share = v, Thickness = v is null ? p.Thickness : null });
        yield return Of(Thick, "thickness", Codecs.Length.OrBlank(), p => p.Thickness, (p, v) => p with { Thickness = v, Share = v is null ? p.Share : null });
    }

    private static IEnumerable<Lens> Strip(RingLens at, int i)
    {
        Lens Of<T>(Field field, string key, Codec<T> codec, Func<Strip, T> get, Func<Strip, T, Strip> set) => at.Of<LaminatedRing, T>(
            field with { Key = $"strips {i + 1}, {key}" }, codec, r => get(r.Strips[i]), (r, v) => r with { Strips = r.Strips.SetItem(i, set(r.Strips[i], v)) });
        yield return Of(Wood, "wood", Codecs.Words, s => s.Wood, (s, v) => s with { Wood = v });
        yield return Of(StripThick, "thickness", Codecs.Length, s => s.Thickness, (s, v) => s with { Thickness = v });
    }
}
