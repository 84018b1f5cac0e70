using System.Buffers.Binary;
using System.Numerics;

namespace Ringwright.Core.Turning;

/// <summary>
/// Binary STL: 80 bytes of text, the number of triangles, then for each its normal, its three corners and two bytes
/// (M. Burns, Automated Fabrication, 1993, section 6.5). The format has no unit; these numbers are millimetres.
/// </summary>
public static class StlWriter
{
    private const int Header = 84;
    private const int Triangle = 50;

    /// <summary>The bytes of an STL file of <paramref name="mesh"/>.</summary>
    /// <exception cref="BadInputException">More triangles than fit into one array of bytes.</exception>
    public static byte[] Write(TurnedMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        long length = Header + ((long)Triangle * mesh.TriangleCount);
        if (length > Array.MaxLength) throw new BadInputException("STL", $"{mesh.TriangleCount} triangles are too many for one file", "take fewer facets or a larger tolerance");
        byte[] bytes = new byte[length];
        // Must not begin with "solid", by which readers know the text form.
        "Binary STL, millimetres"u8.CopyTo(bytes);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), mesh.TriangleCount);
        for (int i = 0; i < mesh.TriangleCount; i++) WriteTriangle(bytes.AsSpan(Header + (Triangle * i), Triangle), mesh, i);
        return bytes;
    }

    private static void WriteTriangle(Span<byte> to, TurnedMesh mesh, int triangle)
    {
        ReadOnlySpan<int> corners = mesh.Indices.Slice(3 * triangle, 3);
        Vector3 a = Corner(mesh, corners[0]);
        Vector3 b = Corner(mesh, corners[1]);
        Vector3 c = Corner(mesh, corners[2]);
        Vector3 cross = Vector3.Cross(b - a, c - a);
        Write(to, cross == default ? default : Vector3.Normalize(cross));
        Write(to[12..], a);
        Write(to[24..], b);
        Write(to[36..], c);
    }

    private static Vector3 Corner(TurnedMesh mesh, int vertex) => new(mesh.Positions.Slice(3 * vertex, 3));

    private static void Write(Span<byte> to, Vector3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(to, v.X);
        BinaryPrimitives.WriteSingleLittleEndian(to[4..], v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(to[8..], v.Z);
    }
}
