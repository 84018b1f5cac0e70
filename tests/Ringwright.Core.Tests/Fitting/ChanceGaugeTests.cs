using MathNet.Numerics.Distributions;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Wedges picked by a go/no-go gauge.</summary>
public class ChanceGaugeTests
{
    private const int Rings = 100_000;
    private const double Sd = 0.001;

    [Fact]
    public void Independent_faces_give_a_sum_of_truncated_normals()
    {
        // Variance of a normal truncated to +-c sd: 1 - 2 c phi(c) / (2 Phi(c) - 1) (Johnson, Kotz and Balakrishnan, from memory).
        const double c = 1.2;
        double wedgeSd = Sd * Math.Sqrt(2);
        double passing = 2 * Normal.CDF(0, 1, c) - 1;
        double variance = 1 - 2 * c * Normal.PDF(0, 1, c) / passing;
        RingMaking making = new(CutRuns.IndependentFaces(12), new(0, Sd), GaugeLimit: c * wedgeSd);
        ChainResult seen = ChanceChain.Simulate(making, new(Rings, 1, 0.01));
        Assert.Equal(1, seen.Sd * seen.Sd / (12 * wedgeSd * wedgeSd * variance), 4 * Math.Sqrt(2.0 / Rings));
        double sawnError = 4 * Math.Sqrt(12 * (1 - passing)) / passing / Math.Sqrt(Rings);
        Assert.Equal(12 / passing, seen.WedgesSawnPerRing, sawnError);
    }

    [Fact]
    public void Shared_cuts_agree_with_a_plain_loop()
    {
        const double limit = 1.5 * Sd;
        ChainResult seen = ChanceChain.Simulate(new(CutRuns.OneRun(9), new(0, Sd), GaugeLimit: limit), new(Rings, 1, 0.003));
        (double variance, double closed, double sawn) = PlainLoop(9, limit, 0.003);
        Assert.Equal(1, seen.Sd * seen.Sd / variance, 4 * Math.Sqrt(4.0 / Rings));
        Assert.Equal(closed, seen.ChanceToClose, 4 * Math.Sqrt(2 * closed * (1 - closed) / Rings));
        Assert.Equal(sawn, seen.WedgesSawnPerRing, 4 * Math.Sqrt(2 * 16.0 / Rings));
    }

    [Fact]
    public void Gauge_far_out_changes_nothing()
    {
        RingMaking making = new(CutRuns.OneRun(18), new(0, Sd));
        ChainResult plain = ChanceChain.Simulate(making, new(10_000, 1, 0.01));
        ChainResult gauged = ChanceChain.Simulate(making with { GaugeLimit = 1 }, new(10_000, 1, 0.01));
        Assert.Equal(plain.Sd, gauged.Sd);
        Assert.Equal(18, gauged.WedgesSawnPerRing);
    }

    [Fact]
    public void Gauge_that_hardly_any_wedge_passes_is_refused() =>
        Assert.Throws<BadInputException>(
            () => ChanceChain.Simulate(new(CutRuns.OneRun(18), new(0, Sd), GaugeLimit: Sd / 1000), new(100, 1, 0.01)));

    [Fact]
    public void Gauge_with_a_setting_error_is_refused() =>
        Assert.Throws<BadInputException>(
            () => ChanceChain.Simulate(new(CutRuns.OneRun(18), new(0, Sd), new(Sd, 2), GaugeLimit: Sd), new(100, 1, 0.01)));

    /// <summary>The same rule written out one ring at a time, with MathNet's normals.</summary>
    private static (double Variance, double Closed, double Sawn) PlainLoop(int wedges, double limit, double closing)
    {
        Normal normal = new(0, Sd, new MathNet.Numerics.Random.MersenneTwister(5));
        double square = 0, closed = 0, sawn = 0;
        for (int ring = 0; ring < Rings; ring++)
        {
            double sum = 0, before = normal.Sample();
            for (int kept = 0; kept < wedges; sawn++)
            {
                double after = normal.Sample();
                if (Math.Abs(before + after) <= limit)
                {
                    sum += before + after;
                    kept++;
                }

                before = after;
            }

            square += sum * sum;
            closed += Math.Abs(sum) <= closing ? 1 : 0;
        }

        return (square / Rings, closed / Rings, sawn / Rings);
    }
}
