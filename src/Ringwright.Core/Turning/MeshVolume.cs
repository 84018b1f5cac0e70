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
    /// <param name="indices">Three for each triangle; every one must be of a vertex, for they are not looked at again.</param>
    /// <returns>mm³; positive where the triangles turn counter-clockwise seen from outside.</returns>
    public static double Of(ReadOnlySpan<float> positions, ReadOnlySpan<int> indices)
    {
        ref float vertices = ref MemoryMarshal.GetReference(positions);
        Vector128<double> even = default;
        Vector128<double> odd = default;
        int i = 0;
        for (; i + 5 < indices.Length; i += 6)
        {
            even += Term(ref vertices, indices[i], indices[i + 1], indices[i + 2]);
            odd += Term(ref vertices, indices[i + 3], indices[i + 4], indices[i + 5]);
        }

        if (i + 2 < indices.Length) even += Term(ref vertices, indices[i], indices[i + 1], indices[i + 2]);
        even += odd;
        return (even.GetElement(0) - even.GetElement(1)) / 6;
    }

    // Twice the area is the difference of the two products; the difference is taken once, at the end.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Term(ref float vertices, int a, int b, int c)
    {
        ref float first = ref Unsafe.Add(ref vertices, (nint)(uint)a * 3);
        ref float second = ref Unsafe.Add(ref vertices, (nint)(uint)b * 3);
        ref float third = ref Unsafe.Add(ref vertices, (nint)(uint)c * 3);
        Vector128<double> corner = Plan(ref first);
        Vector128<double> across = Plan(ref third) - corner;
        Vector128<double> products = (Plan(ref second) - corner) * Vector128.Shuffle(across, Vector128.Create(1L, 0L));
        double height = (double)Unsafe.Add(ref first, 2) + Unsafe.Add(ref second, 2) + Unsafe.Add(ref third, 2);
        return products * Vector128.Create(height);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Plan(ref float vertex) => Vector128.WidenLower(Vector64.LoadUnsafe(ref vertex).ToVector128Unsafe());
}
