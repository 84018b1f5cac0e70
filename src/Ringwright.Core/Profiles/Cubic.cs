namespace Ringwright.Core.Profiles;

/// <summary>The polynomial A + B u + C u² + D u³ over 0 ≤ u ≤ 1.</summary>
internal readonly record struct Cubic(double A, double B, double C, double D) : IRising
{
    /// <summary>Its first derivative.</summary>
    public Quadratic Derivative => new(B, 2 * C, 3 * D);

    /// <summary>The cubic with given ends and end slopes (Hermite).</summary>
    public static Cubic Hermite(double from, double to, double slopeFrom, double slopeTo) =>
        new(from, slopeFrom, (3 * (to - from)) - (2 * slopeFrom) - slopeTo, (2 * (from - to)) + slopeFrom + slopeTo);

    /// <summary>Its value.</summary>
    public double Value(double u) => A + (u * (B + (u * (C + (u * D)))));

    /// <summary>Its first derivative at <paramref name="u"/>.</summary>
    public double Slope(double u) => B + (u * ((2 * C) + (u * 3 * D)));

    /// <summary>Its second derivative at <paramref name="u"/>.</summary>
    public double Bend(double u) => (2 * C) + (6 * D * u);

    /// <inheritdoc/>
    public (double Value, double Slope) At(double u) => (Value(u), Slope(u));
}
