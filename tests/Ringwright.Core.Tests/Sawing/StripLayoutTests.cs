using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;
using Ringwright.Core.Geometry;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;
using Ringwright.Core.Tests.Rings;
using NtsGeometry = NetTopologySuite.Geometries.Geometry;

namespace Ringwright.Core.Tests.Sawing;

public class StripLayoutTests
{
    private static readonly Gen<(StripLayout Layout, int Count, double Spare)> AnyStrip =
        from n in Gen.Int[3, 72]
        from outer in Gen.Double[5, 120]
        from share in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.01, 0.9])
        from kerf in Gen.Double[0.2, 4]
        from trim in Gen.Double[0.1, 10]
        from hold in Gen.Double[1, 100]
        from count in Gen.Int[1, 20]
        from spare in Gen.Double[0, 50]
        select (new StripLayout(new WedgeGeometry(n, outer, outer * share), kerf, trim, hold), count, spare);

    [Fact]
    public void Wedges_kerfs_and_rests_fill_the_board() =>
        AnyStrip.Sample(s =>
        {
            double length = s.Layout.LengthFor(s.Count) + s.Spare;
            StripPlan plan = s.Layout.Saw(length, s.Count);
            double total = plan.Trim.Area + plan.Offcut.Area + plan.Rest.Area + plan.Wedges.Sum(w => w.Area) + plan.Kerfs.Sum(k => k.Area);
            double board = length * s.Layout.Wedge.Depth;
            return Math.Abs(total - board) <= 1e-9 * board;
        });

    [Fact]
    public void Every_wedge_is_the_ideal_one() =>
        AnyStrip.Sample(s =>
        {
            StripPlan plan = s.Layout.Saw(s.Layout.LengthFor(s.Count), s.Count);
            return plan.Wedges.All(w => Math.Abs(w.Area - s.Layout.Wedge.Area) <= 1e-9 * s.Layout.Wedge.Area);
        });

    [Fact]
    public void The_rest_is_exactly_long_enough_to_hold() =>
        AnyStrip.Sample(s =>
        {
            double length = s.Layout.LengthFor(s.Count);
            StripPlan plan = s.Layout.Saw(length, s.Count);
            double shortest = length - plan.Rest.Vertices.Where(v => v.X < length - 1e-9).Max(v => v.X);
            return Math.Abs(shortest - s.Layout.HoldingLength) < 1e-6 && s.Layout.WedgesIn(length) == s.Count && s.Layout.WedgesIn(length - 1e-3) == s.Count - 1;
        });

    // On a grid of 1e-7 mm: in floating point the library's union loses pieces whose edges nearly coincide.
    // Every clipped shape against an independent library: the strip minus all pieces leaves nothing, and no two overlap.
    [Fact]
    public void NetTopologySuite_finds_no_gap_and_no_overlap() =>
        AnyStrip.Sample(
            s =>
            {
                double length = s.Layout.LengthFor(s.Count) + s.Spare;
                StripPlan plan = s.Layout.Saw(length, s.Count);
                ConvexPolygon[] parts = [plan.Trim, plan.Offcut, .. plan.Wedges, .. plan.Kerfs, plan.Rest];
                Polygon[] polygons = [.. parts.Where(p => !p.IsEmpty).Select(WedgeGeometryTests.Polygon)];
                NtsGeometry union = UnaryUnionNG.Union([.. polygons.Cast<NtsGeometry>()], GeometryFactory.Floating, new PrecisionModel(1e7));
                double board = length * s.Layout.Wedge.Depth;
                Assert.Equal(board, union.Area, 1e-6 * board);
                Assert.Equal(union.Area, polygons.Sum(p => p.Area), 1e-6 * board);
            },
            iter: 60);

    [Fact]
    public void Refuses_more_wedges_than_fit()
    {
        var layout = new StripLayout(new WedgeGeometry(24, 9.5, 0), 1.2, 5, 75);
        Assert.Throws<BadInputException>(() => layout.Saw(layout.LengthFor(3), 4));
    }
}
