using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The distance of two convex outlines along their best separating edge (the theorem of the separating axis: two convex
/// polygons are apart exactly if an edge of either has the whole of the other before it). Negative: how deep they overlap.
/// </summary>
/// <param name="Distance">Distance of the nearest corner of the one from the edge of the other, mm.</param>
/// <param name="Edge">Index of the edge in the outline that owns it.</param>
/// <param name="Corner">The nearest corner of the other, on the table.</param>
/// <param name="Normal">Outward unit normal of the edge.</param>
internal readonly record struct Separation(double Distance, int Edge, Vector2D Corner, Vector2D Normal)
{
    /// <summary>The best edge of <paramref name="owner"/> against <paramref name="other"/>.</summary>
    public static Separation Best(ReadOnlySpan<Vector2D> owner, ReadOnlySpan<Vector2D> other)
    {
        var best = new Separation(double.NegativeInfinity, -1, default, default);
        for (int e = 0; e < owner.Length; e++)
        {
            Separation found = At(owner, e, other);
            if (found.Distance > best.Distance) best = found;
        }

        return best;
    }

    /// <summary>One edge of <paramref name="owner"/> against <paramref name="other"/>.</summary>
    public static Separation At(ReadOnlySpan<Vector2D> owner, int edge, ReadOnlySpan<Vector2D> other)
    {
        Vector2D from = owner[edge];
        Vector2D along = owner[edge + 1 == owner.Length ? 0 : edge + 1] - from;
        Vector2D normal = (1 / along.Length) * new Vector2D(along.Y, -along.X);
        Vector2D nearest = other[0];
        double least = double.PositiveInfinity;
        foreach (Vector2D corner in other)
        {
            double distance = normal.Dot(corner);
            if (distance < least) (least, nearest) = (distance, corner);
        }

        return new(least - normal.Dot(from), edge, nearest, normal);
    }
}
