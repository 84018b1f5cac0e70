namespace Ringwright.Core.Profiles;

/// <summary>The polynomial A + B u + C u².</summary>
internal readonly record struct Quadratic(double A, double B, double C)
{
    /// <summary>Its value.</summary>
    public double Value(double u) => A + (u * (B + (u * C)));

    /// <summary>Its exact range over [<paramref name="from"/>, <paramref name="to"/>].</summary>
    public (double Least, double Most) Range(double from, double to)
    {
        double a = Value(from), b = Value(to);
        double least = Math.Min(a, b), most = Math.Max(a, b);
        double vertex = -B / (2 * C);
        if (!(vertex > from && vertex < to)) return (least, most);
        double peak = Value(vertex);
        return (Math.Min(least, peak), Math.Max(most, peak));
    }

    /// <summary>
    /// Its real roots, smaller first, NaN where there is none. The root that would lose digits is taken from the product of
    /// both (Press et al., Numerical Recipes, section 5.6).
    /// </summary>
    public (double First, double Second) Roots()
    {
        if (C == 0) return (-A / B, double.NaN);
        double root = Math.Sqrt((B * B) - (4 * A * C));
        double q = -0.5 * (B + Math.CopySign(root, B));
        double one = q / C, other = A / q;
        return one <= other ? (one, other) : (other, one);
    }
}
