using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>
/// Rounds the edge between two faces to a radius, by flat facets tangent to the round, close enough that no wood stands
/// proud of the true round by more than <see cref="Proud"/>.
/// </summary>
internal static class EdgeRounding
{
    /// <summary>The most by which facets stand proud of the true round, mm: a tenth of the thinnest feeler gauge (0.02 mm; common practice, no source).</summary>
    public const double Proud = 0.002;

    /// <summary>Adds the half-spaces whose boundaries round the edge between <paramref name="a"/> and <paramref name="b"/> to <paramref name="radius"/> mm.</summary>
    public static void AddFacets(List<HalfSpace> facets, HalfSpace a, HalfSpace b, double radius)
    {
        if (radius == 0) return;
        double turn = Math.Atan2(a.Normal.Cross(b.Normal).Length, a.Normal.Dot(b.Normal));
        int steps = (int)Math.Ceiling(turn / Step(radius));
        for (int i = 1; i < steps; i++) facets.Add(Facet(a, b, radius, turn, (double)i / steps));
    }

    // Tangents a step apart meet radius / cos(step / 2) from the axis.
    private static double Step(double radius) => Math.Min(Math.PI / 4, 2 * Math.Acos(radius / (radius + Proud)));

    // The round's axis lies a radius inside both planes; the facet's normal turns evenly from one to the other.
    private static HalfSpace Facet(HalfSpace a, HalfSpace b, double radius, double turn, double share)
    {
        double partA = Math.Sin((1 - share) * turn) / Math.Sin(turn);
        double partB = Math.Sin(share * turn) / Math.Sin(turn);
        Vector3D normal = (partA * a.Normal) + (partB * b.Normal);
        return new(normal, (partA * (a.Offset - radius)) + (partB * (b.Offset - radius)) + radius);
    }
}
