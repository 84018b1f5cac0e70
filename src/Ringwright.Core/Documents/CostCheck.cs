using Ringwright.Core.Pieces;
using static Ringwright.Core.Documents.ShopCheck;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a shop's pace and prices can be. Each refusal names field and value.</summary>
internal static class CostCheck
{
    private const double MostMinutes = 1440, MostMoney = 1e9;

    public static void Check(Shop shop)
    {
        Pace pace = shop.Pace;
        Between("pace.minutesPerSetting", pace.MinutesPerSetting, 0, MostMinutes);
        Between("pace.minutesPerStrip", pace.MinutesPerStrip, 0, MostMinutes);
        Between("pace.minutesPerFenceSetting", pace.MinutesPerFenceSetting, 0, MostMinutes);
        Between("pace.minutesPerMounting", pace.MinutesPerMounting, 0, MostMinutes);
        Between("pace.minutesPerLitre", pace.MinutesPerLitre, 0, MostMinutes);
        Between("pace.minutesPerSquareDecimetre", pace.MinutesPerSquareDecimetre, 0, MostMinutes);
        Between("pace.spread", pace.Spread, 1, 10);
        if (shop.Money is Money money) Check(money);
    }

    private static void Check(Money money)
    {
        if (money.Currency is { Length: > 8 }) throw new BadInputException("money.currency", "it is longer than 8 characters", "a short word or sign is needed");
        if (money.Hour is double hour) Between("money.hour", hour, 0, MostMoney);
        if (money.Supplies is double supplies) Between("money.supplies", supplies, 0, MostMoney);
        if (money.Markup is double markup) Between("money.markup", markup, 0, 100);
        if (money.Woods is not { IsDefault: false } woods) return;
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (WoodPrice? wood in woods)
        {
            if (wood is null || string.IsNullOrWhiteSpace(wood.Wood)) throw new BadInputException("money.woods", "one has no wood", "name the wood of each price");
            Between($"money.woods, {wood.Wood}, price", wood.Price, 0, MostMoney);
            if (!names.Add(wood.Wood.Trim())) throw new BadInputException($"money.woods, {wood.Wood}", "it has two prices", "one is needed");
        }
    }
}
