using System.Collections.Immutable;

namespace Ringwright.Core.Geometry;

/// <summary>A convex polygon, vertices counter-clockwise in mm. May be empty (no vertices).</summary>
public sealed class ConvexPolygon
{
    /// <summary>The polygon without points.</summary>
    public static readonly ConvexPolygon Empty = new([]);

    /// <summary>Takes <paramref name="vertices"/> as they are: counter-clockwise, convex, mm.</summary>
    public ConvexPolygon(ImmutableArray<Vector2D> vertices) => Vertices = vertices;

    /// <summary>Counter-clockwise corners, mm.</summary>
    public ImmutableArray<Vector2D> Vertices { get; }

    /// <summary>Whether nothing is left.</summary>
    public bool IsEmpty => Vertices.IsEmpty;

    /// <summary>Area, mm² (shoelace formula, taken about the first corner to keep digits).</summary>
    public double Area
    {
        get
        {
            double twice = 0;
            for (int i = 2; i < Vertices.Length; i++)
                twice += (Vertices[i - 1] - Vertices[0]).Cross(Vertices[i] - Vertices[0]);
            return twice / 2;
        }
    }

    /// <summary>A rectangle with its lower left corner at (<paramref name="x"/>, <paramref name="y"/>), mm.</summary>
    public static ConvexPolygon Rectangle(double x, double y, double width, double height) =>
        new([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)]);

    /// <summary>
    /// What of this polygon lies in <paramref name="half"/>. Exact up to rounding: only new corners on the
    /// boundary are computed, all others are kept bit for bit. Parts without area vanish.
    /// </summary>
    public ConvexPolygon Clip(HalfPlane half)
    {
        var kept = ImmutableArray.CreateBuilder<Vector2D>(Vertices.Length + 1);
        for (int i = 0; i < Vertices.Length; i++)
        {
            Vector2D a = Vertices[i];
            Vector2D b = Vertices[(i + 1) % Vertices.Length];
            double da = half.Distance(a);
            double db = half.Distance(b);
            if (da <= 0) kept.Add(a);
            if ((da < 0 && db > 0) || (da > 0 && db < 0)) kept.Add(a + ((da / (da - db)) * (b - a)));
        }

        return kept.Count < 3 ? Empty : new(kept.ToImmutable());
    }
}
