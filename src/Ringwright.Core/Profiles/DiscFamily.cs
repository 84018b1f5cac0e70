using Ringwright.Core.Geometry;

namespace Ringwright.Core.Profiles;

/// <summary>
/// Circles over part of the outer curve of which at each height just one reaches innermost: a sweep over parameters where its
/// envelope advances, or the single circle at a corner.
/// </summary>
internal sealed class DiscFamily
{
    private readonly Sweep _sweep;
    private readonly double _first;
    private readonly double _last;

    /// <summary>The circles of <paramref name="sweep"/> over [<paramref name="first"/>, <paramref name="last"/>]; one circle when they are equal.</summary>
    /// <param name="place">Number of the span in its curve.</param>
    /// <param name="sweep">The circles of the whole span.</param>
    /// <param name="first">First parameter.</param>
    /// <param name="last">Last parameter.</param>
    public DiscFamily(int place, Sweep sweep, double first, double last)
    {
        (_sweep, _first, _last) = (sweep, first, last);
        (Start, End) = (place + first, place + last);
        Lowest = sweep.Span.Height.Value(first) - sweep.Size(first);
        Highest = sweep.Span.Height.Value(last) + sweep.Size(last);
        (TouchFrom, TouchTo) = IsSingle ? (double.PositiveInfinity, double.PositiveInfinity) : (sweep.Touch(first).Point.Y, sweep.Touch(last).Point.Y);
    }

    /// <summary>Where it starts along the curve: number of the span, and the parameter in it.</summary>
    public double Start { get; }

    /// <summary>Where it ends along the curve.</summary>
    public double End { get; }

    /// <summary>Lowest height its circles reach.</summary>
    public double Lowest { get; }

    /// <summary>Highest height its circles reach.</summary>
    public double Highest { get; }

    /// <summary>Height where its envelope starts; below it the first circle reaches innermost.</summary>
    public double TouchFrom { get; }

    /// <summary>Height where its envelope ends; above it the last circle reaches innermost.</summary>
    public double TouchTo { get; }

    /// <summary>True for one circle.</summary>
    public bool IsSingle => _first == _last;

    /// <summary>Radius its circles reach in to at a height; infinite where none of them is.</summary>
    public double Radius(double z)
    {
        if (z < Lowest || z > Highest) return double.PositiveInfinity;
        double u = z <= TouchFrom ? _first : z >= TouchTo ? _last : Rising.Solve(_sweep, z, _first, _last, TouchFrom, TouchTo);
        double above = z - _sweep.Span.Height.Value(u), size = _sweep.Size(u);
        return _sweep.Span.Radius.Value(u) - Math.Sqrt(Math.Max(0, (size * size) - (above * above)));
    }

    /// <summary>Its arcs over [<paramref name="from"/>, <paramref name="to"/>], each with radius and height going one way only.</summary>
    public IEnumerable<WallArc> Arcs(double from, double to)
    {
        foreach (WallArc arc in Disc(_first, from, Math.Min(to, TouchFrom))) yield return arc;
        double start = Math.Max(from, TouchFrom), end = Math.Min(to, TouchTo);
        if (start < end) yield return new SweepArc(_sweep, _first, _last, start, end);
        foreach (WallArc arc in Disc(_last, Math.Max(from, TouchTo), to)) yield return arc;
    }

    private IEnumerable<WallArc> Disc(double u, double from, double to)
    {
        Vector2D centre = _sweep.Span.At(u);
        double size = _sweep.Size(u);
        if (from < Math.Min(to, centre.Y)) yield return new DiscArc(centre, size, from, Math.Min(to, centre.Y));
        if (Math.Max(from, centre.Y) < to) yield return new DiscArc(centre, size, Math.Max(from, centre.Y), to);
    }
}
