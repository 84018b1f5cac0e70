using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Room for vectors that start on a 64-byte line. Otherwise every load and store touches two lines, which costs 5 to
/// 10 % of the whole simulation.
/// </summary>
internal sealed class LaneBuffer
{
    private const int LineBytes = 64;

    private readonly double[] _storage;
    private readonly int _start;
    private readonly int _length;

    internal LaneBuffer(int vectors)
    {
        _length = vectors * Vector512<double>.Count;
        _storage = GC.AllocateArray<double>(_length + LineBytes / sizeof(double), pinned: true);
        long past = Marshal.UnsafeAddrOfPinnedArrayElement(_storage, 0) % LineBytes;
        _start = (int)((LineBytes - past) % LineBytes) / sizeof(double);
    }

    internal Span<Vector512<double>> Vectors =>
        MemoryMarshal.Cast<double, Vector512<double>>(_storage.AsSpan(_start, _length));
}
