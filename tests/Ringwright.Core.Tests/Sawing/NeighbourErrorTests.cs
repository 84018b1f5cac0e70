using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

/// <summary>
/// How errors of cuts add up over a ring. The sample variance of M normal sums has relative deviation sqrt(2/(M-1)),
/// so z = (s²/expected - 1)/sqrt(2/(M-1)); |z| under 4 with fixed seeds.
/// </summary>
public class NeighbourErrorTests
{
    private const int Runs = 1500;
    private const double Sigma = 0.1 * Example.Degree;
    private static readonly Variation Seating = new() { SeatingDeviation = Sigma };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Neighbours_share_a_cut_so_a_ring_sums_to_four_times_the_variance(bool sled)
    {
        double variance = Variance(Example.Job(sled ? Example.Sled() : Example.Mitre()) with { Variation = Seating }, every: 1);
        Assert.InRange(Z(variance, (4 * (Example.Segments - 1)) + 2), -4, 4);
        Assert.True(Z(variance, 2 * Example.Segments) > 20);
        Assert.Equal(2 * Sigma * Math.Sqrt(Example.Segments), Math.Sqrt(variance), Sigma / 2);
    }

    [Fact]
    public void Every_second_wedge_shares_no_cut()
    {
        SawJob job = Example.Job(Example.Sled(), 1, 2 * Example.Segments) with { Variation = Seating };
        double variance = Variance(job, every: 2);
        Assert.InRange(Z(variance, 2 * Example.Segments), -4, 4);
    }

    [Fact]
    public void On_the_sander_faces_are_independent_whatever_the_saw_did()
    {
        SawJob job = Example.Job(Example.Sled()) with
        {
            Variation = Seating,
            Sander = new(new(Example.Half), 0.5) { SeatingDeviation = Sigma },
        };
        double variance = Variance(job, every: 1);
        Assert.InRange(Z(variance, 2 * Example.Segments), -4, 4);
    }

    // Exact, not statistical: the wedge's error is the sum of the errors of its two cuts.
    [Fact]
    public void An_error_in_a_cut_enlarges_both_neighbours_by_itself()
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Mitre()) with { Variation = Seating, Seed = 5 });
        for (int i = 0; i < run.Wedges.Length; i++)
            Assert.Equal(run.Cuts[i].Angle + run.Cuts[i + 1].Angle, run.Wedges[i].Angle, 12);
        Assert.Equal(run.Cuts.Length, run.Cuts.Select(cut => cut.Angle).Distinct().Count());
    }

    [Fact]
    public void A_mean_error_of_seating_adds_twice_to_every_wedge()
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Sled()) with { Variation = new() { SeatingMean = Sigma } });
        Assert.All(run.Wedges, wedge => Assert.Equal(2 * (Example.Half + Sigma), wedge.Angle, 12));
    }

    [Fact]
    public void The_stops_error_lengthens_rim_and_tip_alike_and_leaves_the_angle()
    {
        var variation = new Variation { StopMean = 0.03, StopDeviation = 0.05 };
        SawRun run = SawSimulator.Run(Example.Job(Example.Sled()) with { Variation = variation, Seed = 3 });
        for (int i = 0; i < run.Wedges.Length; i++)
        {
            Assert.Equal(2 * Example.Half, run.Wedges[i].Angle, 12);
            Assert.Equal(run.Cuts[i + 1].Length, run.Wedges[i].RimLength(9), 10);
            Assert.Equal(run.Cuts[i + 1].Length - Example.Rim(0), run.Wedges[i].TipLength(9), 10);
        }
    }

    [Fact]
    public void Kerf_wander_eats_the_board_and_leaves_the_wedges()
    {
        SawJob job = Example.Job(Example.Sled()) with { Seed = 8 };
        SawRun steady = SawSimulator.Run(job);
        SawRun wandering = SawSimulator.Run(job with { Variation = new() { KerfDeviation = 0.05 } });
        Assert.Equal(steady.Volumes.Wedges, wandering.Volumes.Wedges, 6);
        double eaten = wandering.Cuts.Sum(cut => cut.Kerf - Example.Kerf) / Math.Cos(Example.Half);
        Assert.NotEqual(0, eaten, 4);
        Assert.Equal(eaten * Example.Width * Example.Thickness, wandering.Volumes.Kerf - steady.Volumes.Kerf, 6);
    }

    private static double Z(double variance, double cuts) =>
        ((variance / (Sigma * Sigma * cuts)) - 1) / Math.Sqrt(2.0 / (Runs - 1));

    private static double Variance(SawJob job, int every)
    {
        var sums = new double[Runs];
        Parallel.For(0, Runs, run =>
        {
            SawRun result = SawSimulator.Run(job with { Seed = (ulong)run });
            for (int i = 0; i < result.Wedges.Length; i += every) sums[run] += result.Wedges[i].Angle;
        });
        double mean = sums.Average();
        return sums.Sum(sum => (sum - mean) * (sum - mean)) / (Runs - 1);
    }
}
