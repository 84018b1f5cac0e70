using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench;

/// <summary>Reads a draft's texts into a piece and a shop, collecting every text that cannot be read.</summary>
internal sealed class DraftReader(Draft draft)
{
    private readonly ImmutableArray<FieldProblem>.Builder _problems = ImmutableArray.CreateBuilder<FieldProblem>();
    private int _ring;

    public ImmutableArray<FieldProblem> Problems => _problems.ToImmutable();

    /// <summary>The piece; what has no field of its own is taken from <paramref name="origin"/>.</summary>
    public Piece Piece(Piece origin) => origin with
    {
        Name = draft.Name,
        Units = draft.Units.Unit(),
        Rings = [.. draft.Rings.Select((ring, i) => Ring(ring, origin.Rings[i], i))],
    };

    /// <summary>The shop; what has no field of its own is taken from <paramref name="origin"/>.</summary>
    public Shop Shop(Shop origin)
    {
        Shop shop = origin with { Sled = origin.Sled with { Kind = draft.Sled } };
        foreach (ShopField field in ShopFields.All)
        {
            (shop, ParseError? error) = field.Put(shop, draft.ShopText(field), draft.Units.Unit());
            if (error is not null) Report(null, field.Field, error);
        }

        return shop;
    }

    private Ring Ring(RingDraft ring, Ring origin, int index)
    {
        _ring = index;
        return ring.Construction == Construction.WedgeDisc ? Disc(ring, origin) : Open(ring, origin);
    }

    private WedgeDisc Disc(RingDraft ring, Ring origin) => new()
    {
        Name = origin.Name,
        Unknown = origin.Unknown,
        Segments = Whole(ring, RingFields.Segments),
        Diameter = Needed(ring, RingFields.Diameter),
        Thickness = Needed(ring, RingFields.Thickness),
        Allowance = Optional(ring, RingFields.Allowance),
        Woods = ring.Woods,
        Tip = ring.InnerBy == InnerBy.Tip ? Optional(ring, RingFields.Tip) : null,
        BoardWidth = ring.InnerBy == InnerBy.BoardWidth ? Needed(ring, RingFields.BoardWidth) : null,
        Bore = Optional(ring, RingFields.Bore),
    };

    private SegmentRing Open(RingDraft ring, Ring origin) => new()
    {
        Name = origin.Name,
        Unknown = origin.Unknown,
        Segments = Whole(ring, RingFields.Segments),
        Diameter = Needed(ring, RingFields.Diameter),
        InnerDiameter = Needed(ring, RingFields.InnerDiameter),
        Thickness = Needed(ring, RingFields.Thickness),
        Allowance = Optional(ring, RingFields.Allowance),
        Woods = ring.Woods,
    };

    private int Whole(RingDraft ring, Field field)
    {
        if (!FieldText.TryWhole(ring[field], out int value, out ParseError? error)) Report(_ring, field, error);
        return value;
    }

    private Length Needed(RingDraft ring, Field field)
    {
        if (!Length.TryParse(ring[field], draft.Units.Unit(), out Length length, out ParseError? error)) Report(_ring, field, error);
        return length;
    }

    private Length? Optional(RingDraft ring, Field field) => string.IsNullOrWhiteSpace(ring[field]) ? null : Needed(ring, field);

    private void Report(int? ring, Field field, ParseError error) => _problems.Add(new(ring, field.Key, Capital(error.Sentence) + ".", error));

    internal static string Capital(string sentence) => sentence.Length == 0 ? sentence : char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
