using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

/// <summary>A stop too short for the width, without the simulation being told.</summary>
public class OvercutTests
{
    [Fact]
    public void With_a_stop_too_short_the_wedge_ends_before_the_far_edge()
    {
        const double lacking = 0.4;
        SawnWedge wedge = SawSimulator.Run(Example.Job(Example.Sled(), -lacking)).Wedges[0];
        (double tip, double rim) = wedge.Solid.Extent(new(1, 0, 0));
        Assert.Equal(Example.Rim(-lacking) / (2 * Math.Tan(Example.Half)), rim - tip, 10);
        Assert.False(wedge.ReachesFarEdge);
        Assert.Equal(0, wedge.TipLength(5));
        Assert.Equal(Example.Rim(-lacking), wedge.RimLength(5), 10);
    }

    // The cut's near side crosses the end first; only an overcut beyond kerf/cos a reaches the wood of the next wedge.
    [Theory]
    [InlineData(0.4)]
    [InlineData(1.0)]
    [InlineData(1.5)]
    [InlineData(2.1)]
    public void The_next_wedge_loses_the_rims_corner_that_the_overcut_leaves_beyond_the_kerf(double lacking)
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Sled(), -lacking, 2));
        double loss = Math.Max(0, lacking - (Example.Kerf / Math.Cos(Example.Half)));
        Assert.Equal(0, run.Wedges[0].RimLoss(5), 10);
        if (loss == 0)
        {
            Assert.Equal(0, run.Wedges[1].RimLoss(5), 10);
            Assert.Equal(Example.Rim(-lacking), run.Wedges[1].RimLength(5), 10);
        }
        else
        {
            // The end is now foremost where both cuts cross, half the loss farther back than the missing corner.
            Assert.Equal(loss, run.Wedges[1].RimLoss(5), 10);
            Assert.Equal(Example.Rim(-lacking) - (loss / 2), run.Wedges[1].RimLength(5), 10);
        }
    }

    [Fact]
    public void A_knife_without_kerf_takes_the_corner_at_once()
    {
        SawJob job = Example.Job(Example.Sled(), -0.4, 4);
        SawRun run = SawSimulator.Run(job with { Saw = job.Saw with { Kerf = 0 } });
        Assert.Equal(0.4, run.Wedges[1].RimLoss(5), 10);
        Assert.Equal(0, run.Volumes.Kerf);
    }

    [Fact]
    public void A_stop_too_long_leaves_a_blunt_tip() =>
        Assert.All(SawSimulator.Run(Example.Job(Example.Sled(), 0.7)).Wedges, wedge => Assert.Equal(0.7, wedge.TipLength(5), 10));

    [Fact]
    public void A_stop_far_too_short_ends_with_the_blade_in_the_air()
    {
        SawJob job = Example.Job(Example.Sled(), 0, 50);
        SawRun run = SawSimulator.Run(job with { Saw = job.Saw with { StopDistance = 0.2, Kerf = 0.05 } });
        Assert.Equal(StopReason.BladeMissesBoard, run.Reason);
        Assert.Contains("in front of the board's end", run.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void The_test_cut_shows_too_far_right_and_not_far_enough()
    {
        SawJob job = Example.Job(Example.Sled(), 0);
        var pictures = TestCut.Pictures(job.Board, job.Saw, 0.4);
        Assert.Equal([TestCutSetting.TooFar, TestCutSetting.Right, TestCutSetting.NotFarEnough], pictures.Select(p => p.Setting));
        Assert.Equal(0.4, pictures[0].TipLength, 10);
        Assert.Equal(0, pictures[1].TipLength, 10);
        Assert.Equal(0, pictures[1].EndsBeforeFarEdge, 9);
        Assert.Equal(0.4 / (2 * Math.Tan(Example.Half)), pictures[2].EndsBeforeFarEdge, 9);
        Assert.Equal([0.4, 0, -0.4], pictures.Select(p => p.RimLength - Example.Rim(0)), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.All(pictures, p => Assert.True(p.BoardEnd.Area > p.Piece.Area && p.Kerf.Area > 0));
    }

    [Fact]
    public void The_test_cut_is_drawn_with_the_same_wedge_that_is_sawn()
    {
        SawJob job = Example.Leaning(Example.Mitre(), 0.01) with { Wanted = 2 };
        job = job with { Saw = job.Saw with { SquaringTrim = 5 } };
        TestCut right = TestCut.Pictures(job.Board, job.Saw, 0.3)[1];
        SawnWedge wedge = SawSimulator.Run(job).Wedges[0];
        Assert.Equal(wedge.AsSawn.Section(Example.Thickness / 2).Area, right.Piece.Area, 9);
    }

    [Fact] // The steep first cut ends much farther along the far edge than where it starts.
    public void The_test_cut_is_seen_however_much_is_squared_off()
    {
        BoardBlank board = new(300, 1.5, 1);
        SawSetup saw = new(new TwoFenceSled(new(Math.PI / 6), new(Math.PI / 6)), 1.8, 1.2) { SquaringTrim = 40 };
        Assert.All(TestCut.Pictures(board, saw, 0.3), p => Assert.True(p.Piece.Area > 0 && p.BoardEnd.Area > p.Piece.Area));
    }
}
