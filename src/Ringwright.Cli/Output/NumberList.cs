using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>Reads lists such as <c>12,18,24</c>, <c>6-48</c> and <c>8-40/4</c> (from-to/step; the step is 1 where none is told).</summary>
internal static class NumberList
{
    private const int Most = 5000;

    /// <summary>Whole numbers.</summary>
    public static IEnumerable<int> Whole(string option, string text) => Read(option, text, part => Number(option, part)).Select(value => value == Math.Floor(value) && value <= int.MaxValue
        ? (int)value
        : throw new BadInputException(option, $"{value.ToString("R", CultureInfo.InvariantCulture)} is no whole number", "whole numbers such as 12,18,24 are needed"));

    /// <summary>Lengths, in mm; bare numbers are in the given unit.</summary>
    public static IEnumerable<double> Lengths(string option, string text, LengthUnit unit) =>
        Read(option, text, part => TypedText.Length(option, part, unit, "lengths such as 12,19,25.4 or 3/4 in, or a range such as 8-40/4, are needed").Millimetres);

    private static List<double> Read(string option, string text, Func<string, double> number)
    {
        var numbers = new List<double>();
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            // A stroke behind a dash tells the step; without a dash it is a fraction's.
            string[] ends = part.Split('-', 2);
            string[] last = ends.Length == 2 ? ends[1].Split('/', 2) : [ends[0]];
            double from = number(ends[0]), to = number(last[0]), step = number(last.Length == 2 ? last[1] : "1");
            if (step <= 0 || to < from || (to - from) / step > Most)
                throw new BadInputException(option, $"“{part}” is no range", "from-to/step is needed, such as 8-40/4");
            for (int i = 0; from + (i * step) <= to + (1e-9 * step); i++) numbers.Add(from + (i * step));
        }

        return numbers;
    }

    private static double Number(string option, string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new BadInputException(option, $"“{text}” is no number", "numbers such as 12,18,24 or a range such as 8-40/4 are needed");
}
