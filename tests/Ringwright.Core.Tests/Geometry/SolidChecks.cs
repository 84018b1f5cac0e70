using Ringwright.Core.Geometry;

namespace Ringwright.Core.Tests.Geometry;

/// <summary>What must hold for every convex solid, however it was made.</summary>
internal static class SolidChecks
{
    /// <summary>Closed, convex, finite, of one piece, and with volume.</summary>
    public static void AssertSound(ConvexSolid solid)
    {
        foreach (Vector3D corner in solid.Corners)
            Assert.True(double.IsFinite(corner.X) && double.IsFinite(corner.Y) && double.IsFinite(corner.Z));
        Assert.True(solid.IsEmpty || solid.Volume > -1e-9);
        Assert.InRange(Proud(solid), double.NegativeInfinity, 3 * ConvexSolid.OnPlane);
        AssertClosed(solid);
    }

    /// <summary>How far the worst corner lies outside any face's plane, mm.</summary>
    public static double Proud(ConvexSolid solid)
    {
        double worst = double.NegativeInfinity;
        foreach (HalfSpace plane in solid.Planes)
            foreach (Vector3D corner in solid.Corners) worst = Math.Max(worst, plane.Distance(corner));
        return worst;
    }

    // Every edge is walked once in each direction, and V - E + F = 2 (Euler).
    private static void AssertClosed(ConvexSolid solid)
    {
        if (solid.IsEmpty) return;
        var edges = new HashSet<(int, int)>();
        for (int face = 0; face < solid.FaceCount; face++)
        {
            ReadOnlySpan<int> loop = solid.FaceCorners(face);
            for (int i = 0; i < loop.Length; i++) Assert.True(edges.Add((loop[i], loop[(i + 1) % loop.Length])));
        }

        Assert.All(edges, edge => Assert.Contains((edge.Item2, edge.Item1), edges));
        Assert.Equal(2, solid.Corners.Length - (edges.Count / 2) + solid.FaceCount);
    }
}
