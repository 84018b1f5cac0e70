using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Finds the face of a wedge in one plan section: the long edge that meets the neighbour, and with it those facets that
/// lean little from it. Facets up to <see cref="Touching"/> may touch the neighbour (a rounding that begins flat);
/// steeper ones, tip flat and rim fall away from the joint faster than any joint opens, so they can never touch before
/// the face's end does: leaving them out is exact as long as no joint opens by more than that angle. Openings are read,
/// and the face's direction is taken, between the ends of the facets up to <see cref="Reading"/> (a bellied face).
/// </summary>
internal static class FaceChain
{
    /// <summary>Largest lean of a facet that may touch, radians (20 degrees).</summary>
    public const double Touching = Math.PI / 9;

    /// <summary>Largest lean of a facet that counts as face when openings are read, radians (3 degrees).</summary>
    public const double Reading = Math.PI / 60;

    /// <summary>Index of the edge that is the face: the longest one looking sideways and not out of the rim; -1 when there is none.</summary>
    public static int MainEdge(ImmutableArray<Vector2D> corners, bool plusSide)
    {
        int best = -1;
        double longest = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            Vector2D edge = Edge(corners, i);
            double length = edge.Length;
            double sideways = (plusSide ? -edge.X : edge.X) / length;
            if (length <= longest || sideways < 0.25 || edge.Y / length > 0.4) continue;
            best = i;
            longest = length;
        }

        return best;
    }

    /// <summary>The angle between the two faces of a section, radians.</summary>
    public static double Angle(ImmutableArray<Vector2D> corners)
    {
        Vector2D minus = Chord(corners, plusSide: false);
        Vector2D plus = Chord(corners, plusSide: true);
        return Math.Atan2(minus.Cross(plus), minus.Dot(plus));
    }

    /// <summary>From the tip end to the rim end of a face.</summary>
    public static Vector2D Chord(ImmutableArray<Vector2D> corners, bool plusSide)
    {
        (int tip, int rim) = Ends(corners, plusSide);
        return corners[rim] - corners[tip];
    }

    /// <summary>The corners at the tip end and the rim end of a face (of a section that has one, see <see cref="MainEdge"/>).</summary>
    public static (int Tip, int Rim) Ends(ImmutableArray<Vector2D> corners, bool plusSide)
    {
        (int first, int count) = Extent(corners, MainEdge(corners, plusSide), Reading);
        int last = (first + count) % corners.Length;
        return plusSide ? (last, first) : (first, last);
    }

    /// <summary>The first edge of the face that contains edge <paramref name="main"/>, and how many edges it has, up to a lean.</summary>
    public static (int First, int Count) Extent(ImmutableArray<Vector2D> corners, int main, double lean)
    {
        int n = corners.Length;
        int first = main;
        int count = 1;
        double cosine = Math.Cos(lean);
        while (count < n - 1 && Along(corners, (first + n - 1) % n, main, cosine)) (first, count) = ((first + n - 1) % n, count + 1);
        while (count < n - 1 && Along(corners, (first + count) % n, main, cosine)) count++;
        return (first, count);
    }

    /// <summary>The edge from corner <paramref name="i"/> to the next.</summary>
    public static Vector2D Edge(ImmutableArray<Vector2D> corners, int i) => corners[(i + 1) % corners.Length] - corners[i];

    private static bool Along(ImmutableArray<Vector2D> corners, int edge, int main, double cosine)
    {
        Vector2D a = Edge(corners, edge);
        Vector2D b = Edge(corners, main);
        return a.Dot(b) > cosine * a.Length * b.Length;
    }
}
