using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>Two wedges that are not neighbours, at one level; a <see cref="Low"/> below 0 stands for none.</summary>
internal readonly record struct WedgePair(int Low, int High, bool Top)
{
    /// <summary>What comes before the first pair.</summary>
    public static WedgePair Before => new(0, 1, false);

    /// <summary>No pair.</summary>
    public static WedgePair None => new(-1, -1, false);

    /// <summary>Whether it is a pair.</summary>
    public bool IsSome => Low >= 0;
}

/// <summary>
/// Finds the pairs of wedges that are not neighbours and lie nearer to each other than a limit. The edge that last told
/// a pair apart is asked first, so that most pairs cost one edge.
/// </summary>
internal sealed class NearPairs
{
    private (byte Edge, bool OfLow)[] _last = [];
    private bool[] _taken = [];
    private int _wedges;

    /// <summary>Starts a ring with no pair taken.</summary>
    public void Load(int wedges)
    {
        _wedges = wedges;
        int size = 2 * wedges * wedges;
        if (_last.Length < size) (_last, _taken) = (new (byte, bool)[size], new bool[size]);
        _last.AsSpan(0, size).Clear();
        _taken.AsSpan(0, size).Clear();
    }

    /// <summary>Marks a pair as taken, so that it is not found again, or as free.</summary>
    public void Take(WedgePair pair, bool taken) => _taken[Index(pair)] = taken;

    /// <summary>The next free pair after the given one that is nearer than <paramref name="near"/> mm.</summary>
    public WedgePair After(WedgePair pair, RingOutlines outlines, double near)
    {
        do pair = Next(pair, outlines);
        while (pair.IsSome && (_taken[Index(pair)] || !IsNear(pair, outlines, near)));
        return pair;
    }

    private WedgePair Next(WedgePair pair, RingOutlines outlines)
    {
        (int low, int high, bool top) = pair;
        if (high > low + 1 && !top && outlines.HasTop(low, high)) return new(low, high, true);
        high++;
        // The first wedge and the last are neighbours.
        if (high < (low == 0 ? _wedges - 1 : _wedges)) return new(low, high, false);
        low++;
        return low + 2 < _wedges ? new(low, low + 2, false) : WedgePair.None;
    }

    private bool IsNear(WedgePair pair, RingOutlines outlines, double near)
    {
        ReadOnlySpan<Vector2D> low = outlines.Of(pair.Low, pair.Top);
        ReadOnlySpan<Vector2D> high = outlines.Of(pair.High, pair.Top);
        ref (byte Edge, bool OfLow) last = ref _last[Index(pair)];
        if (last.OfLow ? IsApart(low, last.Edge, high, near) : IsApart(high, last.Edge, low, near)) return false;
        return !FindEdge(low, high, true, near, ref last) && !FindEdge(high, low, false, near, ref last);
    }

    private static bool FindEdge(ReadOnlySpan<Vector2D> owner, ReadOnlySpan<Vector2D> other, bool ofLow, double near, ref (byte Edge, bool OfLow) last)
    {
        for (int edge = 0; edge < owner.Length; edge++)
        {
            if (!IsApart(owner, edge, other, near)) continue;
            last = ((byte)edge, ofLow);
            return true;
        }

        return false;
    }

    private static bool IsApart(ReadOnlySpan<Vector2D> owner, int edge, ReadOnlySpan<Vector2D> other, double near) =>
        edge < owner.Length && Separation.At(owner, edge, other).Distance > near;

    private int Index(WedgePair pair) => (((pair.Low * _wedges) + pair.High) * 2) + (pair.Top ? 1 : 0);
}
