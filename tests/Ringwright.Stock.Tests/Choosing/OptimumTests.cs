using CsCheck;
using Ringwright.Core.Fitting;
using Ringwright.Stock.Choosing;

namespace Ringwright.Stock.Tests.Choosing;

public class OptimumTests
{
    private static readonly string[] NoPattern = [];
    private static readonly string[] TwoWoods = ["maple", "walnut"];
    private static readonly string[] Feature = ["maple", "maple", "walnut"];

    private static WedgeChoice Choose(WedgeChoiceInput input) => new WedgeChooser().Choose(input, cancel: TestContext.Current.CancellationToken);

    public static TheoryData<int, int, string[], Closing, double> SmallRings => new()
    {
        { 4, 2, NoPattern, Closing.Whole, 0.001 },
        { 5, 2, NoPattern, Closing.Whole, 0.001 },
        { 6, 2, NoPattern, Closing.Whole, 0.001 },
        { 6, 1, NoPattern, Closing.Whole, 0 },
        { 4, 2, TwoWoods, Closing.Whole, 0.001 },
        { 6, 2, TwoWoods, Closing.Whole, 0.01 },
        { 6, 2, Feature, Closing.Whole, 0.001 },
        { 4, 2, NoPattern, Closing.Halves, 0.001 },
        { 6, 2, NoPattern, Closing.Halves, 0.01 },
        { 4, 2, TwoWoods, Closing.Halves, 0.001 },
        { 6, 2, Feature, Closing.Halves, 0.001 },
    };

    [Theory]
    [MemberData(nameof(SmallRings))]
    public void Agrees_with_trying_every_ring(int places, int spares, string[] pattern, Closing closing, double resolution)
    {
        for (int seed = 1; seed <= 4; seed++)
        {
            var input = Readings.Make(places, spares, seed, pattern.Length == 0 ? null : pattern, closing, resolution: resolution);
            var choice = Choose(input);
            Assert.Equal(BruteForce.Best(input), BruteForce.Score(input, choice.RingOf()));
            Assert.True(choice.Proof.FitProved && choice.Proof.TotalStep.Proved);
        }
    }

    [Fact]
    public void Agrees_with_trying_every_ring_when_single_nanoradians_count()
    {
        var input = Readings.Make(6, 2, 9) with { GapStep = 0 };
        Assert.Equal(BruteForce.Best(input), BruteForce.Score(input, Choose(input).RingOf()));
    }

    public static TheoryData<WedgeChoiceInput> LargeRings => new()
    {
        Readings.Make(36, 8, 1),
        Readings.Make(36, 8, 2, resolution: 0.01),
        Readings.Make(36, 10, 3, biasMrad: 2),
        Readings.Make(24, 6, 1, TwoWoods),
        Readings.Make(24, 6, 2, TwoWoods, woodBiasMrad: 2, resolution: 0.01),
        Readings.Make(18, 2, 1, closing: Closing.Halves, resolution: 0.01),
        Readings.Make(36, 8, 1, closing: Closing.Halves, resolution: 0.01),
    };

    [Theory]
    [MemberData(nameof(LargeRings), DisableDiscoveryEnumeration = true)]
    public void Large_rings_are_proved_within_the_usual_work(WedgeChoiceInput input)
    {
        var choice = Choose(input);
        Assert.True(choice.Proof.Gap.Proved, $"gap {choice.Proof.Gap}");
        Assert.True(choice.Proof.Wander.Proved, $"wander {choice.Proof.WanderLength}");
    }

    [Fact]
    public void Bounds_are_never_above_what_was_found() =>
        Gen.Select(Gen.Int[4, 12], Gen.Int[0, 4], Gen.Int[0, 999], Gen.Double[-2, 2]).Sample(
            (places, spares, seed, bias) =>
            {
                var proof = Choose(Readings.Make(places, spares, seed, biasMrad: bias)).Proof;
                return new[] { proof.Gap, proof.GapAngle, proof.Wander, proof.WanderLength, proof.TotalStep }.All(p => p.Bound <= p.Found && p.Bound >= 0);
            },
            iter: 20);

    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-4)]
    [InlineData(1e-3)]
    public void A_chooser_without_time_claims_nothing_false(double workLimit)
    {
        for (int seed = 1; seed <= 4; seed++)
        {
            var input = Readings.Make(6, 2, seed, closing: seed % 2 == 0 ? Closing.Halves : Closing.Whole);
            var hurried = new WedgeChooser(workLimit).Choose(input, cancel: TestContext.Current.CancellationToken);
            var best = BruteForce.Best(input);
            var found = BruteForce.Score(input, hurried.RingOf());
            Assert.True(hurried.Proof.Gap.Bound <= best.Gap * input.GapStep);
            Assert.True(!hurried.Proof.Gap.Proved || found.Gap == best.Gap);
            Assert.True(!hurried.Proof.FitProved || found.Wander == best.Wander);
        }
    }
}
