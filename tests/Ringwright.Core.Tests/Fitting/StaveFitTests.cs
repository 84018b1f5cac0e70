using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;
using Ringwright.Core.Tests.Planning;

namespace Ringwright.Core.Tests.Fitting;

public class StaveFitTests
{
    private static readonly Shop Exact = Shop.Starting with
    {
        Saw = Shop.Starting.Saw with { KerfSd = default },
        Sanding = Shop.Starting.Sanding with { Unevenness = default },
        Hands = new() { AngleSd = default, SettingSd = default, StopSd = default },
    };

    private static StaveRing Mug(double lean, int staves = 12) => new()
    {
        Name = "Mug",
        Segments = staves,
        Lean = Angle.FromDegrees(lean),
        Thickness = AnyPiece.Mm(100),
        Diameter = AnyPiece.Mm(110),
        InnerDiameter = AnyPiece.Mm(66),
        Woods = ["oak", "walnut", "oak"],
    };

    private static DryFitResult Fit(RingPlan plan, Shop shop, ErrorCause causes = ErrorCause.All) => DryFitSolver.Fit(RingJobs.Pieces(plan, shop, 1, causes).AsSpan());

    private static Shop With(SledKind kind) => Exact with { Sled = new() { Kind = kind }, Sanding = Exact.Sanding with { PerFace = AnyPiece.Mm(0.2) } };

    [Theory]
    [InlineData(8, SledKind.TwoFences)]
    [InlineData(-8, SledKind.OneFence)]
    [InlineData(8, SledKind.DiscSander)]
    [InlineData(0, SledKind.TwoFences)]
    [InlineData(0, SledKind.DiscSander)]
    public void Without_errors_every_joint_closes_above_and_below(double lean, SledKind kind)
    {
        DryFitResult fit = Fit(AnyStaves.Plan(Mug(lean), With(kind)), With(kind));
        Assert.True(fit.Summary.Settled);
        Assert.Equal(0, fit.Summary.ClosingError, 1e-9);
        Assert.Equal(0, fit.Summary.WorstGap, 1e-6);
        Assert.Equal(0, fit.Gathered.Gap.Worst, 1e-6);
    }

    // Cut by the saw on one side, by the planes of the ring on the other: the same wood, at both ends.
    [Fact]
    public void What_the_saw_leaves_is_the_planned_stave() =>
        AnyStaves.Ring.Sample(ring =>
        {
            RingPlan plan = AnyStaves.Plan(ring, Exact);
            StaveGeometry stave = plan.Stave!.Value;
            foreach (FitWedge piece in RingJobs.Pieces(plan, Exact, 1, ErrorCause.All))
            {
                Assert.Equal(Area(stave, stave.Bottom), piece.Bottom.Area, 1e-6);
                Assert.Equal(Area(stave, stave.Top), piece.Top.Area, 1e-6);
            }
        }, iter: 40);

    private static double Area(StaveGeometry stave, double z) =>
        Math.Tan(stave.HalfAngle) * (Math.Pow(stave.OuterApothem(z), 2) - Math.Pow(stave.InnerApothem(z), 2));

    [Theory]
    [InlineData(8)]
    [InlineData(-25)]
    [InlineData(0)]
    public void Faces_meet_at_the_angle_of_the_ring_and_ends_are_as_wide_as_planned(double lean)
    {
        StaveRing ring = lean == -25 ? Mug(lean) with { Diameter = AnyPiece.Mm(220) } : Mug(lean);
        RingPlan plan = AnyStaves.Plan(ring, Exact);
        foreach (SawnWedge stave in RingJobs.Saw(plan, Exact, 1, ErrorCause.All))
        {
            Assert.Equal(2 * Math.PI / 12, stave.FaceAngle, 1e-12);
            Assert.Equal(2 * plan.Stave!.Value.Mitre, stave.Angle, 1e-12);
            Assert.Equal(plan["rim-edge"].Value, stave.RimLength(plan["board-thickness"].Value), 1e-9);
            Assert.Equal(plan["tip"].Value, stave.TipLength(plan["board-thickness"].Value), 1e-9);
        }
    }

    // The whole chain against the closed form V·(St² + Sm²)·σc² + 4·N²·(St² + Sm²)·σf² + 2·N·τ².
    // 400 rings: a sample's standard deviation scatters by 1/√800 = 3.5 %, its mean by 1/20 of it; 4 of these are allowed.
    [Theory]
    [InlineData(8, SledKind.OneFence)]
    [InlineData(25, SledKind.TwoFences)]
    [InlineData(0, SledKind.OneFence)]
    [InlineData(8, SledKind.DiscSander)]
    [InlineData(0, SledKind.DiscSander)]
    public void Spread_of_the_closing_error_is_that_of_the_closed_form(double lean, SledKind kind)
    {
        Shop shop = Shop.Starting with { Sled = new() { Kind = kind }, Sanding = Shop.Starting.Sanding with { PerFace = AnyPiece.Mm(0.2) } };
        StaveRing ring = lean == 25 ? Mug(lean) with { Diameter = AnyPiece.Mm(220) } : Mug(lean);
        AssertSpread(AnyStaves.Plan(ring, shop), shop);
    }

    // Without the settings, which outweigh it, what is shared from cut to cut and what sanding turns must agree by itself.
    [Theory]
    [InlineData(8, 0)]
    [InlineData(0, 0)]
    [InlineData(8, 0.03)]
    [InlineData(0, 0.03)]
    public void Spread_from_cuts_and_from_sanding_is_that_of_the_closed_form(double lean, double unevenness)
    {
        Hands hands = unevenness > 0 ? Exact.Hands : Exact.Hands with { AngleSd = Angle.FromDegrees(0.05) };
        Shop shop = Exact with { Hands = hands, Sanding = Exact.Sanding with { PerFace = AnyPiece.Mm(0.2), Unevenness = AnyPiece.Mm(unevenness) } };
        AssertSpread(AnyStaves.Plan(Mug(lean), shop), shop);
    }

    private static void AssertSpread(RingPlan plan, Shop shop)
    {
        double[] errors = [.. Enumerable.Range(0, 400).Select(i => Closing(RingJobs.Pieces(plan, shop, 7 + (1_000_003UL * (ulong)i), ErrorCause.All)))];
        double mean = errors.Average(), sd = Math.Sqrt(errors.Sum(e => (e - mean) * (e - mean)) / 399);
        ClosingBudget expected = ClosingBudget.Of(plan, shop);
        Assert.Equal(plan["closing-spread"].Value, expected.Sd, 1e-15);
        Assert.Equal(1, sd / expected.Sd, 4 / Math.Sqrt(800));
        Assert.Equal(0, mean / (expected.Sd / 20), 4.0);
    }

    private static double Closing(ImmutableArray<FitWedge> pieces) => new DryFitSolver().Solve(pieces.AsSpan()).ClosingError;

    // E = 2π − 2 N acos(cos(tilt)·cos(mitre)) with the true angles, to first order 2 N St δ: a blade that leans less by δ makes every edge too small.
    [Theory]
    [InlineData(8)]
    [InlineData(-8)]
    [InlineData(0)]
    public void A_wrong_tilt_opens_the_ring_by_the_closed_form(double lean)
    {
        double off = double.DegreesToRadians(0.1);
        Shop shop = Exact with { Saw = Exact.Saw with { Lean = Angle.FromRadians(off) } };
        RingPlan plan = AnyStaves.Plan(Mug(lean), shop);
        StaveGeometry stave = plan.Stave!.Value;
        double e = 2 * 12 * plan["tilt-counts"].Value * off;
        DryFitResult fit = Fit(plan, shop);
        Assert.Equal(e, fit.Summary.ClosingError, 0.01 * e);
        Assert.Equal(Opened(stave.Tilt - off, stave.Mitre), fit.Summary.ClosingError, 1e-9);
        // All of it in the last joint opens that by R·E at the rim.
        double rim = stave.OuterApothem(stave.WideEnd) / Math.Cos(stave.HalfAngle);
        Assert.Equal(e * rim, fit.Gathered.Gap.Worst, 0.02 * e * rim);
    }

    // To first order −2 N Sm β; of 0.1° the second order is 2 % here.
    [Theory]
    [InlineData(8)]
    [InlineData(-8)]
    [InlineData(0)]
    public void A_wrong_mitre_opens_the_ring_by_the_closed_form(double lean)
    {
        double off = double.DegreesToRadians(0.1);
        Shop shop = Exact with { Hands = Exact.Hands with { AngleBias = Angle.FromRadians(-off) } };
        RingPlan plan = AnyStaves.Plan(Mug(lean), shop);
        StaveGeometry stave = plan.Stave!.Value;
        double e = 2 * 12 * plan["mitre-counts"].Value * off;
        double closing = Fit(plan, shop).Summary.ClosingError;
        Assert.Equal(e, closing, (0.03 * e) + 1e-9);
        Assert.Equal(stave.IsUpright ? 0 : Opened(stave.Tilt, stave.Mitre - off), closing, 1e-9);
    }

    private static double Opened(double tilt, double mitre) => (2 * Math.PI) - (2 * 12 * Math.Acos(Math.Cos(tilt) * Math.Cos(mitre)));

    [Fact]
    public void Upright_staves_of_one_strip_share_its_cuts_and_are_sanded_each_by_itself()
    {
        Shop sawn = Exact with { Hands = Exact.Hands with { AngleSd = Angle.FromDegrees(0.05) } };
        RingPlan plan = AnyStaves.Plan(Mug(0) with { Woods = ["oak"] }, sawn);
        int columns = (int)plan["staves-across"].Value;
        Assert.True(plan["rows-per-board"].Value > 1 && columns < 12);
        ImmutableArray<SawnWedge> staves = RingJobs.Saw(plan, sawn, 1, ErrorCause.All);
        Assert.Equal(staves[0].FaceAngle, staves[columns].FaceAngle);
        Assert.NotEqual(staves[0].FaceAngle, staves[1].FaceAngle);
        Shop sanded = sawn with { Sanding = sawn.Sanding with { Unevenness = AnyPiece.Mm(0.02) } };
        ImmutableArray<SawnWedge> uneven = RingJobs.Saw(AnyStaves.Plan(Mug(0) with { Woods = ["oak"] }, sanded), sanded, 1, ErrorCause.All);
        Assert.NotEqual(uneven[0].FaceAngle, uneven[columns].FaceAngle);
    }

    [Fact]
    public void A_forecast_names_the_causes_of_staves()
    {
        FitForecast forecast = FitForecast.Of(AnyStaves.Plan(Mug(8), Shop.Starting), Shop.Starting, 40, 3);
        Assert.Equal(0, forecast.Unsettled);
        Assert.Contains(forecast.Causes, c => c.Cause == ErrorCause.Setting && c.MedianGap > 0);
    }
}
