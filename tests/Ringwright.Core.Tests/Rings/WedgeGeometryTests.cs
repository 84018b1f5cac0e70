using CsCheck;
using NetTopologySuite.Geometries;
using Ringwright.Core.Geometry;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Tests.Rings;

public class WedgeGeometryTests
{
    private static readonly Gen<WedgeGeometry> AnyRing =
        from n in Gen.Int[3, 360]
        from outer in Gen.Double[1, 500]
        from share in Gen.Double[0, 0.95]
        select new WedgeGeometry(n, outer, outer * share);

    // Machinery's Handbook, 31st ed. (2020), p. 82, table of regular polygons: side to inscribed radius S/r, side to
    // circumscribed radius S/R, area to inscribed radius squared A/r². Values as printed there.
    [Theory]
    [InlineData(3, 3.4641, 1.7321, 5.1962)]
    [InlineData(6, 1.1547, 1.0000, 3.4641)]
    [InlineData(8, 0.8284, 0.7654, 3.3137)]
    [InlineData(12, 0.5359, 0.5176, 3.2154)]
    [InlineData(24, 0.2633, 0.2611, 3.1597)]
    [InlineData(64, 0.0983, 0.0981, 3.1441)]
    public void Agrees_with_the_handbook_table_of_regular_polygons(int n, double sideToInradius, double sideToCircumradius, double areaToInradiusSquared)
    {
        var wedge = new WedgeGeometry(n, 1, 0);
        Assert.Equal(sideToInradius, wedge.RimEdge, 5e-5);
        Assert.Equal(sideToCircumradius, wedge.RimEdge / wedge.OuterCorner, 5e-5);
        Assert.Equal(areaToInradiusSquared, n * wedge.Area, 5e-5);
    }

    // Common practice, no source: board half as wide as the disc; rim edges near 3/16 in and 1/16 in.
    [Theory]
    [InlineData(18, 25.4, 12.7, 4.8, 0.4)]
    [InlineData(36, 19.0, 9.5, 1.6, 0.1)]
    public void Agrees_with_common_practice(int n, double diameter, double boardWidth, double rimEdge, double within)
    {
        var wedge = new WedgeGeometry(n, diameter / 2, 0);
        Assert.Equal(boardWidth, wedge.Depth, 1e-12);
        Assert.InRange(wedge.RimEdge, rimEdge - within, rimEdge + within);
    }

    [Fact]
    public void Wedges_close_to_a_full_turn() => AnyRing.Sample(w => Math.Abs((w.Segments * w.WedgeAngle) - (2 * Math.PI)) < 1e-12);

    [Fact]
    public void Plan_areas_agree_with_NetTopologySuite() =>
        AnyRing.Sample(w => Math.Abs(Polygon(w.Plan(1)).Area - w.Area) <= 1e-9 * w.Area);

    [Fact]
    public void Neighbours_touch_and_do_not_overlap() =>
        AnyRing.Sample(w =>
        {
            Polygon here = Polygon(w.Plan(0));
            Polygon next = Polygon(w.Plan(1));
            double common = NetTopologySuite.Operation.OverlayNG.OverlayNGRobust.Overlay(here, next, NetTopologySuite.Operation.Overlay.SpatialFunction.Intersection).Area;
            return common <= 1e-9 * w.Area && here.Distance(next) < 1e-9;
        });

    [Fact]
    public void Sanding_undoes_the_sawing_allowance() =>
        Gen.Select(AnyRing, Gen.Double[0, 0.5]).Sample((w, s) =>
        {
            WedgeGeometry sawn = w.BeforeSanding(s);
            // Each face moved out by s: the sawn flats are longer by 2 s / cos a.
            bool flats = Math.Abs(sawn.RimEdge - w.RimEdge - (2 * s / Math.Cos(w.HalfAngle))) < 1e-9;
            WedgeGeometry back = sawn.AfterSanding(s);
            return flats && Math.Abs(back.RimEdge - w.RimEdge) < 1e-9 && Math.Abs(sawn.Depth - w.Depth) < 1e-9;
        });

    [Fact]
    public void Openings_follow_the_tip()
    {
        var wedge = new WedgeGeometry(24, 9.5, 3);
        double a = Math.PI / 24;
        Assert.Equal(wedge.Tip / Math.Tan(a), 2 * wedge.InnerApothem, 1e-12);
        Assert.Equal(wedge.Tip / Math.Sin(a), 2 * wedge.InnerCorner, 1e-12);
    }

    internal static Polygon Polygon(ConvexPolygon polygon)
    {
        var corners = polygon.Vertices.Select(v => new Coordinate(v.X, v.Y)).ToList();
        corners.Add(corners[0]);
        return new Polygon(new LinearRing([.. corners]));
    }
}
