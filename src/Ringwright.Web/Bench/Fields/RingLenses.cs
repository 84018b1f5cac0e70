using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of one ring, by its construction.</summary>
public static class RingLenses
{
    /// <summary>Key of the wood at a place in the list, counted from 1.</summary>
    public static string WoodKey(int number) => $"woods {number}";

    /// <summary>The fields of the ring at <paramref name="index"/>, those of most use first; woods, parts and strips last.</summary>
    public static IEnumerable<Lens> Of(Work work, int index)
    {
        ArgumentNullException.ThrowIfNull(work);
        Ring ring = work.Piece.Rings[index];
        var at = new RingLens(index);
        return [.. Sizes(at, ring, work.Piece.Shape is not null), .. Kind(at, ring), .. Rest(at, ring), .. RingWoodLenses.Of(at, ring)];
    }

    private static IEnumerable<Lens> Sizes(RingLens at, Ring ring, bool shaped)
    {
        if (ring is SegmentedRing) yield return at.Of<SegmentedRing, int>(RingFields.Segments, Codecs.Whole, r => r.Segments, (r, v) => r with { Segments = v });
        if (ring is LaminatedRing) yield return at.Of<LaminatedRing, int>(RingFields.Segments, Codecs.Whole, r => r.Segments, (r, v) => r with { Segments = v });
        if (ring is MixedRing) yield return at.Of<MixedRing, int>(RingFields.Repeats, Codecs.Whole, r => r.Repeats, (r, v) => r with { Repeats = v });
        // With a shape, a size that is left blank follows from it.
        Field Sized(Field field) => shaped ? field with { WhenBlank = "as the shape" } : field;
        yield return at.Of<Ring, Length?>(Sized(RingFields.Diameter), Codecs.Length.OrBlank(), r => r.Diameter, (r, v) => r with { Diameter = v });
        Field inner = Sized(RingFields.InnerDiameter);
        switch (ring)
        {
            case SegmentRing: yield return at.Of<SegmentRing, Length?>(inner, Codecs.Length.OrBlank(), r => r.InnerDiameter, (r, v) => r with { InnerDiameter = v }); break;
            case OpenRing: yield return at.Of<OpenRing, Length?>(inner, Codecs.Length.OrBlank(), r => r.InnerDiameter, (r, v) => r with { InnerDiameter = v }); break;
            case StaveRing: yield return at.Of<StaveRing, Length?>(inner, Codecs.Length.OrBlank(), r => r.InnerDiameter, (r, v) => r with { InnerDiameter = v }); break;
            case LaminatedRing: yield return at.Of<LaminatedRing, Length?>(inner, Codecs.Length.OrBlank(), r => r.InnerDiameter, (r, v) => r with { InnerDiameter = v }); break;
            case MixedRing: yield return at.Of<MixedRing, Length?>(inner, Codecs.Length.OrBlank(), r => r.InnerDiameter, (r, v) => r with { InnerDiameter = v }); break;
            case BoardRing: yield return at.Of<BoardRing, Length?>(inner, Codecs.Length.OrBlank(), r => r.InnerDiameter, (r, v) => r with { InnerDiameter = v }); break;
            default: break;
        }

        yield return at.Of<Ring, Length>(ring is StaveRing ? RingFields.Thickness with { Label = "Length" } : RingFields.Thickness, Codecs.Length, r => r.Thickness, (r, v) => r with { Thickness = v });
    }

    private static IEnumerable<Lens> Kind(RingLens at, Ring ring)
    {
        switch (ring)
        {
            case WedgeDisc:
                yield return at.Of<WedgeDisc, Length?>(RingFields.Bore, Codecs.Length.OrBlank(), r => r.Bore, (r, v) => r with { Bore = v });
                // Of tip and board width one is given, the other follows: typing one takes the other back.
                yield return at.Of<WedgeDisc, Length?>(RingFields.Tip, Codecs.Length.OrBlank(), r => r.Tip, (r, v) => r with { Tip = v, BoardWidth = v is null ? r.BoardWidth : null });
                yield return at.Of<WedgeDisc, Length?>(RingFields.BoardWidth, Codecs.Length.OrBlank(), r => r.BoardWidth, (r, v) => r with { BoardWidth = v, Tip = v is null ? r.Tip : null });
                break;
            case SegmentRing:
                yield return at.Of<SegmentRing, Length?>(RingFields.BoardWidth with { Hint = "Ripped for several rings" }, Codecs.Length.OrBlank(), r => r.BoardWidth, (r, v) => r with { BoardWidth = v });
                break;
            case OpenRing: yield return at.Of<OpenRing, Angle>(RingFields.Gap, Codecs.Angle, r => r.Gap, (r, v) => r with { Gap = v }); break;
            case StaveRing: yield return at.Of<StaveRing, Angle?>(RingFields.Lean, Codecs.Angle.OrBlank(), r => r.Lean, (r, v) => r with { Lean = v }); break;
            case LaminatedRing: yield return at.Of<LaminatedRing, Angle>(RingFields.Recut, Codecs.Angle, r => r.Recut, (r, v) => r with { Recut = v }); break;
            case BoardRing: yield return at.Of<BoardRing, string>(RingFields.Board, Codecs.Words, r => r.Board, (r, v) => r with { Board = v }); break;
            case SolidLayer: yield return at.Of<SolidLayer, string>(RingFields.Wood, Codecs.Words, r => r.Wood, (r, v) => r with { Wood = v }); break;
            default: break;
        }
    }

    private static IEnumerable<Lens> Rest(RingLens at, Ring ring)
    {
        yield return at.Of<Ring, Length?>(RingFields.Allowance, Codecs.Length.OrBlank(), r => r.Allowance, (r, v) => r with { Allowance = v });
        // Of a layer of one piece the whole turn is its only segment.
        Field shift = ring is SolidLayer ? RingFields.Shift with { Label = "Grain turned by", Hint = "Full turns; 0.25 lays it across" } : RingFields.Shift;
        yield return at.Of<Ring, double>(shift, Codecs.Number(""), r => r.Shift, (r, v) => r with { Shift = v });
        yield return at.Named<Ring, string>(RingFields.Name, Codecs.Words, r => r.Name, (r, v) => r with { Name = v });
    }
}

/// <summary>Makes lenses on one ring.</summary>
internal sealed class RingLens(int index)
{
    private readonly Place _place = new(Station.Shape, work => $"ring {work.Piece.Rings[index].Name}, ", "", index) { Url = "/shape/rings" };

    public Lens Of<TRing, T>(Field field, Codec<T> codec, Func<TRing, T> get, Func<TRing, T, Ring> set)
        where TRing : Ring => At(_place, field, codec, get, set);

    // The piece's name stands on every page and has the id that this one would have.
    public Lens Named<TRing, T>(Field field, Codec<T> codec, Func<TRing, T> get, Func<TRing, T, Ring> set)
        where TRing : Ring => At(_place with { IdPrefix = "ring-" }, field, codec, get, set);

    private Lens At<TRing, T>(Place place, Field field, Codec<T> codec, Func<TRing, T> get, Func<TRing, T, Ring> set)
        where TRing : Ring => Lens.Of(place, field, codec, work => get((TRing)work.Piece.Rings[index]), (work, value) => work.WithRing(index, set((TRing)work.Piece.Rings[index], value)));
}
