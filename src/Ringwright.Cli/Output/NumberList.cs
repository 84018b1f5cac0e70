using System.Globalization;
using Ringwright.Core;

namespace Ringwright.Cli.Output;

/// <summary>Reads lists such as <c>12,18,24</c>, <c>6-48</c> and <c>8-40/4</c> (from-to/step).</summary>
internal static class NumberList
{
    private const int Most = 5000;

    public static IEnumerable<double> Read(string option, string text)
    {
        var numbers = new List<double>();
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            string[] range = part.Split('/', 2);
            string[] ends = range[0].Split('-', 2);
            double from = Number(option, ends[0]);
            double to = ends.Length == 2 ? Number(option, ends[1]) : from;
            double step = range.Length == 2 ? Number(option, range[1]) : 1;
            if (step <= 0 || to < from || (to - from) / step > Most)
                throw new BadInputException(option, $"“{part}” is no range", "from-to/step is needed, such as 8-40/4");
            for (int i = 0; from + (i * step) <= to + (1e-9 * step); i++) numbers.Add(from + (i * step));
        }

        return numbers;
    }

    /// <summary>The same for whole numbers.</summary>
    public static IEnumerable<int> Whole(string option, string text) => Read(option, text).Select(value => value == Math.Floor(value) && value <= int.MaxValue
        ? (int)value
        : throw new BadInputException(option, $"{value.ToString("R", CultureInfo.InvariantCulture)} is no whole number", "whole numbers such as 12,18,24 are needed"));

    private static double Number(string option, string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new BadInputException(option, $"“{text}” is no number", "numbers such as 12,18,24 or a range such as 8-40/4 are needed");
}
