using System.Text.RegularExpressions;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Bench;

/// <summary>A figure's formula with its values put in.</summary>
public static partial class WhyText
{
    /// <summary>
    /// The formula with each symbol replaced by its value. Inches are printed with decimals here: a fraction inside a formula
    /// reads as a division.
    /// </summary>
    public static string PutIn(Why why, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(why);
        ArgumentNullException.ThrowIfNull(style);
        MeasureStyle plain = style.Fractions ? MeasureStyle.InchDecimals : style;
        return Symbol().Replace(why.Formula, match =>
        {
            foreach (Input input in why.Inputs)
                if (input.Symbol == match.Value) return plain.Print(input.Value, input.Quantity);
            return match.Value;
        });
    }

    [GeneratedRegex(@"\b[A-Za-z]+\b")]
    private static partial Regex Symbol();
}
