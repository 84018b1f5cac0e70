using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Fitting;

/// <summary>Sums over vectors, four lanes at a time whatever the machine, so that they are the same everywhere.</summary>
internal static class Lanes
{
    /// <summary>The sum of a[i] b[i].</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ReadOnlySpan<Vector256<double>> wide = MemoryMarshal.Cast<double, Vector256<double>>(a), other = MemoryMarshal.Cast<double, Vector256<double>>(b);
        Vector256<double> lanes = default;
        for (int i = 0; i < wide.Length; i++) lanes += wide[i] * other[i];
        double sum = lanes[0] + lanes[1] + lanes[2] + lanes[3];
        for (int i = wide.Length * Vector256<double>.Count; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }

    /// <summary>Takes factor times b[i] from every a[i].</summary>
    public static void Subtract(Span<double> a, double factor, ReadOnlySpan<double> b)
    {
        Span<Vector256<double>> wide = MemoryMarshal.Cast<double, Vector256<double>>(a);
        ReadOnlySpan<Vector256<double>> other = MemoryMarshal.Cast<double, Vector256<double>>(b);
        Vector256<double> all = Vector256.Create(factor);
        for (int i = 0; i < wide.Length; i++) wide[i] -= all * other[i];
        for (int i = wide.Length * Vector256<double>.Count; i < a.Length; i++) a[i] -= factor * b[i];
    }
}
