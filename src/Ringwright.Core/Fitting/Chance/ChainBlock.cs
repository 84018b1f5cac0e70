using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Simulates one block of rings, wedge by wedge: each cut gets an error, each wedge the errors of its two cuts, and
/// the ring the sum over its wedges. Nothing about the sum is assumed; sharing of cuts shows by itself.
/// A block depends on the seed and its own number only.
/// </summary>
internal sealed class ChainBlock(RingMaking making, ulong seed)
{
    /// <summary>Rings in a full block; a multiple of the lanes.</summary>
    internal const int Rings = 4096;

    private readonly int[] _runLengths = [.. Enumerable.Range(0, making.Runs.Runs).Select(making.Runs.LengthOf)];
    private readonly double _settingSd = Math.Sqrt(making.Setting?.WedgeVariance ?? 0);

    /// <summary>Writes the closing errors of the block's rings, radians.</summary>
    /// <param name="block">Number of the block, from 0.</param>
    /// <param name="closing">At most <see cref="Rings"/> places, one per ring.</param>
    /// <param name="buffer">Room for cut errors, of even length.</param>
    /// <returns>Wedges that were sawn for these rings, refused ones included.</returns>
    internal long Simulate(ulong block, Span<double> closing, LaneBuffer buffer)
    {
        CutErrorSource source = new(making.Cut, seed, block);
        CutQueue cuts = new(ref source, buffer.Vectors);
        long sawn = 0;
        Span<double> lanes = stackalloc double[LaneRandom.Lanes];
        while (!closing.IsEmpty)
        {
            int rings = Math.Min(LaneRandom.Lanes, closing.Length);
            Vector512<double> sum = making.GaugeLimit is { } limit
                ? GaugedRings(ref cuts, limit, rings, ref sawn)
                : PlainRings(ref cuts, rings, ref sawn);
            (-(sum + SettingErrors(ref source))).CopyTo(lanes);
            lanes[..rings].CopyTo(closing);
            closing = closing[rings..];
        }

        return sawn;
    }

    private Vector512<double> PlainRings(ref CutQueue queue, int rings, ref long sawn)
    {
        CutQueue cuts = queue; // a local copy stays in registers
        Vector512<double> sum = Vector512<double>.Zero;
        foreach (int length in _runLengths)
        {
            Vector512<double> before = cuts.Next();
            for (int wedge = 0; wedge < length; wedge++)
            {
                Vector512<double> after = cuts.Next();
                sum += before + after;
                before = after;
            }
        }

        queue = cuts;
        sawn += (long)rings * making.Runs.Wedges;
        return sum;
    }

    /// <summary>The same with a go/no-go check: a refused wedge stays out and sawing goes on from its last cut.</summary>
    private Vector512<double> GaugedRings(ref CutQueue cuts, double limit, int rings, ref long sawn)
    {
        Vector512<double> sum = Vector512<double>.Zero;
        Vector512<double> sawnLanes = Vector512<double>.Zero;
        foreach (int length in _runLengths)
            sum += GaugedRun(ref cuts, limit, length, ref sawnLanes);
        for (int lane = 0; lane < rings; lane++)
            sawn += (long)sawnLanes[lane];
        return sum;
    }

    private static Vector512<double> GaugedRun(ref CutQueue cuts, double limit, int length, ref Vector512<double> sawn)
    {
        Vector512<double> wanted = Vector512.Create((double)length);
        Vector512<double> kept = Vector512<double>.Zero;
        Vector512<double> sum = Vector512<double>.Zero;
        Vector512<double> before = cuts.Next();
        while (Vector512.LessThanAny(kept, wanted))
        {
            Vector512<double> after = cuts.Next();
            Vector512<double> wedge = before + after;
            Vector512<double> sawing = Vector512.LessThan(kept, wanted);
            Vector512<double> good = sawing & Vector512.LessThanOrEqual(Vector512.Abs(wedge), Vector512.Create(limit));
            sum += good & wedge;
            kept += good & Vector512<double>.One;
            sawn += sawing & Vector512<double>.One;

            // A wedge trued by itself shares no face, not even with a refused one.
            before = length == 1 ? cuts.Next() : after;
        }

        return sum;
    }

    private Vector512<double> SettingErrors(ref CutErrorSource source)
    {
        if (_settingSd == 0)
            return Vector512<double>.Zero;
        Span<Vector512<double>> pair = stackalloc Vector512<double>[2];
        source.FillStandard(pair);
        return pair[0] * Vector512.Create(_settingSd * making.Runs.Wedges);
    }

    /// <summary>Hands out cut errors one by one from batches.</summary>
    private ref struct CutQueue(ref CutErrorSource source, Span<Vector512<double>> buffer)
    {
        private readonly ref CutErrorSource _source = ref source;
        private readonly Span<Vector512<double>> _buffer = buffer;
        private int _next = buffer.Length;

        [MethodImpl(MethodImplOptions.AggressiveInlining)] // called once per cut
        internal Vector512<double> Next()
        {
            if (_next == _buffer.Length)
            {
                _source.Fill(_buffer);
                _next = 0;
            }

            return _buffer[_next++];
        }
    }
}
