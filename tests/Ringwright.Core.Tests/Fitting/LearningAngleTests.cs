using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>The angle of a cut learned from measured wedges and rings.</summary>
public class LearningAngleTests
{
    private static readonly AnglePrior Prior = new(Bias: 0.0005, BiasWorth: 4, Sd: 0.001, SdWorth: 5);

    [Fact]
    public void Run_of_wedges_is_whitened_as_the_full_covariance_says() =>
        Gen.Double[-0.01, 0.01].List[1, 30].Sample(errors =>
        {
            // Generalised least squares with the tridiagonal covariance 2, 1 inverted by MathNet.
            int n = errors.Count;
            Matrix<double> inverse = Matrix<double>.Build.Dense(n, n, (i, j) => i == j ? 2 : Math.Abs(i - j) == 1 ? 1 : 0).Inverse();
            Vector<double> x = Vector<double>.Build.Dense(n, 2);
            Vector<double> y = Vector<double>.Build.DenseOfEnumerable(errors);
            AngleEvidence seen = Learn(new RunRecord { WedgeErrors = [errors] }, Prior).Evidence;
            Assert.Equal(x * inverse * x, seen.Information, 1e-9);
            Assert.Equal(x * inverse * y, seen.Score, 1e-9);
            Assert.Equal(y * inverse * y, seen.Square, 1e-9);
        });

    [Fact]
    public void Common_fence_error_is_integrated_out_as_the_full_covariance_says() =>
        Gen.Select(Gen.Double[-0.01, 0.01].List[1, 12], Gen.Double[0, 5]).Sample((errors, ratio) =>
        {
            int n = errors.Count;
            Matrix<double> covariance = Matrix<double>.Build.Dense(
                n, n, (i, j) => (i == j ? 2 : Math.Abs(i - j) == 1 ? 1 : 0) + 4 * ratio);
            Matrix<double> inverse = covariance.Inverse();
            Vector<double> x = Vector<double>.Build.Dense(n, 2);
            Vector<double> y = Vector<double>.Build.DenseOfEnumerable(errors);
            AngleEvidence seen = Learn(new RunRecord { WedgeErrors = [errors] }, Prior with { FenceVarianceRatio = ratio }).Evidence;
            Assert.Equal(x * inverse * x, seen.Information, 1e-8);
            Assert.Equal(x * inverse * y, seen.Score, 1e-8);
            Assert.Equal(y * inverse * y, seen.Square, 1e-8);
        });

    [Fact]
    public void Posterior_follows_the_conjugate_formula_for_independent_readings()
    {
        // Wedges trued face by face: y = 2 m + noise of variance 2 v. Worked by hand for two readings.
        AngleBelief belief = Learn(new RunRecord { WedgeErrors = [[0.002], [0.006]] }, Prior);
        const double worth = 4 + 2 + 2;
        const double bias = (4 * 0.0005 + 0.002 + 0.006) / worth;
        const double squares = 5e-6 + 4 * 0.0005 * 0.0005 + (0.002 * 0.002 + 0.006 * 0.006) / 2 - worth * bias * bias;
        Assert.Equal(worth, belief.BiasWorth, 12);
        Assert.Equal(bias, belief.Bias, 1e-15);
        Assert.Equal(7, belief.SdWorth);
        Assert.Equal(Math.Sqrt(squares / 7), belief.Sd, 1e-12);
        Assert.Equal(0.5, belief.PriorBiasWeight, 12);
        Assert.Equal(5.0 / 7, belief.PriorSdWeight, 12);
    }

    [Fact]
    public void Interval_of_the_bias_is_that_of_a_t_test_when_the_prior_is_worth_nothing()
    {
        // Ten readings 2 m + noise: the classical interval mean +- t(0.975, 9) s / sqrt 10, t = 2.2621571628 (tables, from memory).
        double[] errors = [1, 3, 2, 5, 4, 2, 3, 1, 6, 3];
        double mean = errors.Average() / 2000;
        double s = Math.Sqrt(errors.Sum(e => (e / 2000 - mean) * (e / 2000 - mean)) / 9);
        RunRecord record = new() { WedgeErrors = [.. errors.Select(e => new[] { e / 1000 })] };
        AngleBelief belief = Learn(record, new(0, 1e-9, 1e-9, 1e-9));

        // Even a worthless prior leaves two degrees of freedom more than readings: 12 instead of 9.
        double scale = s * Math.Sqrt(9.0 / 12) / Math.Sqrt(10);
        Assert.Equal(mean, belief.Bias, 1e-9);
        Assert.Equal(mean + 2.1788128297 * scale, belief.BiasInterval(0.95).High, 1e-8); // t(0.975, 12), from memory
    }

    [Fact]
    public void Closing_error_teaches_as_the_sum_of_its_wedges()
    {
        AngleEvidence seen = Learn(new RunRecord { Closures = [new(CutRuns.OneRun(18), -0.009)] }, Prior).Evidence;
        Assert.Equal(new(18, 1, 36.0 * 36 / 70, 36 * 0.009 / 70, 0.009 * 0.009 / 70), seen);
    }

    [Fact]
    public void Beliefs_find_the_truth_that_made_the_wedges()
    {
        // 60 runs of 18 wedges with shared cuts, bias 0.3 and sd 1 thousandths, from MathNet's normals.
        MathNet.Numerics.Distributions.Normal cut = new(0.0003, 0.001, new MathNet.Numerics.Random.MersenneTwister(8));
        RunRecord record = new() { WedgeErrors = [.. Enumerable.Range(0, 60).Select(_ => SharedCuts(cut, 18))] };
        AngleBelief belief = Learn(record, Prior);
        Assert.InRange(0.0003, belief.BiasInterval(0.999).Low, belief.BiasInterval(0.999).High);
        Assert.InRange(0.001, belief.SdInterval(0.999).Low, belief.SdInterval(0.999).High);
        Assert.Equal(0.001, belief.Sd, 0.0001);
        Assert.Equal(0.0003, belief.Bias, 0.0002);
    }

    [Fact]
    public void Intervals_hold_the_truth_as_often_as_they_say()
    {
        // Truth drawn from the prior itself: then a 90 % interval must hold it in 90 % of the cases, exactly.
        const int cases = 2000;
        Random random = new(4);
        MathNet.Numerics.Distributions.Gamma precision = new(3.5, 2.5 * 1e-6, random);
        int bias = 0, sd = 0, closing = 0;
        for (int i = 0; i < cases; i++)
        {
            double trueSd = Math.Sqrt(1 / precision.Sample());
            double trueBias = MathNet.Numerics.Distributions.Normal.Sample(random, 0.0005, trueSd / 2);
            MathNet.Numerics.Distributions.Normal cut = new(trueBias, trueSd, random);
            AngleBelief belief = Learn(new RunRecord { WedgeErrors = [SharedCuts(cut, 6)] }, Prior);
            bias += Holds(belief.BiasInterval(0.9), trueBias);
            sd += Holds(belief.SdInterval(0.9), trueSd);
            closing += Holds(belief.Closing(CutRuns.OneRun(9)).Interval(0.9), -SharedCuts(cut, 9).Sum());
        }

        double slack = 4 * Math.Sqrt(0.9 * 0.1 * cases);
        Assert.Equal(0.9 * cases, bias, slack);
        Assert.Equal(0.9 * cases, sd, slack);
        Assert.Equal(0.9 * cases, closing, slack);
    }

    [Fact]
    public void Prediction_is_wider_than_the_closed_form_with_the_best_guess()
    {
        AngleBelief belief = Learn(new RunRecord { WedgeErrors = [[0.002, 0.001, 0.003]] }, Prior);
        ClosureStatistics known = ClosureStatistics.Of(new(CutRuns.OneRun(18), belief.ToCutError()));
        StudentPrediction predicted = belief.Closing(CutRuns.OneRun(18));
        Assert.Equal(known.Mean, predicted.Mean, 1e-12);
        Assert.True(predicted.Sd > known.Sd);
    }

    [Fact]
    public void Prediction_becomes_the_closed_form_when_all_is_known()
    {
        AngleBelief belief = new(new(0.0001, 1e9, 0.001, 1e9));
        ClosureStatistics known = ClosureStatistics.Of(new(new(18, 2), new(0.0001, 0.001)));
        Assert.Equal(known.Sd, belief.Closing(new(18, 2)).Sd, 1e-7);
        Assert.Equal(known.ChanceToClose(0.006), belief.Closing(new(18, 2)).ChanceWithin(0.006), 1e-4);
        Assert.Equal(0.001, belief.NextCut().Sd, 1e-9);
    }

    private static AngleBelief Learn(RunRecord record, AnglePrior prior) =>
        (HandBelief.Unrecorded with { Angle = new(prior) }).Update(record).Angle;

    private static double[] SharedCuts(MathNet.Numerics.Distributions.Normal cut, int wedges)
    {
        double[] cuts = [.. cut.Samples().Take(wedges + 1)];
        return [.. cuts.Zip(cuts.Skip(1), (a, b) => a + b)];
    }

    private static int Holds(CredibleInterval interval, double value) => value >= interval.Low && value <= interval.High ? 1 : 0;
}
