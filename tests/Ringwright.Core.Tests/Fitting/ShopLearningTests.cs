using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Fitting;

public class ShopLearningTests
{
    private static RunLog Log(params LoggedRun[] runs) => new() { Name = "Test", Runs = [.. runs] };

    private static LoggedRun Run(int sawn = 0, int lost = 0, params double[] measured) => new()
    {
        Sled = SledKind.TwoFences,
        WedgeAngle = Angle.FromDegrees(15),
        Measured = [[.. measured.Select(Angle.FromDegrees)]],
        Sawn = sawn,
        Lost = lost,
    };

    [Fact]
    public void Wedges_measured_too_wide_teach_a_positive_bias_that_the_next_plan_expects()
    {
        Shop learned = ShopLearning.Learn(Shop.Starting, Log(Run(0, 0, [.. Enumerable.Repeat(15.1, 60)])));
        Assert.InRange(learned.Hands.AngleBias.Degrees, 0.04, 0.05);
        Assert.Contains("60 wedges measured", learned.Hands.Basis, StringComparison.Ordinal);
        RingPlan plan = Planner.Plan(new() { Name = "T", Rings = [new WedgeDisc { Name = "D", Segments = 24, Diameter = Length.FromMillimetres(19), Thickness = Length.FromMillimetres(20), Woods = ["oak"] }] }, learned).Rings[0];
        Assert.True(plan["closing-mean"].Value < 0);
        Assert.Contains(plan["closing-mean"].Why.Inputs, i => i.Meaning.Contains("learned from the record", StringComparison.Ordinal));
    }

    [Fact]
    public void A_ring_open_at_the_rim_teaches_the_opposite_of_one_open_at_the_centre()
    {
        LoggedRun Ring(OpenAt at) => new()
        {
            Sled = SledKind.TwoFences,
            Closures = [new() { Wedges = 24, Gap = Length.FromMillimetres(0.5), At = at, Reach = Length.FromMillimetres(10) }],
        };
        double rim = ShopLearning.Learn(Shop.Starting, Log(Ring(OpenAt.Rim))).Hands.AngleBias.Radians;
        double centre = ShopLearning.Learn(Shop.Starting, Log(Ring(OpenAt.Centre))).Hands.AngleBias.Radians;
        Assert.True(rim < 0);
        Assert.Equal(-rim, centre, 1e-12);
    }

    [Fact]
    public void More_lost_wedges_ask_for_more_spares()
    {
        Shop careful = ShopLearning.Learn(Shop.Starting, Log(Run(100, 0)));
        Shop hasty = ShopLearning.Learn(Shop.Starting, Log(Run(100, 20)));
        Assert.True(careful.Hands.Loss < 0.02 && hasty.Hands.Loss > 0.15);
        Assert.True(
            LearnedSpares.ToSaw(new LossBelief(hasty.Hands.Loss, hasty.Hands.LossWorth!.Value), 24, 0.95)
            > LearnedSpares.ToSaw(new LossBelief(careful.Hands.Loss, careful.Hands.LossWorth!.Value), 24, 0.95));
    }

    [Fact]
    public void Runs_at_another_sled_teach_nothing_here() =>
        Assert.Throws<BadInputException>(() => ShopLearning.Learn(Shop.Starting with { Sled = new() { Kind = SledKind.OneFence } }, Log(Run(10, 1))));

    [Theory]
    [InlineData(5, 6, 0, 0)]
    [InlineData(-1, 0, 0, 0)]
    [InlineData(5, 1, 4, 0)]
    [InlineData(5, 1, 0, 3.5)]
    public void What_cannot_have_happened_is_refused_with_the_run(int sawn, int lost, int cuts, double minutes)
    {
        RunLog log = Log(Run(10, 0), Run(sawn, lost) with { Cuts = cuts, CuttingMinutes = minutes });
        Assert.StartsWith("run 2", Assert.Throws<BadInputException>(() => ShopLearning.Learn(Shop.Starting, log)).Message, StringComparison.Ordinal);
    }
}
