using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns;

/// <summary>Words and checks that patterns share.</summary>
internal static class PatternWords
{
    /// <summary>"maple, walnut and cherry".</summary>
    public static string List(ImmutableArray<string> woods) =>
        woods.Length == 1 ? woods[0] : $"{string.Join(", ", woods.SkipLast(1))} and {woods[^1]}";

    /// <summary>"1 ring", "2.5 rings".</summary>
    public static string Count(double value, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{value:0.###} {what}{(value == 1 ? "" : "s")}");

    /// <summary>", counted on 24 columns around", or nothing when the piece decides.</summary>
    public static string Columns(int? columns) => columns is { } c ? $", counted on {c} columns around" : "";

    /// <summary>At least one wood, each with a name.</summary>
    public static void CheckWoods(string where, ImmutableArray<string> woods)
    {
        if (woods.IsDefaultOrEmpty) throw new BadInputException(where, "no wood is named", "name at least one");
        foreach (string wood in woods) CheckWood(where, wood);
    }

    /// <summary>A wood with a name.</summary>
    public static void CheckWood(string where, string wood)
    {
        if (string.IsNullOrWhiteSpace(wood)) throw new BadInputException(where, "a wood has no name", "write its name, such as \"maple\"");
        if (wood.Length > 40) throw new BadInputException(where, $"the wood's name “{wood}” is longer than 40 characters", "write a short name, such as \"maple\"");
    }

    /// <summary>Columns around that a ring could have.</summary>
    public static void CheckColumns(string where, int? columns)
    {
        if (columns is { } c) Require.Count($"{where}, columns", c, 1, 3600);
    }

    /// <summary>Sentences on a period that does not go evenly around, and on rings with too few segments to show every column.</summary>
    public static IEnumerable<string> Doubts(Lattice lattice, int? columns, double period, string what)
    {
        int around = columns ?? lattice.MostSegments;
        double times = around / period;
        if (Math.Abs(times - Math.Round(times)) > 1e-9)
            yield return string.Create(CultureInfo.InvariantCulture, $"{around} columns around hold {times:0.##} {what}: where the pattern meets its start it jumps.");
        foreach (var rings in lattice.Rings.Select((ring, r) => (ring.Segments, Number: r + 1)).GroupBy(x => x.Segments).Where(g => g.Key < around))
            yield return $"Ring {rings.First().Number}: its {rings.Key} segments show only {rings.Key} of the pattern's {around} columns.";
    }
}
