using CsCheck;
using MathNet.Numerics.Distributions;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

public class SparesTests
{
    // Smallest n with P(at least k good of n) >= confidence, computed outside this project in exact rational arithmetic
    // (R: k + qnbinom(conf, k, p)).
    [Theory]
    [InlineData(12, 0.80, 0.90, 18)]
    [InlineData(12, 0.90, 0.90, 15)]
    [InlineData(12, 0.95, 0.90, 14)]
    [InlineData(12, 0.98, 0.90, 13)]
    [InlineData(18, 0.80, 0.90, 26)]
    [InlineData(18, 0.90, 0.90, 22)]
    [InlineData(18, 0.95, 0.90, 20)]
    [InlineData(18, 0.98, 0.90, 19)]
    [InlineData(24, 0.80, 0.90, 34)]
    [InlineData(24, 0.90, 0.90, 29)]
    [InlineData(24, 0.95, 0.90, 27)]
    [InlineData(24, 0.98, 0.90, 25)]
    [InlineData(36, 0.80, 0.90, 49)]
    [InlineData(36, 0.90, 0.90, 43)]
    [InlineData(36, 0.95, 0.90, 40)]
    [InlineData(36, 0.98, 0.90, 38)]
    public void Agrees_with_exact_arithmetic(int needed, double good, double confidence, int sawn) =>
        Assert.Equal(sawn, Spares.ToSaw(needed, 1 - good, confidence));

    // Zero-failure demonstration tests: n = ceil(ln 0.05 / ln(1 - p)) for one failure at 95 %, published 99 and 299 for 3 % and 1 %.
    [Theory]
    [InlineData(0.97, 99)]
    [InlineData(0.99, 299)]
    public void Agrees_with_the_zero_failure_rule(double loss, int sawn) => Assert.Equal(sawn, Spares.ToSaw(1, loss, 0.95));

    [Fact]
    public void Chance_agrees_with_MathNet() =>
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 30], Gen.Double[0, 0.6]).Sample((needed, spares, loss) =>
        {
            double theirs = 1 - Binomial.CDF(1 - loss, needed + spares, needed - 1);
            return Math.Abs(Spares.ChanceOfEnough(needed, needed + spares, loss) - theirs) < 1e-9;
        });

    [Fact]
    public void One_wedge_fewer_would_not_be_enough() =>
        Gen.Select(Gen.Int[1, 100], Gen.Double[0.001, 0.5], Gen.Double[0.5, 0.999]).Sample((needed, loss, confidence) =>
        {
            int sawn = Spares.ToSaw(needed, loss, confidence);
            return Spares.ChanceOfEnough(needed, sawn, loss) >= confidence && (sawn == needed || Spares.ChanceOfEnough(needed, sawn - 1, loss) < confidence);
        });

    [Theory]
    [InlineData(-1, 0.1, 0.9)]
    [InlineData(3, 1, 0.9)]
    [InlineData(3, -0.1, 0.9)]
    [InlineData(3, double.NaN, 0.9)]
    [InlineData(3, 0.1, 1)]
    public void Refuses_what_cannot_be(int needed, double loss, double confidence) =>
        Assert.Throws<BadInputException>(() => Spares.ToSaw(needed, loss, confidence));
}
