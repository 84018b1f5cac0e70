using Ringwright.Core.Boards;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How much rough wood to buy, and what it costs.</summary>
internal static class WoodBills
{
    private const double CubicMillimetresPerLitre = 1e6;
    private const double CubicMillimetresPerBoardFoot = 144 * 25.4 * 25.4 * 25.4;

    // Boards have knots, checks and lengths that do not divide: a third more is usually bought. Common practice, no source.
    private const double Usual = 1.3, Most = 1.7;

    public static IEnumerable<WoodBill> Of(Plan plan, Money money) => StripDemands.Of(plan)
        .GroupBy(d => d.Wood, StringComparer.OrdinalIgnoreCase)
        .Select(wood =>
        {
            double volume = wood.Sum(d => Rough(d, plan.Shop));
            Estimate bought = new(volume, Usual * volume, Most * volume);
            WoodPrice? price = money.Woods is { IsDefault: false } prices ? prices.FirstOrDefault(p => string.Equals(p.Wood.Trim(), wood.Key, StringComparison.OrdinalIgnoreCase)) : null;
            return new WoodBill(wood.Key, bought, price is null ? null : bought * (price.Price / Measure(price.Per)));
        });

    // As many strips as boards of the shop's length give, each with its ends, before milling.
    private static double Rough(StripDemand demand, Shop shop)
    {
        double lost = shop.Saw.EndTrim.Millimetres + shop.Saw.HoldingLength.Millimetres, length = demand.LengthFor(demand.ToSaw);
        double strips = Math.Max(1, Math.Ceiling(length / Math.Max(1, shop.Boards.Length.Millimetres - lost)));
        return (length + (strips * lost)) * (demand.Width + shop.Milling.WidthAllowance.Millimetres) * (demand.Thickness + shop.Milling.ThicknessAllowance.Millimetres);
    }

    private static double Measure(WoodMeasure per) => per switch
    {
        WoodMeasure.BoardFoot => CubicMillimetresPerBoardFoot,
        WoodMeasure.CubicMetre => 1e9,
        _ => CubicMillimetresPerLitre,
    };
}
