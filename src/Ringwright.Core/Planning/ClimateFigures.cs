using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>What the wood's moisture comes to in the shop and at home.</summary>
internal static class ClimateFigures
{
    private const string Source = "Hailwood and Horrobin's equation, Wood Handbook FPL-GTR-190, eq. 4-5";
    private const string Formula = "18/W·(K·h/(1 − K·h) + (K1·K·h + 2·K1·K2·K^2·h^2)/(1 + K1·K·h + K1·K2·K^2·h^2))";

    public static void Add(Climate climate, FigureBook book)
    {
        Add("moisture-shop-winter", "Wood in the shop, winter", climate.Shop.Winter, book);
        Add("moisture-shop-summer", "Wood in the shop, summer", climate.Shop.Summer, book);
        Add("moisture-home-winter", "Wood at home, winter", climate.Home.Winter, book);
        Add("moisture-home-summer", "Wood at home, summer", climate.Home.Summer, book);
    }

    private static void Add(string name, string label, Air air, FigureBook book)
    {
        var at = Moisture.AtCelsius(air.Temperature.Celsius);
        book.Know("h", $"relative humidity, at {air.Temperature}", air.Humidity / 100, Quantity.Share);
        book.Know("W", "the equation's constant W at this temperature", at.W, Quantity.Ratio);
        book.Know("K", "the equation's constant K", at.K, Quantity.Ratio);
        book.Know("K1", "the equation's constant K1", at.K1, Quantity.Ratio);
        book.Know("K2", "the equation's constant K2", at.K2, Quantity.Ratio);
        book.Add(name, label, Moisture.Of(air) / 100, Quantity.Share, Formula, "h W K K1 K2", "What wood comes to when this air stays for weeks; a meter in the wood says what it is today.", Source);
    }
}
