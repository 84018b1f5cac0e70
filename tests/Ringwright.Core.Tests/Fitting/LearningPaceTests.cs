using MathNet.Numerics.Distributions;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Minutes per cut and per sanded face.</summary>
public class LearningPaceTests
{
    private static readonly PaceBelief Prior = new(PriorMinutes: 0.5, PriorWorth: 10);

    [Fact]
    public void Record_outweighs_the_start_as_it_grows()
    {
        PaceBelief pace = Learn(90, 90);
        Assert.Equal((5 + 90) / 100.0, pace.MinutesPerPiece, 12);
        Assert.Equal(0.1, pace.PriorWeight, 12);
    }

    [Fact]
    public void Interval_leaves_out_as_much_as_it_says()
    {
        // 1 / minutes is gamma: checked with MathNet's distribution function, which the code reaches by its inverse.
        CredibleInterval interval = Learn(20, 12).Interval(0.9);
        Assert.Equal(0.95, Gamma.CDF(4 * 30 + 1, 4 * 17, 1 / interval.Low), 6);
        Assert.Equal(0.05, Gamma.CDF(4 * 30 + 1, 4 * 17, 1 / interval.High), 6);
    }

    [Fact]
    public void Predicted_minutes_hold_the_real_ones_as_often_as_they_say()
    {
        const int cases = 4000;
        Random random = new(2);
        Gamma truePace = new(41, 20, random);
        int held = 0;
        for (int i = 0; i < cases; i++)
        {
            double pace = truePace.Sample();
            PaceBelief belief = Learn(15, Gamma.Sample(random, 4 * 15, 4 * pace));
            CredibleInterval predicted = belief.NextMinutes(36, 0.9);
            double real = Gamma.Sample(random, 4 * 36, 4 * pace);
            held += real >= predicted.Low && real <= predicted.High ? 1 : 0;
        }

        Assert.Equal(0.9 * cases, held, 4 * Math.Sqrt(0.09 * cases));
    }

    [Fact]
    public void Seconds_for_minutes_change_the_unit_only()
    {
        PaceBelief minutes = Learn(20, 12);
        PaceBelief seconds = new(30, 10, 20, 720);
        Assert.Equal(60 * minutes.Interval(0.9).High, seconds.Interval(0.9).High, 1e-6);
    }

    private static PaceBelief Learn(int cuts, double minutes) =>
        (HandBelief.Unrecorded with { Cutting = Prior }).Update(new RunRecord { Cuts = cuts, CuttingMinutes = minutes }).Cutting;
}
