using CsCheck;
using MathNet.Numerics.Distributions;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Loss of wedges and the spares it asks for.</summary>
public class LearningLossTests
{
    [Fact]
    public void Posterior_is_the_beta_of_lost_and_good()
    {
        LossBelief loss = HandBelief.Unrecorded.Update(new RunRecord { PiecesSawn = 40, PiecesLost = 5 }).Loss;
        Assert.Equal(6, loss.LostWorth, 12);
        Assert.Equal(54, loss.GoodWorth, 12);
        Assert.Equal(0.1, loss.NextLost, 12);
        Assert.Equal(1.0 / 3, loss.PriorWeight, 12);
        CredibleInterval interval = loss.Interval(0.9);
        Assert.Equal(0.05, Beta.CDF(6, 54, interval.Low), 6);
        Assert.Equal(0.95, Beta.CDF(6, 54, interval.High), 6);
    }

    [Theory] // Computed in exact rational arithmetic (Fraction in Python): needed, chance good, confidence, least number.
    [InlineData(18, 0.80, 0.95, 27)]
    [InlineData(18, 0.90, 0.95, 23)]
    [InlineData(18, 0.95, 0.90, 20)]
    [InlineData(18, 0.95, 0.95, 21)]
    [InlineData(18, 0.98, 0.99, 20)]
    [InlineData(12, 0.95, 0.99, 15)]
    [InlineData(24, 0.95, 0.95, 27)]
    public void Loss_known_for_certain_asks_for_the_binomial_number(int needed, double good, double confidence, int least) =>
        Assert.Equal(least, LearnedSpares.ToSaw(new(1 - good, 1e9), needed, confidence));

    [Theory] // Smallest n for more than 5 successes at p = 0.5 with risk a, Boost.Math's negative binomial example (outputs from memory).
    [InlineData(0.25, 14)]
    [InlineData(0.05, 18)]
    [InlineData(0.00001, 36)]
    public void Published_sample_sizes_come_out(double risk, int least) =>
        Assert.Equal(least, LearnedSpares.ToSaw(new(0.5, 1e12), 6, 1 - risk));

    [Fact]
    public void Chance_agrees_with_the_beta_binomial_of_MathNet() =>
        Gen.Select(Gen.Double[0.01, 0.6], Gen.Double[1, 200], Gen.Int[1, 40], Gen.Int[0, 15]).Sample((mean, worth, needed, spares) =>
        {
            LossBelief loss = new(mean, worth);
            BetaBinomial lost = new(needed + spares, loss.LostWorth, loss.GoodWorth);
            double expected = Enumerable.Range(0, spares + 1).Sum(lost.Probability);
            Assert.Equal(expected, LearnedSpares.ChanceOfEnough(loss, needed, needed + spares), 1e-9);
        });

    [Fact]
    public void Chance_of_one_wedge_is_that_of_the_next_one() =>
        Assert.Equal(0.95, LearnedSpares.ChanceOfEnough(new(0.05, 20), 1, 1), 12);

    [Fact]
    public void Number_is_the_least_that_reaches_the_confidence() =>
        Gen.Select(Gen.Double[0.01, 0.3], Gen.Double[10, 200], Gen.Int[1, 40], Gen.Double[0.5, 0.99]).Sample((mean, worth, needed, confidence) =>
        {
            LossBelief loss = new(mean, worth);
            int sawn = LearnedSpares.ToSaw(loss, needed, confidence);
            Assert.True(LearnedSpares.ChanceOfEnough(loss, needed, sawn) >= confidence);
            Assert.True(LearnedSpares.ChanceOfEnough(loss, needed, sawn - 1) < confidence);
        });

    [Fact]
    public void Unsure_loss_asks_for_more_than_the_same_loss_known() =>
        Assert.True(LearnedSpares.ToSaw(new(0.1, 10), 18, 0.95) > LearnedSpares.ToSaw(new(0.1, 1e9), 18, 0.95));

    [Fact]
    public void Hopeless_wish_is_refused() =>
        Assert.Throws<BadInputException>(() => LearnedSpares.ToSaw(new(0.999, 1), 18, 0.999));
}
