using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

/// <summary>Without errors the simulation must give the plan's formulas, which it does not contain.</summary>
public class WedgeSizeTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_wedge_has_the_flats_of_the_plan(int tip)
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Sled(), tip));
        Assert.Equal(Example.Segments, run.Wedges.Length);
        Assert.All(run.Wedges, wedge =>
        {
            Assert.Equal(2 * Example.Half, wedge.Angle, 13);
            Assert.Equal(Example.Rim(tip), wedge.RimLength(10), 10);
            Assert.Equal(tip, wedge.TipLength(10), 10);
            Assert.Equal((Example.Rim(tip) + tip) / 2 * Example.Width * Example.Thickness, wedge.Solid.Volume, 7);
        });
    }

    // (Lo + Li)/2 + k/cos a per wedge (design, section 4), read off the shortest edge over an even number of wedges.
    [Fact]
    public void The_board_shrinks_as_the_plan_says()
    {
        double one = SawSimulator.Run(Example.Job(Example.Sled(), 1, 2)).ShortestEdgeLeft;
        double later = SawSimulator.Run(Example.Job(Example.Sled(), 1, 12)).ShortestEdgeLeft;
        double each = ((Example.Rim(1) + 1) / 2) + (Example.Kerf / Math.Cos(Example.Half));
        Assert.Equal(10 * each, one - later, 10);
    }

    // Machinery's Handbook, 31st ed. (2020), p. 82, regular polygons: area / r² and side / r for r the inscribed radius.
    [Theory]
    [InlineData(12, 3.2154, 0.5359)]
    [InlineData(16, 3.1826, 0.3978)]
    [InlineData(24, 3.1597, 0.2633)]
    public void Wedges_sawn_to_a_point_make_the_handbooks_polygon(int n, double areaRatio, double sideRatio)
    {
        const double radius = 12.7;
        double half = Math.PI / n;
        double rim = 2 * radius * Math.Tan(half);
        SawRun run = SawSimulator.Run(new(new(300, radius, 30), new(Example.Mitre(half), rim, 1), n));
        double area = 0;
        foreach (SawnWedge wedge in run.Wedges) area += wedge.Section(15).Area;
        Assert.Equal(n, run.Wedges.Length);
        Assert.Equal(areaRatio, area / (radius * radius), 4);
        Assert.Equal(sideRatio, run.Wedges[3].RimLength(15) / radius, 4);
        Assert.Equal(2 * Math.PI, Example.SumOfAngles(run), 12);
    }

    [Fact]
    public void The_wedge_frame_points_to_the_rim_and_lies_in_the_middle()
    {
        foreach (SawnWedge wedge in SawSimulator.Run(Example.Job(Example.Sled())).Wedges)
        {
            (double tip, double rim) = wedge.Solid.Extent(new(1, 0, 0));
            Assert.Equal(Example.Width / 2, rim, 10);
            Assert.Equal(-Example.Width / 2, tip, 10);
            (double bottom, double top) = wedge.Solid.Extent(new(0, 0, 1));
            Assert.Equal(0, bottom, 10);
            Assert.Equal(Example.Thickness, top, 10);
            (double right, double left) = wedge.Solid.Extent(new(0, 1, 0));
            Assert.Equal(0, left + right, 10);
            Assert.True(wedge.PlusFace.Normal.Y > 0.9 && wedge.MinusFace.Normal.Y < -0.9);
            Assert.Equal(1, wedge.InBoard.X.Cross(wedge.InBoard.Y).Dot(wedge.InBoard.Z), 12);
        }
    }

    [Fact]
    public void A_squared_end_and_the_first_offcut_come_off_before_the_first_wedge()
    {
        SawJob job = Example.Job(Example.Sled());
        SawRun run = SawSimulator.Run(job with { Saw = job.Saw with { SquaringTrim = 6, FirstOffcutTip = 2 } });
        Assert.Equal(2, run.Offcuts.Length);
        Assert.Equal(6 * Example.Width * Example.Thickness, run.Volumes.Squaring, 8);
        double offcut = (2 + (Example.Width * Math.Tan(Example.Half) / 2)) * Example.Width * Example.Thickness;
        Assert.Equal(offcut, run.Volumes.FirstOffcut, 8);
        Assert.Equal([0, 1, 2], run.Cuts.Take(3).Select(cut => cut.Number));
    }

    [Fact]
    public void The_run_ends_where_the_board_must_be_held()
    {
        SawJob job = Example.Job(Example.Sled(), 1, 100);
        SawRun run = SawSimulator.Run(job with { Saw = job.Saw with { HoldingLength = 120 } });
        double each = ((Example.Rim(1) + 1) / 2) + (Example.Kerf / Math.Cos(Example.Half));
        Assert.Equal(StopReason.LengthUsedUp, run.Reason);
        Assert.Equal(180, run.NoCutBeyond);
        Assert.InRange(run.ShortestEdgeLeft, 120, 120 + (2 * each));
        Assert.Contains("120 mm needed to hold the board", run.Explanation, StringComparison.Ordinal);
        SawRun more = SawSimulator.Run(job with { Wanted = run.Wedges.Length + 1 });
        Assert.True(more.ShortestEdgeLeft < 120);
    }
}
