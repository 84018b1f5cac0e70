using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text.Json;
using Ringwright.Core.Documents;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Timber.Grain;
using Ringwright.Core.Turning;
using Ringwright.Web.Viewing;

namespace Ringwright.Web.Tests.Viewing;

/// <summary>What the browser gets of a piece.</summary>
public class ViewerPacketTests
{
    public static TheoryData<string> Examples => [.. Files().Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_is_packed_to_its_last_byte(string name)
    {
        var packet = Packet.Of(name, ViewerDetail.Coarse);
        Assert.Equal(0, packet.Left);
        Assert.Equal(packet.Plan.Rings.Sum(r => r.Layout.Length), packet.Head.GetProperty("parts").GetInt32());
        Assert.All(packet.Triangles, i => Assert.InRange(i, 0, packet.Positions.Length - 1));
        Assert.InRange(packet.Seen, 1, packet.Triangles.Length);
    }

    [Fact]
    public void Rows_lead_each_corner_to_where_it_was_in_its_tree()
    {
        var packet = Packet.Of("feature-bowl", ViewerDetail.Coarse);
        var (piece, mesh) = packet.Turned();
        float[] board = mesh.BoardCoordinates();
        for (int i = 0; i < mesh.Parts.Length; i++)
        {
            TurnedPart part = mesh.Parts[i];
            RingPlan ring = packet.Plan.Rings[part.Ring];
            LaidSegment laid = ring.Layout[part.Segment];
            Frame3D tree = TreeInBoard.Of(ring.Ring.Name, laid.Wood, laid.Board);
            ReadOnlySpan<float> rows = packet.Rows.AsSpan(PartRows.Count * i, PartRows.Count);
            int v = part.FirstVertex;
            Vector3D wanted = tree.ToLocal(new Vector3D(board[3 * v], board[(3 * v) + 1], board[(3 * v) + 2])), p = packet.Positions[v];
            // Single precision some metres up a trunk.
            Assert.Equal(wanted.X, (rows[0] * p.X) + (rows[1] * p.Y) + (rows[2] * p.Z) + rows[3], 2e-3);
            Assert.Equal(wanted.Y, (rows[4] * p.X) + (rows[5] * p.Y) + (rows[6] * p.Z) + rows[7], 2e-3);
            Assert.Equal(wanted.Z, (rows[8] * p.X) + (rows[9] * p.Y) + (rows[10] * p.Z) + rows[11], 2e-3);
        }

        Assert.NotEmpty(piece.Woods);
    }

    // The skin of the bowl: its turned surfaces by the exact integrals, and the ring of its rim and the disc of its foot.
    [Fact]
    public void What_is_seen_of_the_whole_bowl_is_its_turned_surface_and_its_two_ends()
    {
        var packet = Packet.Of("feature-bowl", ViewerDetail.Fine);
        var (piece, _) = packet.Turned();
        double[] ones = [.. piece.Woods.Select(_ => 1.0)];
        TurnedMass mass = TurnedMass.Of(piece.Rings, ones);
        WallLevel foot = piece.Rings[0].Section.Levels[0], rim = piece.Rings[^1].Section.Levels[^1];
        double ends = Math.PI * ((foot.Outer * foot.Outer) - (foot.Inner * foot.Inner) + (rim.Outer * rim.Outer) - (rim.Inner * rim.Inner));
        double seen = 0;
        for (int i = 0; i < packet.Seen; i += 3)
        {
            Vector3D a = packet.Positions[packet.Triangles[i]], b = packet.Positions[packet.Triangles[i + 1]], c = packet.Positions[packet.Triangles[i + 2]];
            seen += (b - a).Cross(c - a).Length / 2;
        }

        double wanted = mass.Whole.OuterArea + mass.Whole.InnerArea + ends;
        Assert.InRange(seen / wanted, 0.99, 1.01);
        Assert.True(packet.Triangles.Length > 1.3 * packet.Seen);
    }

    [Fact]
    public void Normals_come_back_as_they_were()
    {
        var packet = Packet.Of("lidded-box", ViewerDetail.Coarse);
        var (_, mesh) = packet.Turned();
        for (int i = 0; i < mesh.VertexCount; i++)
        {
            double x = packet.Normals[2 * i] / 32767.0, y = packet.Normals[(2 * i) + 1] / 32767.0, z = 1 - Math.Abs(x) - Math.Abs(y);
            if (z < 0) (x, y) = ((1 - Math.Abs(y)) * (x < 0 ? -1 : 1), (1 - Math.Abs(x)) * (y < 0 ? -1 : 1));
            Vector3D n = new Vector3D(x, y, z).Normalized();
            Vector3D wanted = new(mesh.Normals[3 * i], mesh.Normals[(3 * i) + 1], mesh.Normals[(3 * i) + 2]);
            // Half a step of sixteen bits is 1.5e-5; a fold doubles it.
            Assert.True((n - wanted).Length < 1e-4);
        }
    }

    private static IEnumerable<string> Files() => Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.json")
        .Where(f => File.ReadAllText(f).Contains("\"ringwright/piece\"", StringComparison.Ordinal));

    private sealed record Packet(Plan Plan, JsonElement Head, Vector3D[] Positions, short[] Normals, int[] Triangles, float[] Rows, int Left, ViewerDetail Detail)
    {
        public int Seen => Head.GetProperty("skin").GetInt32();

        public static Packet Of(string example, ViewerDetail detail)
        {
            string json = File.ReadAllText(Files().First(f => Path.GetFileNameWithoutExtension(f) == example));
            Plan plan = Planner.Plan(DocumentJson.ReadPiece(json), Shop.Starting);
            byte[] bytes = ViewerPacket.Of(plan, detail);
            int length = BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(4));
            JsonElement head = JsonDocument.Parse(bytes.AsMemory(8, length)).RootElement;
            int at = 8 + length;
            T[] Take<T>(int count) where T : unmanaged
            {
                T[] taken = MemoryMarshal.Cast<byte, T>(bytes.AsSpan(at))[..count].ToArray();
                at += count * Marshal.SizeOf<T>();
                return taken;
            }

            int vertices = head.GetProperty("vertices").GetInt32(), parts = head.GetProperty("parts").GetInt32();
            float[] positions = Take<float>(3 * vertices);
            short[] normals = Take<short>(2 * vertices);
            int[] triangles = Take<int>(head.GetProperty("indices").GetInt32());
            Take<int>(4 * parts);
            float[] rows = Take<float>(PartRows.Count * parts);
            Vector3D[] corners = [.. Enumerable.Range(0, vertices).Select(i => new Vector3D(positions[3 * i], positions[(3 * i) + 1], positions[(3 * i) + 2]))];
            return new(plan, head, corners, normals, triangles, rows, bytes.Length - at, detail);
        }

        public (TurnedPiece Piece, TurnedMesh Mesh) Turned()
        {
            double tolerance = ViewerPacket.Tolerance(Plan, Detail);
            TurnedPiece piece = Plan.Turned(tolerance);
            return (piece, TurnedMesh.Of(piece.Rings, Facets.Within(tolerance), MeshCorners.PerFace));
        }
    }
}
