using System.Collections.Immutable;
using Ringwright.Core.Patterns;

namespace Ringwright.Core.Tests.Patterns;

/// <summary>Lattices as text, as the piece is seen: top ring first, segments from left to right counter-clockwise, a wood by its first letter.</summary>
internal static class Text
{
    public static Lattice Even(int rings, int segments) => Of([.. Enumerable.Repeat(segments, rings)]);

    public static Lattice BrickLaid(int rings, int segments) =>
        new(Enumerable.Range(0, rings).Select(r => new LatticeRing(segments, r % 2 * 0.5, 50, 10)));

    public static Lattice Of(params int[] segmentsFromTheBottom) => new(segmentsFromTheBottom.Select(n => new LatticeRing(n, 0, 50, 10)));

    public static string Draw(Pattern pattern, Lattice lattice) => Draw(pattern.On(lattice));

    public static string Draw(ImmutableArray<ImmutableArray<string>> rows) =>
        string.Join('\n', rows.Reverse().Select(row => string.Concat(row.Select(w => w[0]))));

    public static void Shows(string expected, Pattern pattern, Lattice lattice) =>
        Assert.Equal(expected.ReplaceLineEndings("\n"), Draw(pattern, lattice));
}
