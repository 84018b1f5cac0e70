using Ringwright.Core.Pieces;
using Ringwright.Web.Costs;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of how quick these hands are, and of what wood and time are worth.</summary>
public static class CostLenses
{
    private static readonly ShopLens Hands = new(Station.Lathe, CostPage.Address, "hands."), Rate = new(Station.Lathe, CostPage.Address, "pace."), Worth = new(Station.Lathe, CostPage.Address, "money.");

    /// <summary>How long each kind of work takes.</summary>
    public static ImmutableArray<Lens> Pace { get; } =
    [
        Rate.Number("minutesPerSetting", "To set planer or rip fence", "Once, with a trial cut", "min", s => s.Pace.MinutesPerSetting, (s, v) => s with { Pace = s.Pace with { MinutesPerSetting = v } }),
        Rate.Number("minutesPerStrip", "To rip and plane a strip", "At a setting that stands", "min", s => s.Pace.MinutesPerStrip, (s, v) => s with { Pace = s.Pace with { MinutesPerStrip = v } }),
        Rate.Number("minutesPerFenceSetting", "To set the fences", "For one kind of wedge", "min", s => s.Pace.MinutesPerFenceSetting, (s, v) => s with { Pace = s.Pace with { MinutesPerFenceSetting = v } }),
        Hands.Number("minutesPerCut", "For one cut", "At the saw", "min", s => s.Hands.MinutesPerCut, (s, v) => s with { Hands = s.Hands with { MinutesPerCut = v } }),
        Hands.Number("cutsWorth", "Known from so many cuts", "More make it surer", "cuts", "never timed", s => s.Hands.CutsWorth, (s, v) => s with { Hands = s.Hands with { CutsWorth = v } }),
        Hands.Number("minutesPerFace", "To sand a joint face", "At the sander", "min", s => s.Hands.MinutesPerFace, (s, v) => s with { Hands = s.Hands with { MinutesPerFace = v } }),
        Hands.Number("facesWorth", "Known from so many faces", "More make it surer", "faces", "never timed", s => s.Hands.FacesWorth, (s, v) => s with { Hands = s.Hands with { FacesWorth = v } }),
        Rate.Number("minutesPerMounting", "To mount it on the lathe", "Once", "min", s => s.Pace.MinutesPerMounting, (s, v) => s with { Pace = s.Pace with { MinutesPerMounting = v } }),
        Rate.Number("minutesPerLitre", "To turn away one litre", "61 in³ of wood", "min", s => s.Pace.MinutesPerLitre, (s, v) => s with { Pace = s.Pace with { MinutesPerLitre = v } }),
        Rate.Number("minutesPerSquareDecimetre", "To finish one dm²", "15.5 in² of surface", "min", s => s.Pace.MinutesPerSquareDecimetre, (s, v) => s with { Pace = s.Pace with { MinutesPerSquareDecimetre = v } }),
        Rate.Number("spread", "Longer or shorter by", "Times; 1 when all is timed", "", s => s.Pace.Spread, (s, v) => s with { Pace = s.Pace with { Spread = v } }),
    ];

    /// <summary>What an hour and the rest are worth.</summary>
    public static ImmutableArray<Lens> Money { get; } =
    [
        Worth.Words("currency", "Currency", "Stands behind amounts", "none", s => s.Money?.Currency, (s, v) => With(s, m => m with { Currency = v })),
        Worth.Number("hour", "An hour of work", "Its worth", "", "not counted", s => s.Money?.Hour, (s, v) => With(s, m => m with { Hour = v })),
        Worth.Number("supplies", "Glue, abrasives, finish", "For one piece", "", "not counted", s => s.Money?.Supplies, (s, v) => With(s, m => m with { Supplies = v })),
        Worth.Share("markup", "On top, for the price", "In % of the cost", "none", s => s.Money?.Markup, (s, v) => With(s, m => m with { Markup = v })),
    ];

    /// <summary>Those that every shop has.</summary>
    public static ImmutableArray<Lens> All { get; } = [.. Pace, .. Money];

    /// <summary>The price of each wood that the piece is made of, and of each other wood that has one.</summary>
    public static IEnumerable<Lens> Prices(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        return WoodsOf(work).Index().Select(w => Price(w.Index, w.Item));
    }

    /// <summary>The woods that can have a price: those of the piece, and others that have one.</summary>
    public static ImmutableArray<string> WoodsOf(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        return [.. work.Piece.Rings.SelectMany(r => r.Cycle.Concat(r is MixedRing mixed ? mixed.Parts.Select(p => p.Wood) : [])).Concat(Priced(work.Shop).Select(p => p.Wood)).Select(w => w.Trim()).Where(w => w.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>A wood's price; null when it has none.</summary>
    public static WoodPrice? PriceOf(Shop shop, string wood) => Priced(shop).FirstOrDefault(p => Same(p.Wood, wood));

    /// <summary>The shop with another price of a wood, or without one.</summary>
    public static Shop WithPrice(Shop shop, string wood, Func<WoodPrice?, WoodPrice?> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        ImmutableArray<WoodPrice> prices = Priced(shop);
        int at = prices.Index().Where(p => Same(p.Item.Wood, wood)).Select(p => p.Index).FirstOrDefault(-1);
        WoodPrice? changed = change(at < 0 ? null : prices[at]);
        prices = changed is null ? at < 0 ? prices : prices.RemoveAt(at) : at < 0 ? prices.Add(changed) : prices.SetItem(at, changed);
        return With(shop, m => m with { Woods = prices.IsEmpty ? null : prices });
    }

    private static ImmutableArray<WoodPrice> Priced(Shop shop) => shop.Money?.Woods is { IsDefault: false } woods ? woods : [];

    private static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    private static Lens Price(int index, string wood) => Lens.Of(
        new Place(Station.Lathe, w => $"money.woods, {PriceOf(w.Shop, wood)?.Wood ?? wood}, ", $"wood-{index + 1}-") { Url = CostPage.Address },
        new Field("price", $"Price of {wood}", FieldKind.Number, "Rough, as it is bought", "no price"),
        Codecs.Number("").OrBlank(),
        w => PriceOf(w.Shop, wood)?.Price,
        (w, v) => w.WithShop(s => WithPrice(s, wood, p => v is double price ? (p ?? new WoodPrice { Wood = wood, Price = price }) with { Price = price } : null)));

    // A shop without prices has no group for them in its file.
    private static Shop With(Shop shop, Func<Money, Money> change)
    {
        Money changed = change(shop.Money ?? new());
        return shop with { Money = changed == new Money() ? null : changed };
    }
}
