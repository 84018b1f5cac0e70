using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Turning;

/// <summary>
/// Directions of the vertices along one arc, laid out like the vertices themselves, so that a row is one multiplication and one
/// addition for each number: place = r · (cos, sin, 0) + z · (0, 0, 1).
/// </summary>
internal sealed class ArcTable
{
    // Steps between facets that differ by less than this are the same.
    private const double SameStep = 1e-14;

    private double[] _outward = [];
    private double[] _upward = [];
    private double[] _turned = [];
    private double _step = double.NaN;
    private int _steps;

    /// <summary>Spreads <paramref name="facets"/> equal facets from angle to angle, radians.</summary>
    public void Set(double from, double to, int facets)
    {
        SetSteps((to - from) / facets, facets);
        (double sin, double cos) = Math.SinCos(from);
        ReadOnlySpan<double> turned = _turned.AsSpan(0, 2 * facets);
        Span<double> outward = _outward.AsSpan(0, 3 * (facets + 1));
        for (int k = 0; k < facets; k++)
        {
            outward[3 * k] = (cos * turned[2 * k]) - (sin * turned[(2 * k) + 1]);
            outward[(3 * k) + 1] = (sin * turned[2 * k]) + (cos * turned[(2 * k) + 1]);
        }

        // The last angle is taken as it is, so that neighbours have their common joint at the same place to the bit.
        (outward[(3 * facets) + 1], outward[3 * facets]) = Math.SinCos(to);
    }

    /// <summary>Writes vertices <paramref name="first"/> and on, as many as there is room for.</summary>
    public void Write(Span<float> to, double r, double z, int first)
    {
        ref double outward = ref _outward[3 * first];
        ref double upward = ref _upward[3 * first];
        int wide = Vector256<float>.Count;
        int i = 0;
        for (; i + wide <= to.Length; i += wide) Eight(to, ref outward, ref upward, i, r, z);
        if (i == to.Length) return;
        if (i > 0) Eight(to, ref outward, ref upward, to.Length - wide, r, z); // some twice, to the same value
        else for (; i < to.Length; i++) to[i] = (float)((r * Unsafe.Add(ref outward, i)) + (z * Unsafe.Add(ref upward, i)));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Eight(Span<float> to, ref double outward, ref double upward, int i, double r, double z)
    {
        var radius = Vector256.Create(r);
        var height = Vector256.Create(z);
        Vector256<double> low = (radius * Vector256.LoadUnsafe(ref outward, (nuint)i)) + (height * Vector256.LoadUnsafe(ref upward, (nuint)i));
        Vector256<double> high = (radius * Vector256.LoadUnsafe(ref outward, (nuint)i + 4)) + (height * Vector256.LoadUnsafe(ref upward, (nuint)i + 4));
        Vector256.Narrow(low, high).StoreUnsafe(ref MemoryMarshal.GetReference(to), (nuint)i);
    }

    private void SetSteps(double step, int facets)
    {
        if (facets <= _steps && Math.Abs(step - _step) < SameStep) return;
        if (3 * (facets + 1) > _outward.Length) Grow(facets);
        _step = step;
        _steps = facets;
        for (int k = 0; k < facets; k++) (_turned[(2 * k) + 1], _turned[2 * k]) = Math.SinCos(k * step);
    }

    private void Grow(int facets)
    {
        _outward = new double[3 * (facets + 1)];
        _upward = new double[3 * (facets + 1)];
        _turned = new double[2 * facets];
        for (int k = 0; k <= facets; k++) _upward[(3 * k) + 2] = 1;
    }
}
