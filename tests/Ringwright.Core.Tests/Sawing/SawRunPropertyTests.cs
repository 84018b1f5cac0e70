using CsCheck;
using NetTopologySuite.Geometries;
using Ringwright.Core.Geometry;
using Ringwright.Core.Sawing;
using Ringwright.Core.Tests.Geometry;

namespace Ringwright.Core.Tests.Sawing;

public class SawRunPropertyTests
{
    [Fact]
    public void Wedges_kerf_offcuts_and_remainder_are_the_board() => RandomJobs.Any.Sample(job =>
    {
        SawVolumes v = SawSimulator.Run(job).Volumes;
        double sum = v.Wedges + v.Kerf + v.Squaring + v.FirstOffcut + v.Remainder;
        Assert.InRange(sum / job.Board.Volume, 1 - 1e-9, 1 + 1e-9);
        Assert.InRange(v.SandingDust, -1e-6, v.Wedges + 1e-6);
    }, iter: 200);

    [Fact]
    public void Every_piece_is_convex_closed_and_finite() => RandomJobs.Any.Sample(job =>
    {
        SawRun run = SawSimulator.Run(job);
        SolidChecks.AssertSound(run.Remainder);
        Assert.All(run.Offcuts, SolidChecks.AssertSound);
        Assert.All(run.Wedges, wedge =>
        {
            SolidChecks.AssertSound(wedge.AsSawn);
            SolidChecks.AssertSound(wedge.Solid);
            double level = job.Board.Thickness / 2;
            double[] numbers = [wedge.Angle, wedge.Taper, wedge.RimLength(level), wedge.TipLength(level), wedge.RimLoss(level), wedge.Section(level).Area];
            Assert.All(numbers, number => Assert.True(double.IsFinite(number)));
        });
        Assert.True(run.ShortestEdgeLeft >= job.Saw.HoldingLength || run.Cuts.IsEmpty);
    }, iter: 200);

    [Fact]
    public void The_same_seed_gives_the_same_run_to_the_bit() => RandomJobs.Any.Sample(job =>
    {
        SawRun a = SawSimulator.Run(job);
        SawRun b = SawSimulator.Run(job);
        Assert.Equal(a.Cuts.AsEnumerable(), b.Cuts.AsEnumerable());
        Assert.Equal(a.Volumes, b.Volumes);
        for (int i = 0; i < a.Wedges.Length; i++)
            Assert.True(a.Wedges[i].Solid.Corners.SequenceEqual(b.Wedges[i].Solid.Corners));
    }, iter: 40);

    [Fact]
    public void Another_seed_gives_another_run()
    {
        SawJob job = Example.Job(Example.Sled()) with { Variation = new() { SeatingDeviation = 0.001 } };
        Assert.NotEqual(SawSimulator.Run(job with { Seed = 1 }).Cuts[3].Angle, SawSimulator.Run(job with { Seed = 2 }).Cuts[3].Angle);
    }

    // NetTopologySuite intersects the same half-planes, as wide polygons, by its own overlay.
    [Fact]
    public void Plan_views_agree_with_an_independent_overlay() => RandomJobs.Any.Sample(job =>
    {
        SawRun run = SawSimulator.Run(job);
        double level = job.Board.Thickness * 0.3;
        NetTopologySuite.Geometries.Geometry rest = Polygon(job.Board.Solid().Section(level));
        int first = run.Cuts.Length - run.Wedges.Length;
        for (int i = 0; i < run.Cuts.Length; i++)
        {
            Cut cut = run.Cuts[i];
            if (i >= first)
            {
                double expected = rest.Intersection(Wide(cut.Piece.Trace(level))).Area;
                Assert.Equal(expected, run.Wedges[i - first].AsSawn.Section(level).Area, 1e-5);
            }

            rest = rest.Intersection(Wide(cut.Rest.Trace(level)));
        }

        Assert.Equal(rest.Area, run.Remainder.Section(level).Area, 1e-4);
    }, iter: 30);

    private static Polygon Polygon(ConvexPolygon polygon) => new(new LinearRing(
        [.. polygon.Vertices.Append(polygon.Vertices[0]).Select(v => new Coordinate(v.X, v.Y))]));

    private static Polygon Wide(HalfPlane half)
    {
        const double far = 2000;
        Vector2D along = far * half.Normal.Perpendicular();
        Vector2D foot = half.Offset * half.Normal;
        Vector2D back = far * half.Normal;
        return Polygon(new([foot - along, foot + along, foot + along - back, foot - along - back]));
    }
}
