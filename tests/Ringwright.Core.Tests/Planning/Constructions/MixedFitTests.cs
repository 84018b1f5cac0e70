using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Planning.Constructions;

/// <summary>Unequal wedges sawn in their batches and laid dry with their spacers.</summary>
public class MixedFitTests
{
    private static readonly MixedRing Ring = new()
    {
        Name = "Mixed",
        Diameter = AnyPiece.Mm(200),
        InnerDiameter = AnyPiece.Mm(160),
        Thickness = AnyPiece.Mm(15),
        Parts =
        [
            new() { Wood = "maple", Share = 2 }, new() { Wood = "wenge", Thickness = AnyPiece.Mm(3) },
            new() { Wood = "cherry", Share = 1 }, new() { Wood = "wenge", Thickness = AnyPiece.Mm(3) },
        ],
        Repeats = 6,
    };

    private static RingPlan Plan(Ring ring) => Planner.Plan(new() { Name = "Test", Rings = [ring] }, Shop.Starting).Rings[0];

    [Fact]
    public void Sawn_without_errors_each_batch_has_its_planned_size()
    {
        RingPlan plan = Plan(Ring);
        ImmutableArray<SawnWedge> wedges = RingJobs.Saw(plan, Shop.Starting, 1, ErrorCause.None);
        Assert.Equal(12, wedges.Length);
        for (int i = 0; i < wedges.Length; i++)
        {
            RingPlan batch = plan.Alone(i % 2);
            Assert.Equal(batch["wedge-angle"].Value, wedges[i].Angle, 1e-9);
            Assert.Equal(batch["rim-edge"].Value, wedges[i].RimLength(5), 1e-6);
        }
    }

    [Fact]
    public void Laid_dry_with_spacers_an_ideal_ring_closes()
    {
        DryFitResult fit = DryFitSolver.Fit(RingJobs.Pieces(Plan(Ring), Shop.Starting, 1, ErrorCause.None).AsSpan());
        Assert.True(fit.Summary.Settled);
        Assert.Equal(12, fit.Joints.Length);
        Assert.Equal(0, fit.Summary.ClosingError, 1e-9);
        Assert.InRange(fit.Summary.WorstGap, 0, 1e-3);
    }

    // All wedges off alike: by symmetry every joint takes its share of the closing error, whatever the spacers' thickness.
    [Theory]
    [InlineData(0.04, 1.5)]
    [InlineData(0.04, 12)]
    [InlineData(-0.04, 3)]
    public void A_constant_error_opens_every_joint_by_its_share(double bias, double thickness)
    {
        Shop shop = Shop.Starting with { Hands = new() { AngleBias = Core.Measures.Angle.FromDegrees(bias) } };
        RingPlan plan = Plan(Ring with { Parts = [new() { Wood = "maple" }, new() { Wood = "wenge", Thickness = AnyPiece.Mm(thickness) }], Repeats = 12 });
        DryFitResult fit = DryFitSolver.Fit(RingJobs.Pieces(plan, shop, 1, ErrorCause.Bias).AsSpan());
        double share = Math.Abs(fit.Summary.ClosingError) * plan.Glued.FaceLength / 12;
        Assert.All(fit.Joints, joint => Assert.Equal(share, joint.Worst, 0.01 * share));
    }

    // The closed form against rings sawn one by one: within 4 standard errors of a spread from 400 rings (1/sqrt(2·399)).
    [Fact]
    public void The_spread_of_many_rings_is_the_planned_one()
    {
        RingPlan plan = Plan(Ring);
        double[] errors = [.. Enumerable.Range(0, 400).Select(i => (2 * Math.PI) - RingJobs.Saw(plan, Shop.Starting, 7 + (1_000_003UL * (ulong)i), ErrorCause.CutToCut | ErrorCause.Setting).Sum(w => w.Angle))];
        double spread = Math.Sqrt(errors.Sum(e => e * e) / errors.Length);
        ClosingBudget budget = ClosingBudget.Of(plan, Shop.Starting);
        double planned = Math.Sqrt(budget.FromCuts + budget.FromSetting);
        Assert.InRange(spread / planned, 1 - (4 / Math.Sqrt(798)), 1 + (4 / Math.Sqrt(798)));
    }

    [Fact]
    public void Open_segments_have_no_dry_fit()
    {
        RingPlan plan = Plan(new OpenRing { Name = "Open", Segments = 12, Diameter = AnyPiece.Mm(160), InnerDiameter = AnyPiece.Mm(130), Thickness = AnyPiece.Mm(12), Gap = Core.Measures.Angle.FromDegrees(5), Woods = ["ash"] });
        Assert.Throws<BadInputException>(() => FitForecast.Of(plan, Shop.Starting, 20, 1));
        SawRun run = SawSimulator.Run(RingJobs.Job(plan, Shop.Starting, 400, 4, 1, (0, 0), ErrorCause.None));
        Assert.Equal(4, run.Wedges.Length);
        Assert.All(run.Wedges, w => Assert.Equal(plan["wedge-angle"].Value, w.Angle, 1e-9));
    }
}
