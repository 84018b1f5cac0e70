using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>
/// Reads caliper readings from comma-separated values: a heading <c>number,wood,rim,tip</c>, then a line for each wedge.
/// For a dry fit two more columns, <c>rim above,tip above</c>, may tell the upper side by itself.
/// </summary>
internal static class ReadingsFile
{
    private const string Once = "number,wood,rim,tip", Twice = Once + ",rim above,tip above";
    private const string Right = $"a heading {Once} and lines such as 7,maple,2.61,0.12 are needed";
    private const string RightTwice = $"a heading {Twice} and lines such as 7,maple,2.61,0.12,2.63,0.13 are needed";

    /// <summary>Wedges read at one side.</summary>
    public static IReadOnlyList<CaliperReading> Read(string path, LengthUnit unit)
    {
        (string heading, (string Line, string Place)[] lines) = Lines(path);
        if (heading != Plain(Once)) throw new BadInputException($"{Path.GetFileName(path)}, line 1", heading == Plain(Twice) ? "wedges are chosen by one side only" : "the heading is missing", Right);
        return [.. lines.Select(l => Reading(Cells(l.Line, l.Place, 4, Right), 2, l.Place, unit, Right))];
    }

    /// <summary>Wedges read at one side or at both.</summary>
    public static IReadOnlyList<MeasuredWedge> ReadWedges(string path, LengthUnit unit)
    {
        (string heading, (string Line, string Place)[] lines) = Lines(path);
        if (heading != Plain(Twice)) return [.. Read(path, unit).Select(r => new MeasuredWedge(r))];
        return [.. lines.Select(l => (Cells: Cells(l.Line, l.Place, 6, RightTwice), l.Place))
            .Select(l => new MeasuredWedge(Reading(l.Cells, 2, l.Place, unit, RightTwice), Reading(l.Cells, 4, l.Place, unit, RightTwice)))];
    }

    private static (string Heading, (string Line, string Place)[] Lines) Lines(string path)
    {
        string[] lines = SafeFile.ReadText(path).Split('\n', StringSplitOptions.TrimEntries);
        string file = Path.GetFileName(path);
        return (Plain(lines[0]), [.. lines.Skip(1).Select((line, i) => (line, $"{file}, line {i + 2}")).Where(l => l.line.Length > 0)]);
    }

    private static string Plain(string heading) => heading.Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();

    private static string[] Cells(string line, string place, int count, string right)
    {
        string[] cells = line.Split(',', StringSplitOptions.TrimEntries);
        return cells.Length == count ? cells : throw new BadInputException(place, $"it has {cells.Length} values", right);
    }

    // The rim's width stands in the given column, the tip's in the next.
    private static CaliperReading Reading(string[] cells, int rim, string place, LengthUnit unit, string right)
    {
        if (!int.TryParse(cells[0], NumberStyles.None, CultureInfo.InvariantCulture, out int number))
            throw new BadInputException(place, $"“{cells[0]}” is no wedge number", right);
        return new(number, cells[1], TypedText.Length(place, cells[rim], unit, right).Millimetres, TypedText.Length(place, cells[rim + 1], unit, right).Millimetres);
    }
}
