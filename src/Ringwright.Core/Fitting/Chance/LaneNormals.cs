using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Standard normal numbers, eight lanes at a time, by the transform of Box and Muller (1958):
/// sqrt(-2 ln u) (cos t, sin t) with u uniform on (0, 1] and t on the circle. Both uniforms carry 52 bits, so tails
/// reach to sqrt(2 * 52 ln 2) = 8.49.
/// </summary>
/// <remarks>
/// Logarithm, sine and cosine are plain power series, exact to about one unit in the last place over the small ranges
/// that occur here; the framework's own vector functions, made for any argument, take half as long again.
/// </remarks>
internal static class LaneNormals
{
    /// <summary>Bits of sqrt(1/2): mantissas are taken between it and sqrt 2, where the series is shortest.</summary>
    private const long RootHalfBits = 0x3FE6A09E667F3BCD;

    private const double Ln2 = 0.693147180559945309417;
    private const ulong OneBits = 0x3FF0000000000000;
    private const ulong SignBit = 0x8000000000000000;

    /// <summary>Fills a buffer of even length with normals.</summary>
    internal static void Fill(ref LaneRandom random, Span<Vector512<double>> normals)
    {
        LaneRandom local = random; // a local copy stays in registers
        for (int i = 0; i + 1 < normals.Length; i += 2)
        {
            Vector512<double> radius = Vector512.Sqrt(MinusTwoLog(OneToTwo(local.Next())));
            Vector512<ulong> turn = local.Next();
            (Vector512<double> cos, Vector512<double> sin) = PointOnCircle(turn);
            normals[i] = radius * cos;
            normals[i + 1] = radius * sin;
        }

        random = local;
    }

    /// <summary>The upper 52 bits as a number in [1, 2).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> OneToTwo(Vector512<ulong> bits) =>
        ((bits >>> 12) | Vector512.Create(OneBits)).AsDouble();

    /// <summary>-2 ln(2 - x) for x in [1, 2): ln(2^k m) = k ln 2 + 2 artanh((m - 1) / (m + 1)), m within a root of 2 of one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> MinusTwoLog(Vector512<double> x)
    {
        Vector512<double> one = Vector512<double>.One;
        Vector512<long> bits = (Vector512.Create(2.0) - x).AsInt64();
        Vector512<long> exponent = (bits - Vector512.Create(RootHalfBits)) >> 52;
        Vector512<double> mantissa = (bits - (exponent << 52)).AsDouble();
        Vector512<double> s = (mantissa - one) / (mantissa + one);
        Vector512<double> s2 = s * s;
        Vector512<double> sum = Vector512.Create(1.0 / 21);
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 19));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 17));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 15));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 13));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 11));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 9));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 7));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 5));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(1.0 / 3));
        sum = Vector512.FusedMultiplyAdd(sum, s2, one);
        return Vector512.FusedMultiplyAdd(
            Vector512.ConvertToDouble(exponent), Vector512.Create(-2 * Ln2), Vector512.Create(-4.0) * s * sum);
    }

    /// <summary>
    /// (cos t, sin t) for t uniform on the circle: the upper 52 bits choose t between -pi/2 and pi/2, the lowest bit
    /// the half of the circle.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector512<double> Cos, Vector512<double> Sin) PointOnCircle(Vector512<ulong> bits)
    {
        Vector512<double> t = (Vector512.Create(2.0) * OneToTwo(bits) - Vector512.Create(3.0)) * Vector512.Create(Math.PI / 2);
        Vector512<double> t2 = t * t;
        Vector512<ulong> half = bits << 63;
        return ((Cos(t2).AsUInt64() ^ (half & Vector512.Create(SignBit))).AsDouble(), t * SinOver(t2));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Cos(Vector512<double> t2)
    {
        Vector512<double> sum = Vector512.Create(1 / 2432902008176640000.0);
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 6402373705728000.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 20922789888000.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 87178291200.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 479001600.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 3628800.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 40320.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 720.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 24.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 2.0));
        return Vector512.FusedMultiplyAdd(sum, t2, Vector512<double>.One);
    }

    /// <summary>sin(t) / t as a series in t^2.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> SinOver(Vector512<double> t2)
    {
        Vector512<double> sum = Vector512.Create(1 / 51090942171709440000.0);
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 121645100408832000.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 355687428096000.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 1307674368000.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 6227020800.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 39916800.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 362880.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 5040.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(1 / 120.0));
        sum = Vector512.FusedMultiplyAdd(sum, t2, Vector512.Create(-1 / 6.0));
        return Vector512.FusedMultiplyAdd(sum, t2, Vector512<double>.One);
    }
}
