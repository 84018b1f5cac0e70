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
        return Write(mesh.Positions, mesh.Indices);
    }

    /// <summary>The bytes of an STL file of any triangles.</summary>
    /// <param name="positions">x, y, z of every corner, mm.</param>
    /// <param name="indices">Three corners for each triangle, counter-clockwise seen from outside.</param>
    /// <exception cref="BadInputException">More triangles than fit into one array of bytes.</exception>
    public static byte[] Write(ReadOnlySpan<float> positions, ReadOnlySpan<int> indices)
    {
        int count = indices.Length / 3;
        long length = Header + ((long)Triangle * count);
        if (length > Array.MaxLength) throw new BadInputException("STL", $"{count} triangles are too many for one file", "take fewer facets or a larger tolerance");
        byte[] bytes = new byte[length];
        // Must not begin with "solid", by which readers know the text form.
        "Binary STL, millimetres"u8.CopyTo(bytes);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), count);
        for (int i = 0; i < count; i++) WriteTriangle(bytes.AsSpan(Header + (Triangle * i), Triangle), positions, indices.Slice(3 * i, 3));
        return bytes;
    }

    private static void WriteTriangle(Span<byte> to, ReadOnlySpan<float> positions, ReadOnlySpan<int> corners)
    {
        Vector3 a = Corner(positions, corners[0]);
        Vector3 b = Corner(positions, corners[1]);
        Vector3 c = Corner(positions, corners[2]);
        Vector3 cross = Vector3.Cross(b - a, c - a);
        Write(to, cross == default ? default : Vector3.Normalize(cross));
        Write(to[12..], a);
        Write(to[24..], b);
        Write(to[36..], c);
    }

    private static Vector3 Corner(ReadOnlySpan<float> positions, int vertex) => new(positions.Slice(3 * vertex, 3));

    private static void Write(Span<byte> to, Vector3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(to, v.X);
        BinaryPrimitives.WriteSingleLittleEndian(to[4..], v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(to[8..], v.Z);
    }
}
