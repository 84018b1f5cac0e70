using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Planning.Constructions;

/// <summary>The pieces of a planned ring in plan, taken from the boards they are sawn from, for an independent library to measure.</summary>
internal static class PlanAreas
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>All pieces by place, laid from their boards by their frames. The shop's sanding must be 0.</summary>
    public static ImmutableArray<ImmutableArray<Vector2D>> FromBoards(RingPlan plan, double board)
    {
        var pieces = new ImmutableArray<Vector2D>[plan.Layout.Length];
        foreach (WedgeBatch batch in plan.Batches)
        {
            StripPlan strip = batch.Strip.Saw(board, batch.Strip.WedgesIn(board));
            foreach (int place in batch.Places)
                pieces[place] = [.. strip.Wedges[plan.Layout[place].Cut].Vertices.Select(v => Laid(plan.Layout[place], new(v.X, v.Y, 3)))];
        }

        foreach (SpacerBatch kind in plan.Spacers)
            foreach (int place in kind.Places) pieces[place] = Spacer(kind, plan.Layout[place]);
        return [.. pieces];
    }

    public static Polygon Polygon(IEnumerable<Vector2D> corners)
    {
        Coordinate[] ring = [.. corners.Select(c => new Coordinate(c.X, c.Y))];
        return Factory.CreatePolygon([.. ring, ring[0]]);
    }

    public static NetTopologySuite.Geometries.Geometry Annulus(double inner, double outer)
    {
        NetTopologySuite.Geometries.Geometry Disc(double r) => Factory.CreatePoint(new Coordinate(0, 0)).Buffer(r, 64);
        return Disc(outer).Difference(Disc(inner));
    }

    /// <summary>How far a point lies counter-clockwise of a joint's plane, mm.</summary>
    public static double Beyond(JointPlane plane, Vector2D point) =>
        point.Dot(new(-Math.Sin(plane.Direction), Math.Cos(plane.Direction))) - plane.Offset;

    // In its strip the spacer lies flat: length along x, height along y, thickness along z.
    private static ImmutableArray<Vector2D> Spacer(SpacerBatch kind, LaidSegment laid)
    {
        double from = laid.Frame.ToLocal(Vector3DOf(laid.From.Direction, kind.Outer)).X;
        return
        [
            .. new[] { (from, 0.0), (from + kind.Length, 0.0), (from + kind.Length, kind.Thickness), (from, kind.Thickness) }
                .Select(c => Laid(laid, new(c.Item1, 3, c.Item2))),
        ];
    }

    private static Vector3D Vector3DOf(double direction, double radius) => new(radius * Math.Cos(direction), radius * Math.Sin(direction), 0);

    private static Vector2D Laid(LaidSegment laid, Vector3D point)
    {
        Vector3D at = laid.Frame.ToOuter(point);
        Assert.Equal(3, at.Z, 9);
        return new(at.X, at.Y);
    }
}
