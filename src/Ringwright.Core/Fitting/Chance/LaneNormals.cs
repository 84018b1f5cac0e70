using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Normal numbers, eight lanes at a time, by the transform of Box and Muller (1958): sqrt(-2 ln u) (cos t, sin t) with
/// u uniform on (0, 1] and t on the circle. Both uniforms carry 52 bits, so tails reach to sqrt(2 * 52 ln 2) = 8.49 sd.
/// </summary>
/// <remarks>
/// Logarithm, sine and cosine are polynomials for the small ranges that occur here: the power series' first coefficient
/// and, after it, the polynomial that meets the series at the Chebyshev points of the range, within 3e-17 of it. The
/// framework's own vector functions, made for any argument, take twice as long.
/// </remarks>
internal static class LaneNormals
{
    /// <summary>Bits of sqrt(1/2): mantissas are taken between it and sqrt 2, where the series is shortest.</summary>
    private const ulong RootHalfBits = 0x3FE6A09E667F3BCD;

    /// <summary>Added to an exponent so that it is positive: not every machine can shift or convert signed vectors.</summary>
    private const ulong ExponentShift = 1024;

    /// <summary>2^52: a whole number put into its lowest bits is added to it exactly.</summary>
    private const double Big = 4503599627370496;
    private const ulong BigBits = 0x4330000000000000;

    private const double Ln2 = 0.693147180559945309417;
    private const ulong OneBits = 0x3FF0000000000000;
    private const ulong SignBit = 0x8000000000000000;

    /// <summary>Fills a buffer of even length with normals of the given mean and standard deviation.</summary>
    internal static void Fill(ref LaneRandom random, Span<Vector512<double>> normals, double mean = 0, double sd = 1)
    {
        // One step at a time over the whole buffer: all of them at once need more registers than there are.
        FillBits(ref random, normals);
        PlaceRadii(normals, sd);
        PlacePoints(normals, mean);
    }

    // These three are optimised at once: tiered compilation by profile leaves small calls in them, at five times the time.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void FillBits(ref LaneRandom random, Span<Vector512<double>> bits)
    {
        LaneRandom local = random; // a local copy stays in registers
        foreach (ref Vector512<double> place in bits)
            place = local.Next().AsDouble();
        random = local;
    }

    /// <summary>In the first place of every pair, bits become sd sqrt(-2 ln u).</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void PlaceRadii(Span<Vector512<double>> places, double sd)
    {
        Vector512<double> scale = Vector512.Create(sd);
        for (int i = 0; i + 1 < places.Length; i += 2)
            places[i] = scale * Vector512.Sqrt(MinusTwoLog(OneToTwo(places[i].AsUInt64())));
    }

    /// <summary>A radius and the bits of an angle become two numbers.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void PlacePoints(Span<Vector512<double>> pairs, double mean)
    {
        Vector512<double> centre = Vector512.Create(mean);
        for (int i = 0; i + 1 < pairs.Length; i += 2)
        {
            Vector512<double> radius = pairs[i];
            (Vector512<double> cos, Vector512<double> sin) = PointOnCircle(pairs[i + 1].AsUInt64());
            pairs[i] = Vector512.FusedMultiplyAdd(radius, cos, centre);
            pairs[i + 1] = Vector512.FusedMultiplyAdd(radius, sin, centre);
        }
    }

    /// <summary>The upper 52 bits as a number in [1, 2).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> OneToTwo(Vector512<ulong> bits) =>
        ((bits >>> 12) | Vector512.Create(OneBits)).AsDouble();

    /// <summary>
    /// -2 ln(2 - x) for x in [1, 2): ln(2^k m) = k ln 2 + 2 artanh s with s = (m - 1) / (m + 1), m within a root of 2 of
    /// one. The coefficients are those of -4 artanh(s) / s.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector512<double> MinusTwoLog(Vector512<double> x)
    {
        Vector512<double> one = Vector512.Create(1.0);
        Vector512<ulong> bits = (Vector512.Create(2.0) - x).AsUInt64();
        Vector512<ulong> shifted = (bits + Vector512.Create((ExponentShift << 52) - RootHalfBits)) >>> 52;
        Vector512<double> exponent = (shifted | Vector512.Create(BigBits)).AsDouble() - Vector512.Create(Big + ExponentShift);
        Vector512<double> mantissa = (bits - (shifted << 52) + Vector512.Create(ExponentShift << 52)).AsDouble();
        Vector512<double> s = (mantissa - one) / (mantissa + one);
        Vector512<double> s2 = s * s;
        Vector512<double> sum = Vector512.Create(-4 * 0.07308224910391238);
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(-4 * 0.07665860794787153));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(-4 * 0.0909144456279605));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(-4 * 0.11111105567395273));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(-4 * 0.14285714312987757));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(-4 * 0.19999999999949752));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(-4 * 0.3333333333333335));
        sum = Vector512.FusedMultiplyAdd(sum, s2, Vector512.Create(-4.0));
        return Vector512.FusedMultiplyAdd(exponent, Vector512.Create(-2 * Ln2), s * sum);
    }

    /// <summary>
    /// (cos t, sin t) for t uniform on the circle: the upper 52 bits choose t between -pi/2 and pi/2, the lowest bit
    /// the half of the circle.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (Vector512<double> Cos, Vector512<double> Sin) PointOnCircle(Vector512<ulong> bits)
    {
        Vector512<double> t = Vector512.FusedMultiplyAdd(OneToTwo(bits), Vector512.Create(Math.PI), Vector512.Create(-1.5 * Math.PI));
        Vector512<double> t2 = t * t;
        Vector512<ulong> half = (bits << 63) & Vector512.Create(SignBit);
        return ((Cos(t2).AsUInt64() ^ half).AsDouble(), t * SinOver(t2));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Cos(Vector512<double> t2) => OnePlus(
        t2, -0.5, 0.04166666666666634, -0.0013888888888860709, 2.4801587292446207e-05,
        -2.755731776731995e-07, 2.087663086738545e-09, -1.1464689884521268e-11, 4.6276759700711356e-14);

    /// <summary>sin(t) / t as a polynomial in t^2.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> SinOver(Vector512<double> t2) => OnePlus(
        t2, -0.16666666666666666, 0.008333333333333316, -0.00019841269841254974, 2.755731921916323e-06,
        -2.5052107616995878e-08, 1.6058977312444268e-10, -7.643970296165793e-13, 2.73144475909634e-15);

    /// <summary>1 + a x + b x^2 and so on, by Horner's rule.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> OnePlus(Vector512<double> x, double a, double b, double c, double d, double e, double f, double g, double h)
    {
        Vector512<double> sum = Vector512.Create(h);
        sum = Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(g));
        sum = Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(f));
        sum = Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(e));
        sum = Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(d));
        sum = Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(c));
        sum = Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(b));
        sum = Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(a));
        return Vector512.FusedMultiplyAdd(sum, x, Vector512.Create(1.0));
    }
}
