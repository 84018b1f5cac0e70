using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>Estimates in words, with no more figures than are known.</summary>
public static class CostWords
{
    /// <summary>Minutes, such as "about 5 h 30 min (4 h to 8 h)".</summary>
    public static string Time(Estimate minutes) => Ranged(OneTime(minutes.Low), OneTime(minutes.Likely), OneTime(minutes.High));

    /// <summary>One end of a time, or its middle, such as "5 h 30 min".</summary>
    public static string OneTime(double minutes) => Duration.Print(Estimate.RoundedMinutes(minutes));

    /// <summary>One end of an amount, or its middle, such as "34", without the currency.</summary>
    public static string OneAmount(double amount) => Number(amount);

    /// <summary>An amount of money, such as "about 34 (28 to 47)", with the shop's currency behind.</summary>
    public static string Amount(Estimate amount, Money? money)
    {
        string currency = money?.Currency is { Length: > 0 } word ? " " + word : "";
        return Ranged(Number(amount.Low), Number(amount.Likely) + currency, Number(amount.High));
    }

    /// <summary>A volume of wood: litres, or board feet for a reader of inches.</summary>
    public static string Wood(Estimate volume, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(style);
        bool inch = style.Unit == LengthUnit.Inch;
        double unit = inch ? 144 * Math.Pow(MeasureStyle.MillimetresPerInch, 3) : 1e6;
        return Ranged(Number(volume.Low / unit), Number(volume.Likely / unit) + (inch ? " board feet" : " litres"), Number(volume.High / unit));
    }

    private static string Ranged(string low, string likely, string high) => low == high ? likely : $"about {likely} ({low} to {high})";

    private static string Number(double value) => Estimate.Rounded(value).ToString("#,0.##", CultureInfo.InvariantCulture);
}
