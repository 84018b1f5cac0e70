using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Fitting;

public class FitForecastTests
{
    private static readonly Shop Exact = Shop.Starting with
    {
        Saw = Shop.Starting.Saw with { KerfSd = default },
        Sanding = Shop.Starting.Sanding with { Unevenness = default },
        Hands = new() { AngleSd = default, SettingSd = default, StopSd = default },
    };

    private static RingPlan Plan(Shop shop, int segments = 24, double inner = 0)
    {
        Ring ring = inner == 0
            ? new WedgeDisc { Name = "Disc", Segments = segments, Diameter = Length.FromMillimetres(30), Thickness = Length.FromMillimetres(20), Tip = Length.FromMillimetres(0.5), Woods = ["maple", "padauk"] }
            : new SegmentRing { Name = "Ring", Segments = segments, Diameter = Length.FromMillimetres(80), InnerDiameter = Length.FromMillimetres(inner), Thickness = Length.FromMillimetres(18), Woods = ["oak"] };
        return Planner.Plan(new() { Name = "Test", Rings = [ring] }, shop).Rings[0];
    }

    [Fact]
    public void Without_any_error_every_ring_closes()
    {
        FitForecast forecast = FitForecast.Of(Plan(Exact), Exact, 20, 1);
        Assert.Equal(0, forecast.Unsettled);
        Assert.True(forecast.Band[^1] < 1e-6, $"{forecast.Band[^1]} mm");
        Assert.True(Math.Abs(forecast.ClosingMean) < 1e-9);
        Assert.Empty(forecast.Causes);
    }

    // The whole chain (exact clipping, sanding, shared cuts) against the closed form: variance (4 N − 2 runs) σ² + N² 2 s² + 2 N τ².
    // 400 rings: the sample's standard deviation scatters by 1/√800 = 3.5 %; 4 of these are allowed.
    [Theory]
    [InlineData(SledKind.TwoFences)]
    [InlineData(SledKind.OneFence)]
    [InlineData(SledKind.DiscSander)]
    public void Spread_of_the_closing_error_is_that_of_the_closed_form(SledKind kind)
    {
        Shop shop = Shop.Starting with { Sled = new() { Kind = kind }, Sanding = Shop.Starting.Sanding with { PerFace = Length.FromMillimetres(0.2) } };
        FitForecast forecast = FitForecast.Of(Plan(shop, 16, 50), shop, 400, 7);
        Assert.Equal(1, forecast.ClosingSd / forecast.Expected.Sd, 0.15);
        Assert.Equal(0, forecast.ClosingMean / (forecast.Expected.Sd / 20), 4.0);
    }

    [Fact]
    public void A_constant_error_opens_the_ring_by_what_the_closed_form_says()
    {
        Shop shop = Exact with { Hands = Exact.Hands with { AngleBias = Angle.FromDegrees(-0.1) } };
        RingPlan plan = Plan(shop, 16, 50);
        FitForecast forecast = FitForecast.Of(plan, shop, 20, 1);
        // E = 2 N · 0.1° opens the last joint by R E at the rim when gathered; shared by a band each joint turns about its tip.
        double e = 2 * 16 * 0.1 * Math.PI / 180;
        Assert.Equal(e, forecast.ClosingMean, 1e-9);
        double face = plan.Glued.Depth / Math.Cos(plan.Glued.HalfAngle);
        Assert.Equal(e * plan.Glued.OuterCorner, forecast.Gathered[0], 0.02 * e * plan.Glued.OuterCorner);
        Assert.Equal(e * face / 16, forecast.Band[0], 0.02 * e * face / 16);
    }

    [Fact]
    public void Same_seed_same_forecast()
    {
        FitForecast a = FitForecast.Of(Plan(Shop.Starting), Shop.Starting, 40, 3);
        FitForecast b = FitForecast.Of(Plan(Shop.Starting), Shop.Starting, 40, 3);
        Assert.Equal(a.Band.AsEnumerable(), b.Band);
        Assert.Equal(a.Causes.AsEnumerable(), b.Causes);
    }

    [Fact]
    public void The_largest_cause_is_named_first()
    {
        Shop shop = Shop.Starting with { Hands = Shop.Starting.Hands with { SettingSd = Angle.FromDegrees(0.3) } };
        Assert.Equal(ErrorCause.Setting, FitForecast.Of(Plan(shop), shop, 80, 5).Causes[0].Cause);
    }

    [Fact]
    public void A_leaning_blade_on_one_fence_opens_one_face()
    {
        Shop shop = Exact with { Saw = Exact.Saw with { Lean = Angle.FromDegrees(0.5) }, Sled = new() { Kind = SledKind.OneFence } };
        FitForecast forecast = FitForecast.Of(Plan(shop, 16, 50), shop, 20, 1);
        // Both faces lean by 0.5°, so every joint opens by 2 · h · tan 0.5° on one side.
        double opening = 2 * 18.5 * Math.Tan(0.5 * Math.PI / 180);
        Assert.Equal(opening, forecast.Band[0], 0.05 * opening);
    }

    [Fact]
    public void Can_be_stopped()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => FitForecast.Of(Plan(Shop.Starting), Shop.Starting, 1000, 1, null, stop.Token));
    }

    [Fact]
    public void Refuses_too_few_rings() => Assert.Throws<BadInputException>(() => FitForecast.Of(Plan(Shop.Starting), Shop.Starting, 3, 1));
}
