using System.Collections.Immutable;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Patterns.Reports;

/// <summary>Two different woods that touch somewhere in a pattern.</summary>
/// <param name="Contrast">How well they keep apart.</param>
/// <param name="Ring">The lowest ring at which they touch, counted from 1.</param>
/// <param name="Joints">Number of joints and seams between the two.</param>
public sealed record NeighbourContrast(WoodContrast Contrast, int Ring, int Joints)
{
    /// <summary>What it means, for example "Walnut and wenge are hard to tell apart …; they meet at ring 3 first".</summary>
    public string Sentence => $"{Contrast.Sentence}; they touch first at ring {Ring}.";

    /// <summary>All pairs of different woods that touch, around a ring or from ring to ring, the weakest contrast first.</summary>
    /// <param name="lattice">The rings.</param>
    /// <param name="rows">The pattern as laid on them.</param>
    public static ImmutableArray<NeighbourContrast> Of(Lattice lattice, ImmutableArray<ImmutableArray<string>> rows)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        var pairs = new Dictionary<(string, string), (int Ring, int Joints)>();
        for (int r = 0; r < rows.Length; r++)
            foreach ((string one, string other) in Touching(lattice, rows, r))
                Note(pairs, one, other, r + 1);
        return [.. pairs.Select(p => new NeighbourContrast(WoodContrast.ContrastOf(p.Key.Item1, p.Key.Item2), p.Value.Ring, p.Value.Joints))
            .OrderBy(n => n.Contrast.Difference).ThenBy(n => n.Contrast.First, StringComparer.Ordinal)];
    }

    private static IEnumerable<(string, string)> Touching(Lattice lattice, ImmutableArray<ImmutableArray<string>> rows, int ring)
    {
        ImmutableArray<string> row = rows[ring];
        for (int k = 0; k < row.Length; k++)
        {
            yield return (row[k], row[(k + 1) % row.Length]);
            if (ring + 1 == rows.Length) continue;
            (double from, double to) = lattice.Span(ring, k);
            foreach ((int above, _) in lattice.Meeting(ring + 1, from, to)) yield return (row[k], rows[ring + 1][above]);
        }
    }

    private static void Note(Dictionary<(string, string), (int Ring, int Joints)> pairs, string one, string other, int ring)
    {
        (one, other) = (one.Trim().ToLowerInvariant(), other.Trim().ToLowerInvariant());
        int order = string.CompareOrdinal(one, other);
        if (order == 0) return;
        (string, string) key = order < 0 ? (one, other) : (other, one);
        pairs[key] = pairs.TryGetValue(key, out (int Ring, int Joints) known) ? known with { Joints = known.Joints + 1 } : (ring, 1);
    }
}
