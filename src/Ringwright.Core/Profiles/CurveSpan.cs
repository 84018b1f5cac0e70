using Ringwright.Core.Geometry;

namespace Ringwright.Core.Profiles;

/// <summary>
/// One cubic span of a profile curve, from u = 0 below to u = 1 above; radius (X) and height (Y) in mm. Neither radius nor
/// height turns back within a span.
/// </summary>
public readonly record struct CurveSpan
{
    internal CurveSpan(Cubic radius, Cubic height, Vector2D end)
    {
        Radius = radius;
        Height = height;
        End = end;
    }

    /// <summary>Its lower end.</summary>
    public Vector2D Start => At(0);

    /// <summary>Second of its four Bézier points.</summary>
    public Vector2D StartHandle => Start + (1.0 / 3 * Run(0));

    /// <summary>Third of its four Bézier points.</summary>
    public Vector2D EndHandle => End - (1.0 / 3 * Run(1));

    /// <summary>Its upper end, as given: the cubics reach it only to rounding, and neighbours must meet exactly.</summary>
    public Vector2D End { get; }

    internal Cubic Radius { get; }

    internal Cubic Height { get; }

    /// <summary>True for a step: it runs level.</summary>
    internal bool Level => Height is { B: 0, C: 0, D: 0 };

    /// <summary>The point at <paramref name="u"/>.</summary>
    public Vector2D At(double u) => new(Radius.Value(u), Height.Value(u));

    /// <summary>The derivative by u, mm; never zero.</summary>
    public Vector2D Run(double u) => new(Radius.Slope(u), Height.Slope(u));

    /// <summary>Run × second derivative: positive where the curve turns towards the axis going up. A quadratic, as the cubic terms cancel.</summary>
    internal Quadratic Turning
    {
        get
        {
            Cubic r = Radius, z = Height;
            return new(2 * ((r.B * z.C) - (r.C * z.B)), 6 * ((r.B * z.D) - (r.D * z.B)), 6 * ((r.C * z.D) - (r.D * z.C)));
        }
    }
}
