using CsCheck;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>How exact each cut must be for a wanted chance.</summary>
public class ChanceRequiredAccuracyTests
{
    [Fact]
    public void Without_bias_it_is_the_limit_over_z_root_factor()
    {
        RingMaking making = new(CutRuns.OneRun(18), new(0, 1));
        double sd = RequiredAccuracy.CutSd(making, 0.004, 0.95)!.Value;
        Assert.Equal(0.004 / (1.959963984540054 * Math.Sqrt(70)), sd, 1e-12); // z from memory, Abramowitz and Stegun 26.2
    }

    [Fact]
    public void It_gives_the_wanted_chance_back() =>
        Gen.Select(Gen.Int[3, 36], Gen.Int[1, 3], Gen.Double[0, 0.9], Gen.Double[0.05, 0.99], Gen.Double[0, 0.1])
            .Sample((wedges, runs, biasPart, chance, bad) =>
            {
                const double limit = 0.01;
                CutError cut = new(biasPart * limit / (2 * wedges), 0, new(bad, 0, 0.002));
                RingMaking making = new(new(wedges, runs), cut);
                if (RequiredAccuracy.CutSd(making, limit, chance) is not { } sd)
                    return ClosureStatistics.Of(making).ChanceToClose(limit) < chance;
                RingMaking reached = making with { Cut = cut with { Sd = sd } };
                return Math.Abs(ClosureStatistics.Of(reached).ChanceToClose(limit) - chance) < 1e-9;
            });

    [Fact]
    public void Bias_beyond_the_limit_cannot_be_sawn_away() =>
        Assert.Null(RequiredAccuracy.CutSd(new(CutRuns.OneRun(18), new(0.001, 0)), 0.004, 0.3));

    [Fact]
    public void Setting_error_alone_may_be_too_much() =>
        Assert.Null(RequiredAccuracy.CutSd(new(CutRuns.OneRun(18), new(0, 0), new(0.001, 2)), 0.004, 0.95));
}
