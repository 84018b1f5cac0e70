using CsCheck;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

public class RandomMeshTests
{
    private static readonly Gen<int> Count = Gen.Int[3, 12];

    [Fact]
    public void Rings_of_radial_joints_are_closed_and_fill_their_ring() => Gen.Select(RandomRings.Radial, Count).Sample((ring, facets) =>
    {
        var mesh = TurnedMesh.Of([ring], Facets.Fixed(facets));
        MeshChecks.AssertClosed(mesh.Indices);
        MeshChecks.AssertSound(mesh.Positions, mesh.Indices);
        Assert.Equal(2 * ring.Segments.Length, MeshChecks.Euler(mesh.Indices));
        double expected = ring.Segments.Sum(s => PolygonShare(s, facets)) * SquaredRadii(ring.Section);
        Assert.Equal(1, mesh.Volume() / expected, 1e-6);
    }, iter: 300);

    [Fact]
    public void Whatever_the_sides_segments_are_closed_and_finite() => Gen.Select(RandomRings.AnySides, Count).Sample((ring, facets) =>
    {
        var mesh = TurnedMesh.Of([ring], Facets.Fixed(facets));
        MeshChecks.AssertClosed(mesh.Indices);
        foreach (float value in mesh.Positions) Assert.True(float.IsFinite(value));
        foreach (TurnedPart part in mesh.Parts)
        {
            int euler = MeshChecks.Euler(mesh.Indices.Slice(part.FirstIndex, part.IndexCount));
            Assert.True(euler % 2 == 0 && euler >= 0);
            Assert.True(mesh.Volume(part) >= -1e-3);
        }
    }, iter: 300);

    [Fact]
    public void Faces_with_their_own_corners_are_the_same_solid() => Gen.Select(RandomRings.AnySides, Count).Sample((ring, facets) =>
    {
        var shared = TurnedMesh.Of([ring], Facets.Fixed(facets));
        var own = TurnedMesh.Of([ring], Facets.Fixed(facets), MeshCorners.PerFace);
        Assert.Equal(shared.TriangleCount, own.TriangleCount);
        Assert.Equal(shared.Volume(), own.Volume(), 1e-6);
        Assert.Equal(own.Positions.Length, own.Normals.Length);
        for (int i = 0; i < shared.Indices.Length; i++) Assert.Equal(MeshChecks.At(shared.Positions, shared.Indices[i]), MeshChecks.At(own.Positions, own.Indices[i]));
        for (int v = 0; v < own.VertexCount; v++) Assert.Equal(1, MeshChecks.At(own.Normals, v).Length(), 1e-5);
    });

    [Fact]
    public void Normals_of_radial_rings_point_out_of_their_triangles() => Gen.Select(RandomRings.Radial, Count).Sample((ring, facets) =>
    {
        var mesh = TurnedMesh.Of([ring], Facets.Fixed(4 * facets), MeshCorners.PerFace);
        for (int i = 0; i < mesh.Indices.Length; i++)
        {
            int first = i - (i % 3);
            var a = MeshChecks.At(mesh.Positions, mesh.Indices[first]);
            var b = MeshChecks.At(mesh.Positions, mesh.Indices[first + 1]);
            var c = MeshChecks.At(mesh.Positions, mesh.Indices[first + 2]);
            var flat = System.Numerics.Vector3.Normalize(System.Numerics.Vector3.Cross(b - a, c - a));
            Assert.True(System.Numerics.Vector3.Dot(flat, MeshChecks.At(mesh.Normals, mesh.Indices[i])) > 0.6);
        }
    });

    // Area of a regular polygon's share over the segment's angle, for radius 1.
    private static double PolygonShare(TurnedSegment segment, int facets)
    {
        double angle = segment.To.Direction - segment.From.Direction;
        int count = Facets.Fixed(facets).Over(60, angle);
        return count / 2.0 * Math.Sin(angle / count);
    }

    private static double SquaredRadii(WallSection section)
    {
        double sum = 0;
        for (int i = 1; i < section.Levels.Length; i++)
        {
            WallLevel a = section.Levels[i - 1];
            WallLevel b = section.Levels[i];
            sum += (b.Z - a.Z) / 3 * (Thirds(a.Outer, b.Outer) - Thirds(a.Inner, b.Inner));
        }

        return sum;
    }

    private static double Thirds(double a, double b) => (a * a) + (a * b) + (b * b);
}
