using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Profiles;

/// <summary>A wall's radius over the height, made of arcs from the bottom up; 0 where there is no arc.</summary>
internal sealed class WallLine
{
    /// <summary>Tangents that differ by less are one line, radians; and heights, mm.</summary>
    private const double Same = 1e-9;

    private readonly double[] _from;
    private readonly double[] _to;
    private readonly (double From, double To)[] _ends;
    private readonly ArcPoint[] _bends;
    private readonly double[] _bendHeights;

    /// <summary>A line of arcs that do not overlap.</summary>
    public WallLine(ImmutableArray<WallArc> arcs)
    {
        Arcs = arcs;
        _from = [.. arcs.Select(a => a.From)];
        _to = [.. arcs.Select(a => a.To)];
        _ends = [.. arcs.Select(a => (a.Radius(a.From), a.Radius(a.To)))];
        Corners = FindCorners();
        _bends = FindBends();
        _bendHeights = [.. _bends.Select(b => b.Height)];
    }

    /// <summary>Its arcs, from the bottom up.</summary>
    public ImmutableArray<WallArc> Arcs { get; }

    /// <summary>Heights where it starts, ends, jumps or turns sharply, rising.</summary>
    public ImmutableArray<double> Corners { get; }

    /// <summary>Height where it starts.</summary>
    public double Bottom => _from[0];

    /// <summary>Height where it ends.</summary>
    public double Top => _to[^1];

    /// <summary>True when it has no arc at all: solid.</summary>
    public bool IsEmpty => _from.Length == 0;

    /// <summary>Radius at a height, from one side.</summary>
    public double Radius(double z, Side side) => Find(z, side) is var i and >= 0 ? Arcs[i].Radius(z) : 0;

    /// <summary>Radius and direction at a height, from one side; upright at radius 0 where there is no arc.</summary>
    public ArcPoint At(double z, Side side) => Find(z, side) is var i and >= 0 ? Arcs[i].At(z) : new(0, z, new(0, 1), 1);

    /// <summary>Exact least and greatest radius over an interval, jumps at its ends left out.</summary>
    public (double Least, double Most) Extents(double z0, double z1)
    {
        double least = double.PositiveInfinity, most = 0, covered = z0;
        for (int i = FirstAbove(_to, z0); i < _from.Length && _from[i] < z1; i++)
        {
            double from = _from[i] >= z0 ? _ends[i].From : Arcs[i].Radius(z0);
            double to = _to[i] <= z1 ? _ends[i].To : Arcs[i].Radius(z1);
            least = Math.Min(least, _from[i] > covered ? 0 : Math.Min(from, to));
            most = Math.Max(most, Math.Max(from, to));
            covered = _to[i];
        }

        return (covered < z1 ? 0 : least, most);
    }

    /// <summary>Its moments over an interval.</summary>
    public Moments Moments(double z0, double z1)
    {
        Moments sum = default;
        for (int i = FirstAbove(_to, z0); i < _from.Length && _from[i] < z1; i++)
            sum += Arcs[i].Moments(Math.Max(z0, _from[i]), Math.Min(z1, _to[i]));
        return sum;
    }

    /// <summary>
    /// A distance from the chord that the wall does not exceed between two of its points without a corner between: up to each place
    /// where it may bend the other way it lies within the triangle of chord and tangents.
    /// </summary>
    public double Sag(in ArcPoint low, in ArcPoint high)
    {
        var start = new Vector2D(low.Radius, low.Height);
        Vector2D chord = new Vector2D(high.Radius, high.Height) - start;
        double length = chord.Length, off = 0, sag = 0;
        ArcPoint from = low;
        for (int i = FirstAbove(_bendHeights, low.Height); i < _bends.Length && _bendHeights[i] < high.Height; i++)
        {
            off = Math.Max(off, Math.Abs(chord.Cross(new Vector2D(_bends[i].Radius, _bends[i].Height) - start)) / length);
            sag = Math.Max(sag, Triangle(from, _bends[i]));
            from = _bends[i];
        }

        return off + Math.Max(sag, Triangle(from, high));
    }

    /// <summary>The first of rising numbers that is greater; their count when none is.</summary>
    internal static int FirstAbove(ReadOnlySpan<double> rising, double value)
    {
        int low = 0, high = rising.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (rising[middle] > value) high = middle;
            else low = middle + 1;
        }

        return low;
    }

    private int Find(double z, Side side)
    {
        int i = FirstAbove(_from, z) - 1;
        if (side == Side.Below && i >= 0 && _from[i] == z) i--;
        return i >= 0 && (side == Side.Above ? z < _to[i] : z <= _to[i]) ? i : -1;
    }

    // Height of the triangle, L sin α sin β / sin(α + β); infinite where the tangents do not close one.
    private static double Triangle(in ArcPoint low, in ArcPoint high)
    {
        var chord = new Vector2D(high.Radius - low.Radius, high.Height - low.Height);
        double length = chord.Length, straight = Same * Math.Max(1, length);
        double first = chord.Cross(low.Tangent), second = high.Tangent.Cross(chord);
        if (Math.Abs(first) <= straight && Math.Abs(second) <= straight) return 0;
        if (first * second < 0) return double.PositiveInfinity;
        return Math.Abs(first * second / (high.Tangent.Cross(low.Tangent) * length));
    }

    private ArcPoint[] FindBends()
    {
        double[] heights = [.. _from.Concat(Arcs.SelectMany(a => a.Inflections())).Distinct().Order()];
        return [.. heights.Select(z => At(z, Side.Above))];
    }

    private ImmutableArray<double> FindCorners()
    {
        var corners = ImmutableArray.CreateBuilder<double>();
        for (int i = 0; i < _from.Length; i++)
        {
            if (i == 0 || _to[i - 1] != _from[i] || Turns(i)) corners.Add(_from[i]);
            if (i == _from.Length - 1 || _to[i] != _from[i + 1]) corners.Add(_to[i]);
        }

        return corners.DrainToImmutable();
    }

    private bool Turns(int i) =>
        Math.Abs(_ends[i - 1].To - _ends[i].From) > Same
        || Math.Abs(Arcs[i - 1].At(_to[i - 1]).Tangent.Cross(Arcs[i].At(_from[i]).Tangent)) > Same;
}
