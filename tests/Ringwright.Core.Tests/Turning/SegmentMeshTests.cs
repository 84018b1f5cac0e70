using System.Numerics;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

public class SegmentMeshTests
{
    [Fact]
    public void Each_face_lies_where_its_name_says_and_looks_outward()
    {
        var mesh = SegmentMesh.Of(Rings.Closed(Rings.Cylinder(30, 20), 6), 0, Facets.Fixed(8));
        MeshChecks.AssertClosed(MeshChecks.Welded(mesh.Positions, mesh.Indices));
        Assert.Equal(mesh.Indices.Length, Enum.GetValues<SegmentFace>().Sum(face => mesh.Face(face).Length));
        AssertFace(mesh, SegmentFace.Outer, p => Math.Abs(Radius(p) - 30) < 1e-5, (p, n) => Out(p, n) > 0.999);
        AssertFace(mesh, SegmentFace.Inner, p => Math.Abs(Radius(p) - 20) < 1e-5, (p, n) => Out(p, n) < -0.999);
        AssertFace(mesh, SegmentFace.Top, p => p.Z == 10, (_, n) => n.Z == 1);
        AssertFace(mesh, SegmentFace.Bottom, p => p.Z == 0, (_, n) => n.Z == -1);
        AssertFace(mesh, SegmentFace.From, p => Math.Abs(p.Y) < 1e-5, (_, n) => n.Y < -0.999);
        AssertFace(mesh, SegmentFace.To, p => Math.Abs(Math.Atan2(p.Y, p.X) - (Math.PI / 3)) < 1e-6, (_, n) => n.X < -0.866);
    }

    [Fact]
    public void Turned_walls_shade_smoothly_and_steps_sharply()
    {
        // On a ball of radius 50 the normal is the point itself; at a step it is not shared.
        WallSection ball = Rings.Section([.. Enumerable.Range(0, 9).Select(i => (-20.0 + (5 * i), Math.Sqrt(2500 - Math.Pow(-20 + (5 * i), 2)), 20.0))]);
        var mesh = SegmentMesh.Of(Rings.Closed(ball, 12), 3, Facets.Fixed(4));
        foreach (int v in mesh.Face(SegmentFace.Outer)) Assert.True(Vector3.Dot(MeshChecks.At(mesh.Normals, v), Vector3.Normalize(MeshChecks.At(mesh.Positions, v))) > 0.9999);
        var step = SegmentMesh.Of(Rings.Closed(Rings.Section((0, 20, 10), (5, 20, 10), (5, 30, 10), (9, 30, 10)), 6), 0, Facets.Fixed(4));
        foreach (int v in step.Face(SegmentFace.Outer)) Assert.True(Math.Abs(MeshChecks.At(step.Normals, v).Z) is 0 or 1);
    }

    [Fact]
    public void Board_coordinates_lie_in_the_board()
    {
        // A wedge for outside radius 30 and inside 20 out of six, cut from a board 12 mm thick along x, its outer edge at y = 30:
        // the wedge's middle line is the board's y, grain runs tangentially.
        double half = Math.PI / 6;
        TurnedRing ring = Rings.Closed(Rings.Section((1, 29, 21), (11, 27, 22)), 6);
        ring = ring with { Segments = [.. ring.Segments.Select(s => s with { Board = BoardAt(s.From.Direction + half) })] };
        var mesh = TurnedMesh.Of([ring], Facets.Fixed(5));
        float[] board = mesh.BoardCoordinates();
        for (int v = 0; v < mesh.VertexCount; v++)
        {
            Vector3 at = MeshChecks.At(board, v);
            Assert.InRange(at.X, -30 * Math.Tan(half), 30 * Math.Tan(half));
            Assert.InRange(at.Y, 0, 13.5);
            Assert.InRange(at.Z, 1, 11);
        }

        Assert.Equal(board[..(3 * mesh.Parts[0].VertexCount)].Select(x => MathF.Round(x, 3)), board[(3 * mesh.Parts[0].VertexCount)..(6 * mesh.Parts[0].VertexCount)].Select(x => MathF.Round(x, 3)));
    }

    private static Frame3D BoardAt(double middle)
    {
        Vector3D radial = new(Math.Cos(middle), Math.Sin(middle), 0);
        Vector3D along = new(Math.Sin(middle), -Math.Cos(middle), 0);
        return new(along, radial, along.Cross(radial), 17 * radial);
    }

    private static void AssertLengthsKept(TurnedMesh mesh, float[] board)
    {
        for (int i = 0; i < mesh.Indices.Length; i += 3)
        {
            (int a, int b) = (mesh.Indices[i], mesh.Indices[i + 1]);
            Assert.Equal(
                Vector3.Distance(MeshChecks.At(mesh.Positions, a), MeshChecks.At(mesh.Positions, b)),
                Vector3.Distance(MeshChecks.At(board, a), MeshChecks.At(board, b)),
                1e-4f);
        }
    }

    private static void AssertFace(SegmentMesh mesh, SegmentFace face, Func<Vector3, bool> place, Func<Vector3, Vector3, bool> normal)
    {
        Assert.NotEqual(0, mesh.Face(face).Length);
        foreach (int v in mesh.Face(face))
        {
            Assert.True(place(MeshChecks.At(mesh.Positions, v)), $"{face}: {MeshChecks.At(mesh.Positions, v)}");
            Assert.True(normal(MeshChecks.At(mesh.Positions, v), MeshChecks.At(mesh.Normals, v)), $"{face}: {MeshChecks.At(mesh.Normals, v)}");
        }
    }

    private static double Radius(Vector3 p) => Math.Sqrt((p.X * p.X) + (p.Y * p.Y));

    private static double Out(Vector3 p, Vector3 n) => ((p.X * n.X) + (p.Y * n.Y)) / Radius(p);
}
