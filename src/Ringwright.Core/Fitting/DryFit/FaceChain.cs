using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Finds the face of a wedge in one plan section: the long edge that meets the neighbour, and with it those small
/// facets that lean less than <see cref="MostLean"/> from it (a worn or bellied face). Steeper facets, tip flat and
/// rim fall away from the joint faster than any joint opens, so they can never touch before the face's end does:
/// leaving them out is exact as long as no joint opens by more than that angle.
/// </summary>
internal static class FaceChain
{
    /// <summary>Largest lean of a facet that still counts as face, radians (20 degrees).</summary>
    public const double MostLean = Math.PI / 9;

    private static readonly double LeastCosine = Math.Cos(MostLean);

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
            if (length <= longest || sideways < 0.02 || edge.Y / length > 0.4) continue;
            best = i;
            longest = length;
        }

        return best;
    }

    /// <summary>The angle between the two faces of a section, radians.</summary>
    public static double Angle(ImmutableArray<Vector2D> corners)
    {
        Vector2D minus = Edge(corners, MainEdge(corners, plusSide: false));
        Vector2D plus = -Edge(corners, MainEdge(corners, plusSide: true));
        return Math.Atan2(minus.Cross(plus), minus.Dot(plus));
    }

    /// <summary>The first edge of the face that contains edge <paramref name="main"/>, and how many edges it has.</summary>
    public static (int First, int Count) Extent(ImmutableArray<Vector2D> corners, int main)
    {
        int n = corners.Length;
        int first = main;
        int count = 1;
        while (count < n - 1 && Along(corners, (first + n - 1) % n, main)) (first, count) = ((first + n - 1) % n, count + 1);
        while (count < n - 1 && Along(corners, (first + count) % n, main)) count++;
        return (first, count);
    }

    /// <summary>The edge from corner <paramref name="i"/> to the next.</summary>
    public static Vector2D Edge(ImmutableArray<Vector2D> corners, int i) => corners[(i + 1) % corners.Length] - corners[i];

    private static bool Along(ImmutableArray<Vector2D> corners, int edge, int main)
    {
        Vector2D a = Edge(corners, edge);
        Vector2D b = Edge(corners, main);
        return a.Dot(b) > LeastCosine * a.Length * b.Length;
    }
}
