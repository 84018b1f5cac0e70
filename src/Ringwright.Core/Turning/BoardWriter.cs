using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>Points of the piece laid back into the board they were cut from.</summary>
internal static class BoardWriter
{
    /// <summary>Both spans hold x, y, z in turn, mm.</summary>
    public static void Write(Frame3D board, ReadOnlySpan<float> positions, Span<float> coordinates)
    {
        Frame3D back = board.Inverse;
        Vector256<double> x = Wide(back.X);
        Vector256<double> y = Wide(back.Y);
        Vector256<double> z = Wide(back.Z);
        Vector256<double> origin = Wide(back.Origin);
        ref float to = ref MemoryMarshal.GetReference(coordinates);
        for (int i = 0; i + 2 < positions.Length; i += 3)
        {
            Vector256<double> place = origin + (positions[i] * x) + (positions[i + 1] * y) + (positions[i + 2] * z);
            Vector128<float> narrow = Vector128.Narrow(place.GetLower(), place.GetUpper());
            // A fourth number lands in the next vertex, which comes after; behind the last there is no room for it.
            if (i + 3 < coordinates.Length) narrow.StoreUnsafe(ref to, (nuint)i);
            else (coordinates[i], coordinates[i + 1], coordinates[i + 2]) = (narrow[0], narrow[1], narrow[2]);
        }
    }

    private static Vector256<double> Wide(Vector3D v) => Vector256.Create(v.X, v.Y, v.Z, 0);
}
