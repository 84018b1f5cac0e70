using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Ringwright.Core.Measures;

namespace Ringwright.Web.Bench.Fields;

/// <summary>Reads the texts that are no lengths: whole numbers and percentages, with the character at fault.</summary>
public static class FieldText
{
    // More digits than any count or percentage here, few enough for exact arithmetic.
    private const int MostDigits = 9;

    /// <summary>Reads a whole number such as <c>24</c>.</summary>
    public static bool TryWhole(string text, out int value, [NotNullWhen(false)] out ParseError? error)
    {
        value = 0;
        int at = Start(text);
        int end = EndOfDigits(text, at);
        error = Judge(text, at, end, "a whole number is needed, such as 24");
        if (error is not null) return false;
        value = int.Parse(text.AsSpan(at, end - at), CultureInfo.InvariantCulture);
        return true;
    }

    /// <summary>Reads a percentage such as <c>4</c>, <c>4 %</c> or <c>99.5%</c> as a share from 0 to 1.</summary>
    public static bool TryPercent(string text, out double share, [NotNullWhen(false)] out ParseError? error)
    {
        share = 0;
        int at = Start(text);
        int end = EndOfDigits(text, at);
        if (end > at && end < text.Length && text[end] is '.' or ',') end = EndOfDigits(text, end + 1);
        int rest = end;
        while (rest < text.Length && char.IsWhiteSpace(text[rest])) rest++;
        if (rest < text.Length && text[rest] == '%') rest++;
        error = Judge(text, at, end, rest, "a percentage is needed, such as 4 %");
        if (error is not null) return false;
        share = (double)(decimal.Parse(text[at..end].Replace(',', '.'), CultureInfo.InvariantCulture) / 100);
        return true;
    }

    /// <summary>A share as a person would type it.</summary>
    public static string Percent(double share) => (Math.Round((decimal)share * 100, 6) / 1.000000m).ToString("0.######", CultureInfo.InvariantCulture) + " %";

    /// <summary>Reads a number such as <c>-0.5</c>, with <paramref name="unit"/> behind it or without.</summary>
    public static bool TryNumber(string text, string unit, out double value, [NotNullWhen(false)] out ParseError? error)
    {
        value = 0;
        int at = Start(text);
        int digits = at < text.Length && text[at] is '-' or '−' ? at + 1 : at;
        int end = EndOfDigits(text, digits);
        if (end > digits && end < text.Length && text[end] is '.' or ',') end = EndOfDigits(text, end + 1);
        int rest = end;
        while (rest < text.Length && char.IsWhiteSpace(text[rest])) rest++;
        if (unit.Length > 0 && text.AsSpan(rest).StartsWith(unit, StringComparison.OrdinalIgnoreCase)) rest += unit.Length;
        error = Judge(text, digits, end, rest, unit.Length > 0 ? $"a number is needed, such as 12 {unit}" : "a number is needed, such as 0.5");
        if (error is not null) return false;
        value = (double)decimal.Parse(text[at..end].Replace(',', '.').Replace('−', '-'), CultureInfo.InvariantCulture);
        return true;
    }

    /// <summary>A number as a person would type it.</summary>
    public static string Number(double value, string unit) => value.ToString("0.#######", CultureInfo.InvariantCulture) + (unit.Length > 0 ? " " + unit : "");

    /// <summary>The parts of a list between its commas, and where each begins. <c>2,5 mm</c> is one part: its comma is a decimal one.</summary>
    public static IEnumerable<(int From, string Part)> Parts(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int from = 0;
        for (int i = 0; i <= text.Length; i++)
        {
            bool decimalComma = i > 0 && i + 1 < text.Length && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1]);
            if (i < text.Length && (text[i] != ',' || decimalComma)) continue;
            yield return (from, text[from..i]);
            from = i + 1;
        }
    }

    private static int Start(string text)
    {
        int at = 0;
        while (at < text.Length && char.IsWhiteSpace(text[at])) at++;
        return at;
    }

    private static int EndOfDigits(string text, int from)
    {
        while (from < text.Length && char.IsAsciiDigit(text[from])) from++;
        return from;
    }

    private static ParseError? Judge(string text, int at, int end, string expected) => Judge(text, at, end, end, expected);

    private static ParseError? Judge(string text, int at, int end, int rest, string expected)
    {
        if (end == at) return new(text, at, expected);
        if (end - at > MostDigits) return new(text, at + MostDigits, $"at most {MostDigits} digits can be read");
        int tail = rest;
        while (tail < text.Length && char.IsWhiteSpace(text[tail])) tail++;
        return tail < text.Length ? new(text, tail, expected) : null;
    }
}
