using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Turning;

/// <summary>Volume inside closed triangles.</summary>
internal static class MeshVolume
{
    /// <summary>
    /// The divergence theorem for the field (0, 0, z): each triangle counts its area seen from above times its mean height.
    /// Coordinates of single precision are exact here, so nothing is lost however far from the origin the solid is.
    /// </summary>
    /// <param name="positions">x, y, z of every vertex, mm.</param>
    /// <param name="indices">Three for each triangle, of closed triangles; every one must be of a vertex, for they are not looked at again.</param>
    /// <returns>mm³; positive where the triangles turn counter-clockwise seen from outside.</returns>
    public static double Of(ReadOnlySpan<float> positions, ReadOnlySpan<int> indices)
    {
        ref float vertices = ref MemoryMarshal.GetReference(positions);
        Vector256<double> sum = default;
        // Closed triangles are even in number: each has three edges, and each edge two triangles.
        for (int i = 0; i < indices.Length; i += 6) sum += Two(ref vertices, indices.Slice(i, 6));
        Vector128<double> all = sum.GetLower() + sum.GetUpper();
        return (all.GetElement(0) - all.GetElement(1)) / 6;
    }

    // Twice the area is the difference of the two products; the difference is taken once, at the end.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Two(ref float vertices, ReadOnlySpan<int> corners)
    {
        ref float a = ref Vertex(ref vertices, corners[0]), b = ref Vertex(ref vertices, corners[1]), c = ref Vertex(ref vertices, corners[2]);
        ref float d = ref Vertex(ref vertices, corners[3]), e = ref Vertex(ref vertices, corners[4]), f = ref Vertex(ref vertices, corners[5]);
        Vector256<double> corner = Plan(ref a, ref d);
        Vector256<double> across = Plan(ref c, ref f) - corner;
        Vector256<double> products = (Plan(ref b, ref e) - corner) * Vector256.Shuffle(across, Vector256.Create(1L, 0L, 3L, 2L));
        double first = (double)Height(ref a) + Height(ref b) + Height(ref c), second = (double)Height(ref d) + Height(ref e) + Height(ref f);
        return products * Vector256.Create(Vector128.Create(first), Vector128.Create(second));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static ref float Vertex(ref float vertices, int index) => ref Unsafe.Add(ref vertices, (nint)(uint)index * 3);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static float Height(ref float vertex) => Unsafe.Add(ref vertex, 2);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Plan(ref float vertex, ref float other) =>
        Vector256.WidenLower(Vector128.Create(Vector64.LoadUnsafe(ref vertex), Vector64.LoadUnsafe(ref other)).ToVector256Unsafe());
}
