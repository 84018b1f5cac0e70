using CsCheck;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Diagnosis of rings whose truth is known, readings by the exact dry fit.</summary>
public class DiagnosisTests
{
    private const double Degree = Math.PI / 180;

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.005)]
    [InlineData(-0.02)]
    [InlineData(-0.005)]
    public void The_closing_error_is_found_within_its_uncertainty(double closing)
    {
        DryFitResult fit = DiagnosisRings.Fit(closing);
        FitDiagnosis diagnosis = FitDiagnosis.Of(
            DiagnosisRings.Ring(),
            [DiagnosisRings.Gathered(fit, OpenAt.Rim), DiagnosisRings.Gathered(fit, OpenAt.Centre), DiagnosisRings.HalfRing(closing)]);

        (double mean, double sd) = diagnosis.ClosingError;
        Assert.InRange(mean, closing - (2 * sd), closing + (2 * sd));
        Assert.InRange(sd, 0, 0.003);
        Assert.True(diagnosis.Agreement.IsConsistent);
    }

    /// <summary>A sign that cannot be wrong: the corrected fences make a ring that closes better.</summary>
    [Fact]
    public void The_correction_makes_the_next_ring_close_better() =>
        Gen.Select(Gen.Double[0.03, 0.3], Gen.Bool, Gen.Enum<SledKind>()).Sample(
            (size, wide, sled) =>
            {
                double fence = (wide ? 1 : -1) * size * Degree;
                double closing = DiagnosisRings.ClosingError(fence);
                DryFitResult fit = DiagnosisRings.Fit(closing);
                OpenAt open = closing > 0 ? OpenAt.Rim : OpenAt.Centre;
                FitDiagnosis diagnosis = FitDiagnosis.Of(DiagnosisRings.Ring(sled), [DiagnosisRings.Gathered(fit, open)]);

                double after = DiagnosisRings.ClosingError(fence + diagnosis.Correction.FenceAngle);
                Assert.True(Math.Abs(after) < 0.5 * Math.Abs(closing), $"{closing} became {after}");
                Assert.Equal(closing > 0 ? FenceMove.AwayFromSquare : FenceMove.TowardsSquare, diagnosis.Correction.Move);
                Assert.Equal(2 * DiagnosisRings.N * diagnosis.Correction.FenceAngle, diagnosis.ClosingError.Mean, 1e-12);
            },
            iter: 60);

    /// <summary>Readings with honest noise: the stated uncertainty covers the truth as often as it says.</summary>
    [Fact]
    public void The_stated_uncertainty_is_honest()
    {
        int within = 0;
        var noise = new Random(7);
        double Normal(double sd) => sd * Math.Sqrt(-2 * Math.Log(1 - noise.NextDouble())) * Math.Cos(2 * Math.PI * noise.NextDouble());
        const int Trials = 400;
        for (int i = 0; i < Trials; i++)
        {
            double closing = Normal(DiagnosisRings.N * 0.25 * Degree / 3);
            double belly = Normal(0.05);
            double both = Math.Max(0, belly);
            double Read(double gap) => Math.Max(0, gap + Normal(0.05));
            FitDiagnosis diagnosis = FitDiagnosis.Of(
                DiagnosisRings.Ring(),
                [
                    new GatheredGap(OpenAt.Rim, JointLevel.Middle, Read((closing > 0 ? DiagnosisRings.Rim * closing : 0) + both)),
                    new GatheredGap(OpenAt.Centre, JointLevel.Middle, Read((closing > 0 ? DiagnosisRings.Tip * closing : -(DiagnosisRings.Rim - DiagnosisRings.Tip) * closing) + both)),
                ]);
            (double mean, double sd) = diagnosis.ClosingError;
            if (Math.Abs(mean - closing) <= 2 * sd) within++;
        }

        Assert.InRange(within / (double)Trials, 0.9, 1);
    }

    [Fact]
    public void One_reading_gives_the_right_answer_with_a_wide_margin()
    {
        DryFitResult fit = DiagnosisRings.Fit(0.02);
        FitDiagnosis one = FitDiagnosis.Of(DiagnosisRings.Ring(), [new BandedGap(0, OpenAt.Rim, JointLevel.Top, fit.Joints[0].RimTop)]);
        FitDiagnosis more = FitDiagnosis.Of(
            DiagnosisRings.Ring(),
            [new BandedGap(0, OpenAt.Rim, JointLevel.Top, fit.Joints[0].RimTop), DiagnosisRings.Gathered(fit, OpenAt.Rim, JointLevel.Top), DiagnosisRings.HalfRing(0.02)]);

        Assert.InRange(0.02, one.ClosingError.Mean - (2 * one.ClosingError.Sd), one.ClosingError.Mean + (2 * one.ClosingError.Sd));
        Assert.False(one.Correction.IsWorthwhile);
        Assert.True(one.ClosingError.Sd > 3 * more.ClosingError.Sd);
        Assert.True(more.Correction.IsWorthwhile);
    }

    [Fact]
    public void Readings_that_contradict_each_other_are_named()
    {
        FitDiagnosis diagnosis = FitDiagnosis.Of(
            DiagnosisRings.Ring(),
            [new GatheredGap(OpenAt.Rim, JointLevel.Middle, 0.8), new HalfRingGap(OpenAt.Centre, 0.4)]);

        Assert.Equal([0, 1], diagnosis.Agreement.Odd);
        Assert.InRange(diagnosis.Agreement.Chance, 0, 0.01);
        Assert.Contains("contradict each other", diagnosis.Advice[0].Template, StringComparison.Ordinal);
    }

    [Fact]
    public void The_one_reading_that_does_not_go_with_the_others_is_named()
    {
        DryFitResult fit = DiagnosisRings.Fit(0.02);
        FitDiagnosis diagnosis = FitDiagnosis.Of(
            DiagnosisRings.Ring(),
            [DiagnosisRings.Gathered(fit, OpenAt.Rim), DiagnosisRings.HalfRing(0.02), new GatheredGap(OpenAt.Centre, JointLevel.Middle, 2)]);

        Assert.Equal([2], diagnosis.Agreement.Odd);
        Assert.StartsWith("Reading 3", diagnosis.Advice[0].Template, StringComparison.Ordinal);
    }

    /// <summary>Blade lean on a flipped board: open at the top only.</summary>
    [Theory]
    [InlineData(SledKind.OneFence, "turning the board over")]
    [InlineData(SledKind.DiscSander, "table")]
    [InlineData(SledKind.TwoFences, "never turned over")]
    public void An_opening_at_the_top_alone_is_lean(SledKind sled, string words)
    {
        FitDiagnosis diagnosis = FitDiagnosis.Of(
            DiagnosisRings.Ring(sled),
            [
                new GatheredGap(OpenAt.Rim, JointLevel.Top, 0.3), new GatheredGap(OpenAt.Rim, JointLevel.Bottom, 0),
                new GatheredGap(OpenAt.Centre, JointLevel.Top, 0.3), new GatheredGap(OpenAt.Centre, JointLevel.Bottom, 0),
            ]);

        FitCause first = diagnosis.Causes[0];
        Assert.Equal(FitCauseKind.Lean, first.Kind);
        Assert.InRange(first.Mean, 0.2, 0.35);
        Assert.Contains(words, first.Sentence.Template, StringComparison.Ordinal);
        Assert.False(diagnosis.Correction.IsWorthwhile);
    }

    [Fact]
    public void Open_at_both_ends_is_the_shape_of_the_faces()
    {
        FitObservation[] readings =
        [
            .. from at in Enum.GetValues<OpenAt>()
               from level in new[] { JointLevel.Bottom, JointLevel.Top }
               select new GatheredGap(at, level, 0.12, 0.02),
        ];
        FitDiagnosis diagnosis = FitDiagnosis.Of(DiagnosisRings.Ring(), readings);

        Assert.Equal(FitCauseKind.FaceShape, diagnosis.Causes[0].Kind);
        Assert.InRange(diagnosis.Causes[0].Mean, 0.07, 0.15);
    }

    [Fact]
    public void One_joint_unlike_the_others_is_an_uneven_wedge()
    {
        FitObservation[] readings = [.. Enumerable.Range(0, 6).Select(j => new BandedGap(j, OpenAt.Rim, JointLevel.Middle, j == 3 ? 0.25 : 0.02))];
        FitDiagnosis diagnosis = FitDiagnosis.Of(DiagnosisRings.Ring(), readings, new(ScatterSd: 0.15 * Degree));

        FitCause odd = diagnosis.Causes.Where(c => c.Kind == FitCauseKind.UnevenWedge).MaxBy(c => c.Mean)!;
        Assert.Equal(3, odd.Joint);
        Assert.InRange(odd.Mean, 0.05, 0.25);
    }

    /// <summary>Design section 6: each fence by E/(2N), so at distance D by D E/(2N) to first order; exactly, the rule is read square to the square line.</summary>
    [Fact]
    public void The_rule_moves_by_distance_times_error_over_twice_the_segments()
    {
        FitDiagnosis diagnosis = FitDiagnosis.Of(DiagnosisRings.Ring(), [DiagnosisRings.Gathered(DiagnosisRings.Fit(0.02), OpenAt.Rim)]);
        FenceCorrection c = diagnosis.Correction;

        double turn = diagnosis.ClosingError.Mean / (2 * DiagnosisRings.N);
        double slope = 1 / Math.Pow(Math.Cos(Math.PI / DiagnosisRings.N), 2);
        Assert.Equal(turn, c.FenceAngle, 1e-12);
        Assert.Equal(300 * turn * slope, c.RuleMove, 1e-4);
        Assert.Equal(2, c.Fences);
        string words = string.Join(" ", diagnosis.Advice.Select(s => s.In(MeasureStyle.Millimetres)));
        Assert.Contains("away from square", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rule_shows_the_new_angle_less_the_old() =>
        Gen.Select(Gen.Double[0, 1.05], Gen.Double[-0.01, 0.01], Gen.Double[10, 3000]).Sample(
            (angle, change, distance) =>
            {
                FenceCorrection correction = new(SledKind.OneFence, angle, change, 0, distance);
                Assert.Equal(distance * Math.Tan(angle + change), (distance * Math.Tan(angle)) + correction.RuleChange, 1e-9);
                Assert.True(change * correction.RuleChange >= 0, "They go the same way.");
            });

    /// <summary>The first sentence is the answer; a fence is moved only on readings that say so, and never without the caution.</summary>
    [Fact]
    public void The_answer_comes_first()
    {
        FitDiagnosis sure = FitDiagnosis.Of(DiagnosisRings.Ring(), [new GatheredGap(OpenAt.Centre, JointLevel.Middle, 0.8), new GatheredGap(OpenAt.Rim, JointLevel.Middle, 0)]);
        Assert.StartsWith("Move each of the two fences towards square by", sure.Advice[0].Template, StringComparison.Ordinal);
        Assert.Contains("pull the plug", sure.Caution, StringComparison.Ordinal);
        FitDiagnosis closed = FitDiagnosis.Of(DiagnosisRings.Ring(), [new GatheredGap(OpenAt.Rim, JointLevel.Middle, 0), new GatheredGap(OpenAt.Centre, JointLevel.Middle, 0)]);
        Assert.StartsWith("Leave the fences", closed.Advice[0].Template, StringComparison.Ordinal);
        Assert.Null(closed.Caution);
    }

    /// <summary>With the angle of every wedge of the ring the fences' share of E is known to sqrt(N (scatter² + caliper²)), nothing more.</summary>
    [Fact]
    public void Angles_of_all_wedges_are_not_doubted_twice()
    {
        DiagnosisPriors priors = new();
        const double Caliper = 0.02 * Degree;
        FitDiagnosis d = FitDiagnosis.Of(DiagnosisRings.Ring(), [.. Enumerable.Repeat(new WedgeAngleReading((15 - 0.1) * Degree, Caliper), DiagnosisRings.N)], priors);
        double expected = Math.Sqrt(((priors.ScatterSd * priors.ScatterSd) + (Caliper * Caliper)) / DiagnosisRings.N) / 2;
        Assert.Equal(0.05 * Degree, d.Correction.FenceAngle, 0.001 * Degree);
        Assert.Equal(expected, d.Correction.FenceAngleSd, 0.01 * expected);
    }

    [Fact]
    public void Every_sentence_can_be_printed() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[0, 23], Gen.Enum<SledKind>()).Sample(
        (rim, centre, joint, sled) =>
        {
            FitDiagnosis d = FitDiagnosis.Of(
                DiagnosisRings.Ring(sled, tip: 0),
                [new GatheredGap(OpenAt.Rim, JointLevel.Top, rim), new BandedGap(joint, OpenAt.Centre, JointLevel.Bottom, centre), new WedgeAngleReading(15 * Degree, 0.05 * Degree)]);
            foreach (string text in d.Causes.Select(c => c.Sentence).Concat(d.Advice).Select(s => s.In(MeasureStyle.Millimetres)))
                Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
            Assert.All(d.Causes, c => Assert.InRange(c.Chance, 0, 1));
        });

    [Fact]
    public void Readings_that_cannot_be_are_refused()
    {
        Assert.Contains("no reading", Assert.Throws<BadInputException>(() => FitDiagnosis.Of(DiagnosisRings.Ring(), [])).Message, StringComparison.Ordinal);
        Assert.Contains("reading 1", Refused(DiagnosisRings.Ring(), new GatheredGap(OpenAt.Rim, JointLevel.Top, -1)), StringComparison.Ordinal);
        Assert.Contains("joint", Refused(DiagnosisRings.Ring(), new BandedGap(24, OpenAt.Rim, JointLevel.Top, 0.1)), StringComparison.Ordinal);
        Assert.Contains("halves", Refused(DiagnosisRings.Ring(segments: 9), new HalfRingGap(OpenAt.Rim, 0.1)), StringComparison.Ordinal);
        Assert.Contains("rim radius", Refused(DiagnosisRings.Ring() with { RimRadius = 0 }, new HalfRingGap(OpenAt.Rim, 0.1)), StringComparison.Ordinal);
    }

    private static string Refused(DiagnosedRing ring, FitObservation reading) =>
        Assert.Throws<BadInputException>(() => FitDiagnosis.Of(ring, [reading])).Message;
}
