using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// How deep tips of wedges that are not neighbours run into each other. Keeping neighbours apart keeps all wedges apart
/// while the ring has an opening in the middle; where wedges are sawn to a point it does not: a longer wedge can pass
/// the centre between its neighbours and reach the wedges opposite. The solver prevents that; this measures the result.
/// </summary>
internal static class CentreOverlap
{
    /// <summary>The deepest such overlap at either level, mm; 0 when there is none.</summary>
    public static double Deepest(IReadOnlyList<FitWedge> wedges, IReadOnlyList<WedgePose> poses) =>
        Math.Max(AtLevel([.. wedges.Select(w => w.Bottom.Vertices)], poses), AtLevel([.. wedges.Select(w => w.Top.Vertices)], poses));

    private static double AtLevel(ImmutableArray<Vector2D>[] sections, IReadOnlyList<WedgePose> poses)
    {
        int n = sections.Length;
        HalfPlane[][] sides = [.. sections.Select((s, i) => Sides([.. s.Select(poses[i].Place)]))];
        double deepest = 0;
        for (int i = 0; i < n; i++)
        {
            foreach (Vector2D tip in Tips(sections[i], poses[i]))
            {
                for (int k = 0; k < n; k++)
                {
                    int apart = Math.Abs(i - k);
                    if (Math.Min(apart, n - apart) > 1) deepest = Math.Max(deepest, -sides[k].Max(s => s.Distance(tip)));
                }
            }
        }

        return deepest;
    }

    private static IEnumerable<Vector2D> Tips(ImmutableArray<Vector2D> section, WedgePose pose)
    {
        int plus = FaceChain.Ends(section, plusSide: true).Tip;
        int minus = FaceChain.Ends(section, plusSide: false).Tip;
        yield return pose.Place(section[plus]);
        if (minus != plus) yield return pose.Place(section[minus]);
    }

    private static HalfPlane[] Sides(ImmutableArray<Vector2D> corners) =>
        [.. corners.Select((c, i) => HalfPlane.LeftOf(c, corners[(i + 1) % corners.Length]))];
}
