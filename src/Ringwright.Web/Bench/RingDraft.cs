using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench;

/// <summary>Which way a ring is built.</summary>
public enum Construction
{
    /// <summary>A solid disc of wedges.</summary>
    WedgeDisc,

    /// <summary>A closed ring around an open middle.</summary>
    SegmentRing,
}

/// <summary>What decides how far a wedge reaches inwards.</summary>
public enum InnerBy
{
    /// <summary>The flat at its tip.</summary>
    Tip,

    /// <summary>The width of a board that is there already.</summary>
    BoardWidth,
}

/// <summary>
/// A ring as it stands in the fields: texts as typed, readable or not. Holds the texts of both constructions, so that
/// switching back brings them back. Immutable.
/// </summary>
/// <param name="Construction">The construction chosen.</param>
/// <param name="InnerBy">Whether tip or board width counts.</param>
/// <param name="Texts">The text of each field in <see cref="RingFields.All"/>, by key.</param>
/// <param name="Woods">The woods, repeated around the ring.</param>
public sealed record RingDraft(Construction Construction, InnerBy InnerBy, ImmutableSortedDictionary<string, string> Texts, ImmutableArray<string> Woods)
{
    /// <summary>The fields of <paramref name="ring"/> as texts.</summary>
    public static RingDraft Of(Ring ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        var disc = ring as WedgeDisc;
        var texts = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        texts[RingFields.Segments.Key] = ring.Around.ToString(CultureInfo.InvariantCulture);
        texts[RingFields.Diameter.Key] = ring.Outside.Written;
        texts[RingFields.InnerDiameter.Key] = (ring as SegmentRing)?.InnerDiameter?.Written ?? "";
        texts[RingFields.Thickness.Key] = ring.Thickness.Written;
        texts[RingFields.Tip.Key] = disc?.Tip?.Written ?? "";
        texts[RingFields.BoardWidth.Key] = disc?.BoardWidth?.Written ?? "";
        texts[RingFields.Bore.Key] = disc?.Bore?.Written ?? "";
        texts[RingFields.Allowance.Key] = ring.Allowance?.Written ?? "";
        return new(
            disc is null ? Construction.SegmentRing : Construction.WedgeDisc,
            disc?.BoardWidth is null ? InnerBy.Tip : InnerBy.BoardWidth,
            texts.ToImmutable(),
            ring.Cycle);
    }

    /// <summary>The text of <paramref name="field"/>.</summary>
    public string this[Field field] => Texts.GetValueOrDefault(field.Key, "");

    /// <summary>With another text in <paramref name="field"/>.</summary>
    public RingDraft With(Field field, string text) => this with { Texts = Texts.SetItem(field.Key, text) };

    /// <summary>The fields that count for the construction chosen.</summary>
    public IEnumerable<Field> Fields() => RingFields.All.Where(Counts);

    private bool Counts(Field field) =>
        Construction == Construction.SegmentRing
            ? field != RingFields.Tip && field != RingFields.BoardWidth && field != RingFields.Bore
            : field != RingFields.InnerDiameter && field != (InnerBy == InnerBy.Tip ? RingFields.BoardWidth : RingFields.Tip);

    /// <summary>
    /// With the other construction; what was typed for either stays. A ring that never had an inner diameter starts with
    /// half the outer one.
    /// </summary>
    public RingDraft Built(Construction construction, LengthUnit unit)
    {
        RingDraft switched = this with { Construction = construction };
        if (construction != Construction.SegmentRing || this[RingFields.InnerDiameter].Length > 0) return switched;
        return Length.TryParse(this[RingFields.Diameter], unit, out Length outer, out _)
            ? switched.With(RingFields.InnerDiameter, Length.FromMillimetres(Math.Round(outer.Millimetres / 2, 2)).Written)
            : switched;
    }
}
