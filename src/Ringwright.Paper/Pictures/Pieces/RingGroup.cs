using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>Rings above each other that share one line of the column beside a picture.</summary>
/// <param name="Rings">The rings from the bottom up.</param>
internal sealed record RingGroup(ImmutableArray<Ring> Rings)
{
    private const double Same = 1e-6; // mm

    // How many rings of one height at most share a line: the fewest that give few enough lines.
    private static readonly int[] Longest = [1, 5, 10, int.MaxValue];

    /// <summary>Its ring, or its first and its last.</summary>
    public (string First, string? Last) Names => (Rings[0].Name, Rings.Length == 1 ? null : Rings[^1].Name);

    /// <summary>
    /// Rings in at most so many lines: each by itself; if those are too many, rings of one height together; if those still are, as many
    /// together as it takes.
    /// </summary>
    public static ImmutableArray<RingGroup> Of(ImmutableArray<Ring> rings, int most)
    {
        foreach (int longest in Longest)
            if (Runs(rings, longest) is var runs && runs.Length <= most) return runs;
        return [.. rings.Chunk((int)Math.Ceiling((double)rings.Length / most)).Select(some => new RingGroup([.. some]))];
    }

    /// <summary>The height: of the ring, of each of several, or of all together where they differ.</summary>
    public string Height(MeasureStyle style)
    {
        string Text(double mm) => Caliper.Short(style, mm);
        double first = HeightOf(Rings[0]);
        if (Rings.Length == 1) return Text(first);
        return Rings.All(r => Math.Abs(HeightOf(r) - first) < Same)
            ? string.Create(CultureInfo.InvariantCulture, $"{Rings.Length} × {Text(first)}")
            : string.Create(CultureInfo.InvariantCulture, $"{Rings.Length} rings, {Text(Rings.Sum(HeightOf))}");
    }

    private static ImmutableArray<RingGroup> Runs(ImmutableArray<Ring> rings, int longest)
    {
        List<List<Ring>> runs = [];
        foreach (Ring ring in rings)
        {
            if (runs.Count > 0 && runs[^1].Count < longest && Math.Abs(HeightOf(runs[^1][0]) - HeightOf(ring)) < Same) runs[^1].Add(ring);
            else runs.Add([ring]);
        }

        return [.. runs.Select(run => new RingGroup([.. run]))];
    }

    private static double HeightOf(Ring ring) => ring.Thickness.Millimetres;
}
