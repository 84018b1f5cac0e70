namespace Ringwright.Core.Turning;

/// <summary>
/// How many flat facets stand for a turned surface over one segment: a fixed number, or as many as keep the chord near
/// enough to the circle. The default value is one facet.
/// </summary>
public readonly record struct Facets
{
    // A facet over more than a third of a turn would cut through the axis or next to it.
    private const double WidestFacet = (2 * Math.PI / 3) + 1e-9;

    private readonly int _count;
    private readonly double _tolerance;

    private Facets(int count, double tolerance)
    {
        _count = count;
        _tolerance = tolerance;
    }

    /// <summary>The same number for every segment, whatever its size; more only where a facet would span over 120°.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than one facet.</exception>
    public static Facets Fixed(int perSegment)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(perSegment, 1);
        return new(perSegment, 0);
    }

    /// <summary>As many as keep the middle of each chord within <paramref name="tolerance"/> mm of its arc.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A tolerance that is not above zero.</exception>
    public static Facets Within(double tolerance)
    {
        if (!(tolerance > 0) || !double.IsFinite(tolerance))
            throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance must be above 0 mm.");
        return new(0, tolerance);
    }

    /// <summary>The number for an arc of <paramref name="radius"/> mm over <paramref name="angle"/> radians.</summary>
    public int Over(double radius, double angle)
    {
        int wanted = _tolerance > 0 ? FacetsFor(radius, angle, _tolerance) : Math.Max(1, _count);
        return Math.Max(wanted, (int)Math.Ceiling(Math.Abs(angle) / WidestFacet));
    }

    /// <summary>
    /// The least number of equal chords over <paramref name="angle"/> radians at <paramref name="radius"/> mm whose sagitta
    /// r (1 − cos(α/2)) is at most <paramref name="tolerance"/> mm; at least one, and one for each third of a turn.
    /// </summary>
    public static int FacetsFor(double radius, double angle, double tolerance)
    {
        double steepest = radius > tolerance ? 4 * Math.Asin(Math.Sqrt(tolerance / (2 * radius))) : WidestFacet;
        // The subtraction keeps a count that is whole but for rounding.
        return Math.Max(1, (int)Math.Ceiling((Math.Abs(angle) / Math.Min(steepest, WidestFacet)) - 1e-9));
    }
}
