using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;
using Ringwright.Paper.Pictures;

namespace Ringwright.Web.Viewing;

/// <summary>
/// The turned piece as one run of bytes for the browser: "RWV1", the length of a JSON head, the head, then what it counts, all little
/// endian and each at a multiple of four: positions (3 × float32, mm), normals (2 × int16, octahedral: Meyer and others, On
/// Floating-Point Normal Vectors, 2010), triangles (uint32; first those of <c>skin</c>), parts (ring, segment, first vertex, vertices: int32) and rows of parts (float32, see <see cref="PartRows"/>).
/// </summary>
internal static class ViewerPacket
{
    private const int PartNumbers = 4;

    // How far facets leave the round, as a share of the greatest radius: 140 and 35 around.
    private const double Fine = 2.5e-4, Coarse = 4e-3;

    /// <summary>The bytes; the same for the same plan.</summary>
    /// <exception cref="BadInputException">The rings do not fill the shape.</exception>
    public static byte[] Of(Plan plan, ViewerDetail detail)
    {
        double tolerance = Tolerance(plan, detail);
        TurnedPiece piece = plan.Turned(tolerance);
        var mesh = TurnedMesh.Of(piece.Rings, Facets.Within(tolerance), MeshCorners.PerFace);
        int[] rings = PlannedRings(plan, piece);
        (int[] triangles, int seen) = GlueFaces.Sort(piece, mesh);
        byte[] head = Head(plan, piece, mesh, rings, seen);
        int parts = mesh.Parts.Length;
        byte[] bytes = new byte[8 + head.Length + (16 * mesh.VertexCount) + (4 * mesh.Indices.Length) + (4 * PartNumbers * parts) + (4 * PartRows.Count * parts)];
        Span<byte> rest = bytes;
        Put(ref rest, "RWV1"u8);
        Put(ref rest, BitConverter.GetBytes(head.Length));
        Put(ref rest, head);
        Put(ref rest, MemoryMarshal.AsBytes(mesh.Positions));
        Normals(mesh.Normals, MemoryMarshal.Cast<byte, short>(rest[..(4 * mesh.VertexCount)]));
        rest = rest[(4 * mesh.VertexCount)..];
        Put(ref rest, MemoryMarshal.AsBytes(triangles.AsSpan()));
        Parts(mesh, MemoryMarshal.Cast<byte, int>(rest[..(4 * PartNumbers * parts)]));
        Rows(plan, piece, mesh, rings, MemoryMarshal.Cast<byte, float>(rest[(4 * PartNumbers * parts)..]));
        return bytes;
    }

    /// <summary>How far facets may leave the round, mm.</summary>
    public static double Tolerance(Plan plan, ViewerDetail detail) => (detail == ViewerDetail.Fine ? Fine : Coarse) * plan.Rings.Max(r => r.Ring.Outside.Millimetres) / 2;

    private static void Put(ref Span<byte> rest, ReadOnlySpan<byte> bytes)
    {
        bytes.CopyTo(rest);
        rest = rest[bytes.Length..];
    }

    // Rings that are turned away altogether are not among the turned ones: which of the plan's each is, its height tells.
    private static int[] PlannedRings(Plan plan, TurnedPiece piece)
    {
        int[] planned = new int[piece.Rings.Length];
        double bottom = 0;
        for (int i = 0, turned = 0; i < plan.Rings.Length && turned < planned.Length; i++)
        {
            double top = bottom + plan.Rings[i].Ring.Thickness.Millimetres;
            WallSection section = piece.Rings[turned].Section;
            double middle = (section.Levels[0].Z + section.Levels[^1].Z) / 2;
            if (middle > bottom && middle < top) planned[turned++] = i;
            bottom = top;
        }

        return planned;
    }

    private static byte[] Head(Plan plan, TurnedPiece piece, TurnedMesh mesh, int[] rings, int seen)
    {
        var key = WoodKey.Of(plan);
        var wall = WallTable.Of(piece);
        string json = JsonSerializer.Serialize(new
        {
            vertices = mesh.VertexCount,
            indices = mesh.Indices.Length,
            skin = seen,
            parts = mesh.Parts.Length,
            woods = piece.Woods.Select(wood => new { name = wood, rows = WoodRows.Of(wood, plan.Shop, key[wood].Hatch) }),
            rings = piece.Rings.Select((r, i) => new { planned = rings[i], name = plan.Rings[rings[i]].Ring.Name, bottom = r.Section.Levels[0].Z, top = r.Section.Levels[^1].Z, segments = r.Segments.Length }),
            wall = new { bottom = wall.Bottom, top = wall.Top, outer = wall.Outer, inner = wall.Inner },
        });
        byte[] utf8 = Encoding.UTF8.GetBytes(json);
        byte[] head = new byte[(utf8.Length + 3) / 4 * 4];
        utf8.CopyTo(head, 0);
        head.AsSpan(utf8.Length).Fill((byte)' ');
        return head;
    }

    private static void Normals(ReadOnlySpan<float> normals, Span<short> packed)
    {
        for (int i = 0, at = 0; i < normals.Length; i += 3, at += 2)
        {
            (float x, float y, float z) = (normals[i], normals[i + 1], normals[i + 2]);
            float sum = Math.Abs(x) + Math.Abs(y) + Math.Abs(z);
            (float u, float v) = (x / sum, y / sum);
            if (z < 0) (u, v) = ((1 - Math.Abs(v)) * Sign(u), (1 - Math.Abs(u)) * Sign(v));
            (packed[at], packed[at + 1]) = ((short)MathF.Round(u * short.MaxValue), (short)MathF.Round(v * short.MaxValue));
        }
    }

    private static float Sign(float value) => value < 0 ? -1 : 1;

    private static void Parts(TurnedMesh mesh, Span<int> table)
    {
        for (int i = 0; i < mesh.Parts.Length; i++)
        {
            TurnedPart part = mesh.Parts[i];
            ReadOnlySpan<int> numbers = [part.Ring, part.Segment, part.FirstVertex, part.VertexCount];
            numbers.CopyTo(table[(PartNumbers * i)..]);
        }
    }

    private static void Rows(Plan plan, TurnedPiece piece, TurnedMesh mesh, int[] rings, Span<float> rows)
    {
        for (int i = 0; i < mesh.Parts.Length; i++)
        {
            TurnedPart part = mesh.Parts[i];
            RingPlan ring = plan.Rings[rings[part.Ring]];
            PartRows.Write(rows.Slice(PartRows.Count * i, PartRows.Count), piece.Rings[part.Ring].Segments[part.Segment], ring, ring.Layout[part.Segment],
                Glued(piece, part.Ring), part.Wood, part.Ring);
        }
    }

    private static (double Below, double Above) Glued(TurnedPiece piece, int ring)
    {
        (double below, double above) = PartRows.Open;
        if (ring > 0) below = piece.Rings[ring].Section.Levels[0].Z;
        if (ring < piece.Rings.Length - 1) above = piece.Rings[ring].Section.Levels[^1].Z;
        return (below, above);
    }
}
