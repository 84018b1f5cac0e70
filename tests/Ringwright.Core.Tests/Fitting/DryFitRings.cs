using NetTopologySuite.Geometries;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Rings for the dry-fit tests, and their outlines as polygons of an independent library.</summary>
internal static class DryFitRings
{
    /// <summary>N equal wedges of outer edge 2 R sin(pi/N), whose angles sum to 2 pi less the closing error.</summary>
    public static FitWedge[] Equal(int n, double radius, double depth, double closingError)
    {
        double half = (Math.PI / n) - (closingError / (2 * n));
        double rim = 2 * radius * Math.Sin(Math.PI / n);
        double tip = rim - (2 * depth * Math.Tan(half));
        FitWedge wedge = FitWedge.FromCaliper(rim, Math.Abs(tip) < 1e-9 ? 0 : tip, depth);
        return [.. Enumerable.Repeat(wedge, n)];
    }

    /// <summary>A wedge section: rim on x = 0 from <paramref name="minusY"/> to <paramref name="plusY"/>, faces at the given angles from the axis (rad).</summary>
    public static ConvexPolygon Section(double plusAngle, double minusAngle, double plusY, double minusY, double depth) => new(
    [
        new(-depth, minusY + (depth * Math.Tan(minusAngle))),
        new(0, minusY),
        new(0, plusY),
        new(-depth, plusY - (depth * Math.Tan(plusAngle))),
    ]);

    /// <summary>Largest overlap area of two neighbours at either level, mm², by NetTopologySuite.</summary>
    public static double WorstOverlap(DryFitResult fit)
    {
        int n = fit.Wedges.Length;
        double worst = 0;
        foreach (bool top in new[] { false, true })
        {
            Polygon[] plan = [.. FitOutlines.Draw(fit, top, 1).Select(o => ToPolygon(o))];
            for (int i = 0; i < n; i++) worst = Math.Max(worst, plan[i].Intersection(plan[(i + 1) % n]).Area);
        }

        return worst;
    }

    public static Polygon ToPolygon(IReadOnlyList<Vector2D> corners) =>
        new(new LinearRing([.. corners.Append(corners[0]).Select(p => new Coordinate(p.X, p.Y))]));
}
