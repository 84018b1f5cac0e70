using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>Reads caliper readings from comma-separated values: a heading <c>number,wood,rim,tip</c>, then a line for each wedge.</summary>
internal static class ReadingsFile
{
    private const string Right = "a heading number,wood,rim,tip and lines such as 7,maple,2.61,0.12 are needed";

    public static IReadOnlyList<CaliperReading> Read(string path, LengthUnit unit)
    {
        string[] lines = SafeFile.ReadText(path).Split('\n', StringSplitOptions.TrimEntries);
        string file = Path.GetFileName(path);
        if (!string.Equals(lines[0].Replace(" ", "", StringComparison.Ordinal), "number,wood,rim,tip", StringComparison.OrdinalIgnoreCase))
            throw new BadInputException($"{file}, line 1", "the heading is missing", Right);
        return [.. lines.Skip(1).Select((line, i) => (line, Place: $"{file}, line {i + 2}")).Where(l => l.line.Length > 0).Select(l => Reading(l.line, l.Place, unit))];
    }

    private static CaliperReading Reading(string line, string place, LengthUnit unit)
    {
        string[] cells = line.Split(',', StringSplitOptions.TrimEntries);
        if (cells.Length != 4) throw new BadInputException(place, $"it has {cells.Length} values", Right);
        if (!int.TryParse(cells[0], NumberStyles.None, CultureInfo.InvariantCulture, out int number))
            throw new BadInputException(place, $"“{cells[0]}” is no wedge number", Right);
        return new(number, cells[1], TypedText.Length(place, cells[2], unit, Right).Millimetres, TypedText.Length(place, cells[3], unit, Right).Millimetres);
    }
}
