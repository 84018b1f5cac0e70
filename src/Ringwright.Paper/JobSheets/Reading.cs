using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;

namespace Ringwright.Paper.JobSheets;

/// <summary>A figure of the plan as a number to read from a metre, its unit smaller beside it.</summary>
internal static class Reading
{
    private static readonly string[] Units = ["mm", "in"];

    /// <summary>
    /// The figure. A length that is no whole 64th shows the nearest one large, and the exact decimals below it.
    /// </summary>
    public static KeyFigure Of(string caption, Figure figure, MeasureStyle style, string? note = null)
    {
        string text = style.Print(figure.Value, figure.Quantity);
        int bracket = text.IndexOf(" (", StringComparison.Ordinal);
        string? exact = bracket < 0 ? null : $"exactly {text[(bracket + 2)..].TrimEnd(')')} in";
        (string number, string unit) = Split(bracket < 0 ? text : text[..bracket]);
        return new(caption, number, unit, exact is null ? note : note is null ? exact : $"{exact}; {note}");
    }

    private static (string Number, string Unit) Split(string text)
    {
        string? unit = Units.FirstOrDefault(u => text.EndsWith($" {u}", StringComparison.Ordinal));
        return unit is null ? (text, "") : (text[..^(unit.Length + 1)], unit);
    }
}
