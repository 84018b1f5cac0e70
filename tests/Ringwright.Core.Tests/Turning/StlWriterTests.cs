using System.Numerics;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

public class StlWriterTests
{
    [Fact]
    public void A_reader_that_knows_only_the_format_finds_the_same_closed_solid()
    {
        var mesh = TurnedMesh.Of([Rings.Closed(Rings.Section((0, 30, 0), (4, 30, 0), (4, 30, 20), (10, 28, 22)), 5)], Facets.Fixed(6));
        byte[] stl = StlWriter.Write(mesh);
        using BinaryReader reader = new(new MemoryStream(stl));
        Assert.False(new string(reader.ReadChars(80)).StartsWith("solid", StringComparison.Ordinal));
        int count = reader.ReadInt32();
        Assert.Equal(mesh.TriangleCount, count);
        Assert.Equal(84 + (50 * count), stl.Length);
        double volume = 0;
        List<float> positions = [];
        for (int i = 0; i < count; i++)
        {
            (Vector3 normal, Vector3 a, Vector3 b, Vector3 c) = (Read(reader), Read(reader), Read(reader), Read(reader));
            Assert.Equal(0, reader.ReadInt16());
            Assert.True(Vector3.Dot(normal, Vector3.Normalize(Vector3.Cross(b - a, c - a))) > 0.9999);
            volume += Vector3.Dot(a, Vector3.Cross(b, c)) / 6.0;
            foreach (Vector3 p in new[] { a, b, c }) positions.AddRange([p.X, p.Y, p.Z]);
        }

        Assert.Equal(1, volume / mesh.Volume(), 1e-5);
        AssertMeetsItself([.. positions]);
    }

    // Segments touch, so an edge may be used more than once each way; but as often there as back.
    private static void AssertMeetsItself(float[] positions)
    {
        int[] welded = MeshChecks.Welded(positions, [.. Enumerable.Range(0, positions.Length / 3)]);
        Dictionary<(int, int), int> balance = [];
        for (int i = 0; i < welded.Length; i++)
        {
            (int a, int b) = (welded[i], welded[i % 3 == 2 ? i - 2 : i + 1]);
            (int, int) edge = a < b ? (a, b) : (b, a);
            balance[edge] = balance.GetValueOrDefault(edge) + (a < b ? 1 : -1);
        }

        Assert.All(balance.Values, b => Assert.Equal(0, b));
    }

    private static Vector3 Read(BinaryReader reader) => new(reader.ReadSingle(), reader.ReadSingle(), reader.ReadSingle());
}
