using System.Numerics;

namespace Ringwright.Core.Tests.Turning;

/// <summary>What must be true of closed triangles, worked out without the code under test.</summary>
internal static class MeshChecks
{
    /// <summary>Each edge is used exactly once in each direction.</summary>
    public static void AssertClosed(ReadOnlySpan<int> indices)
    {
        HashSet<(int, int)> edges = [];
        for (int i = 0; i < indices.Length; i += 3)
        {
            for (int k = 0; k < 3; k++)
            {
                (int, int) edge = (indices[i + k], indices[i + ((k + 1) % 3)]);
                Assert.NotEqual(edge.Item1, edge.Item2);
                Assert.True(edges.Add(edge), $"The edge {edge} is used twice in the same direction.");
            }
        }

        foreach ((int a, int b) in edges) Assert.Contains((b, a), edges);
    }

    /// <summary>Vertices − edges + triangles; 2 for each ball, 0 for each ring.</summary>
    public static int Euler(ReadOnlySpan<int> indices)
    {
        HashSet<int> vertices = [.. indices];
        return vertices.Count - (indices.Length / 2) + (indices.Length / 3);
    }

    /// <summary>The same triangles with vertices of the same place, to the bit, made one.</summary>
    public static int[] Welded(ReadOnlySpan<float> positions, ReadOnlySpan<int> indices)
    {
        Dictionary<Vector3, int> first = [];
        int[] welded = new int[indices.Length];
        for (int i = 0; i < indices.Length; i++)
        {
            Vector3 place = At(positions, indices[i]);
            if (!first.TryGetValue(place, out welded[i])) first[place] = welded[i] = indices[i];
        }

        return welded;
    }

    /// <summary>All numbers are finite and no triangle is without area, mm².</summary>
    public static void AssertSound(ReadOnlySpan<float> positions, ReadOnlySpan<int> indices, double leastArea = 1e-9)
    {
        foreach (float value in positions) Assert.True(float.IsFinite(value));
        for (int i = 0; i < indices.Length; i += 3)
        {
            Vector3 a = At(positions, indices[i]);
            Vector3 cross = Vector3.Cross(At(positions, indices[i + 1]) - a, At(positions, indices[i + 2]) - a);
            Assert.True(cross.Length() / 2 > leastArea, $"Triangle {i / 3} has the area {cross.Length() / 2}.");
        }
    }

    public static Vector3 At(ReadOnlySpan<float> positions, int vertex) => new(positions.Slice(3 * vertex, 3));
}
