using CsCheck;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Mean, variance and chance of the closing error in closed form.</summary>
public class ChanceClosedFormTests
{
    private const double Degree = Math.PI / 180;

    private static readonly CutError HalfTenth = new(0, 0.05 * Degree);

    [Theory] // Wedges, runs, variance of the sum in units of one cut's: 4 (N - 1) + 2 for one run, 2 N for faces by themselves.
    [InlineData(1, 1, 2)]
    [InlineData(18, 1, 70)]
    [InlineData(18, 3, 66)]
    [InlineData(18, 18, 36)]
    public void Variance_counts_shared_cuts_twice(int wedges, int runs, double factor) =>
        Assert.Equal(factor, new CutRuns(wedges, runs).VarianceFactor);

    [Fact]
    public void Variance_equals_the_sum_over_the_covariance_of_the_wedges() =>
        Gen.Int[1, 12].Array[1, 6].Sample(lengths =>
        {
            // Wedges have variance 2 and covariance 1 with the next wedge of the same run.
            double sum = lengths.Sum(n => 2.0 * n + 2 * (n - 1));
            Assert.Equal(sum, CutRuns.OfLengths(lengths).VarianceFactor);
        });

    [Fact]
    public void Lost_wedge_breaks_a_run_but_not_at_its_ends()
    {
        Assert.Equal(new(4, 2), CutRuns.OfKept(true, true, false, true, true));
        Assert.Equal(new(4, 1), CutRuns.OfKept(false, true, true, true, true));
        Assert.Equal(new(3, 3), CutRuns.OfKept(true, false, true, false, false, true));
    }

    [Theory] // 36 faces of sd 0.05 degrees, 0.1 mm at 25.4 mm (0.22557 degrees): computed beforehand with another program.
    [InlineData(0, 0.54790)]
    [InlineData(0.005, 0.47217)]
    public void Chance_to_close_of_36_independent_faces(double biasDegrees, double chance)
    {
        RingMaking making = new(CutRuns.IndependentFaces(18), HalfTenth with { Bias = biasDegrees * Degree });
        Assert.Equal(chance, ClosureStatistics.Of(making).ChanceToClose(new JointAllowance(0.1, 25.4, GapSharing.OneJoint)), 5);
    }

    [Theory] // Central areas of the normal distribution, Abramowitz and Stegun table 26.1 (from memory).
    [InlineData(1, 0.682689492137086)]
    [InlineData(2, 0.954499736103642)]
    [InlineData(3, 0.997300203936740)]
    [InlineData(1.959963984540054, 0.95)]
    [InlineData(2.575829303548901, 0.99)]
    public void Chance_and_quantile_follow_the_normal_table(double deviations, double area)
    {
        ClosureStatistics closing = ClosureStatistics.Of(new(CutRuns.OneRun(18), HalfTenth));
        double limit = deviations * Math.Sqrt(70) * 0.05 * Degree;
        Assert.Equal(area, closing.ChanceToClose(limit), 12);
        Assert.Equal(limit, closing.ErrorQuantile(area), 1e-12);
    }

    [Fact]
    public void Setting_two_fences_adds_n_squared_times_twice_its_variance()
    {
        RingMaking plain = new(CutRuns.OneRun(12), HalfTenth);
        double setting = 0.02 * Degree;
        double Added(int fences) => (plain with { Setting = new(setting, fences) }).ClosingVariance - plain.ClosingVariance;
        Assert.Equal(144 * 2 * setting * setting, Added(2), 1e-15);
        Assert.Equal(144 * 4 * setting * setting, Added(1), 1e-15);
    }

    [Fact]
    public void Bias_closes_the_ring_by_twice_the_wedges() =>
        Assert.Equal(-36 * 0.005 * Degree, ClosureStatistics.Of(new(CutRuns.OneRun(18), new(0.005 * Degree, 0.001))).Mean, 1e-15);

    [Fact]
    public void Joint_allowance_reads_both_ways()
    {
        JointAllowance one = new(0.1, 50, GapSharing.OneJoint);
        JointAllowance all = one with { Sharing = GapSharing.AllJoints };
        Assert.Equal(0.002, one.ClosingLimit(18), 1e-15);
        Assert.Equal(0.036, all.ClosingLimit(18), 1e-15);
        Assert.Equal(0.1, one.GapOf(-0.002, 18), 1e-15);
        Assert.Equal(0.1, all.GapOf(0.036, 18), 1e-15);
    }

    [Fact]
    public void Gap_that_is_exceeded_once_in_twenty_gives_a_chance_of_95_per_cent()
    {
        ClosureStatistics closing = ClosureStatistics.Of(new(new(18, 2), HalfTenth, new(0.01 * Degree, 2)));
        double gap = closing.GapQuantile(0.95, 40, GapSharing.AllJoints);
        Assert.Equal(0.95, closing.ChanceToClose(new JointAllowance(gap, 40, GapSharing.AllJoints)), 12);
    }

    [Fact]
    public void Exact_cuts_close_or_do_not()
    {
        ClosureStatistics closing = ClosureStatistics.Of(new(CutRuns.OneRun(10), new(0.001, 0)));
        Assert.Equal(0, closing.ChanceToClose(0.0199));
        Assert.Equal(1, closing.ChanceToClose(0.0201));
        Assert.Equal(0.02, closing.ErrorQuantile(0.5), 1e-12);
    }

    [Fact]
    public void Badly_seated_cuts_mix_to_the_stated_mean_and_variance()
    {
        // One wedge, two cuts: the mixture written out by hand.
        CutError cut = new(0.001, 0.002, new(0.25, 0.004, 0.006));
        ClosureStatistics closing = ClosureStatistics.Of(new(CutRuns.OneRun(1), cut));
        double variance = 0.75 * 0.002 * 0.002 + 0.25 * 0.006 * 0.006 + 0.75 * 0.25 * 0.004 * 0.004;
        Assert.Equal(-2 * 0.002, closing.Mean, 1e-15);
        Assert.Equal(2 * variance, closing.Variance, 1e-15);
        double limit = 0.01;
        double byHand = 0.5625 * Within(limit, 0.002, Math.Sqrt(2 * 4e-6))
            + 0.375 * Within(limit, 0.006, Math.Sqrt(4e-6 + 36e-6))
            + 0.0625 * Within(limit, 0.010, Math.Sqrt(2 * 36e-6));
        Assert.Equal(byHand, closing.ChanceToClose(limit), 12);
    }

    [Fact]
    public void Gauge_has_no_closed_form()
    {
        RingMaking gauged = new(CutRuns.OneRun(18), HalfTenth, GaugeLimit: 0.001);
        BadInputException refusal = Assert.Throws<BadInputException>(() => ClosureStatistics.Of(gauged));
        Assert.Contains("simulate", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 1, 0.001)]
    [InlineData(4, 5, 0.001)]
    [InlineData(4, 0, 0.001)]
    [InlineData(4, 1, -0.001)]
    [InlineData(4, 1, double.NaN)]
    public void Bad_input_is_refused_in_words(int wedges, int runs, double sd) =>
        Assert.Throws<BadInputException>(() => ClosureStatistics.Of(new(new(wedges, runs), new(0, sd))));

    /// <summary>P(|X| &lt;= limit) for a normal X from MathNet, which the code under test reaches by another way.</summary>
    private static double Within(double limit, double mean, double sd) =>
        MathNet.Numerics.Distributions.Normal.CDF(mean, sd, limit) - MathNet.Numerics.Distributions.Normal.CDF(mean, sd, -limit);
}
