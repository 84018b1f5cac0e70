using CsCheck;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Length = Ringwright.Core.Measures.Length;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Discs of wedges sawn to a point, or nearly: tips that are too long must not run into the wedges opposite.</summary>
public class DryFitPointsTests
{
    private const double Deepest = 1e-3;

    /// <summary>Errors of the size a saw makes: a few hundredths of a millimetre at the rim, of a degree in angle; flat or pointed tips.</summary>
    private static readonly Gen<FitWedge[]> Discs =
        from n in Gen.Int[3, 40]
        from radius in Gen.Double[8, 60]
        from tip in Gen.OneOf(Gen.Const(0.0), Gen.Double[0.01, 0.1])
        from wedges in Wedge(n, radius, tip).Array[n]
        select wedges;

    [Fact]
    public void No_two_wedges_of_a_settled_disc_overlap()
    {
        (int all, int settled) = (0, 0);
        Discs.Sample(
            wedges =>
            {
                DryFitResult fit = DryFitSolver.Fit(wedges);
                all++;
                if (!fit.Summary.Settled) return;
                settled++;
                Assert.InRange(fit.CentreOverlap, 0, Deepest);
                Assert.InRange(WidestOverlap(fit), 0, Deepest);
            },
            iter: 80);
        Assert.InRange((double)settled / all, 0.97, 1);
    }

    /// <summary>The whole chain from the saw: boards of one width, so that a narrow wedge ends in a point and a wide one in a flat.</summary>
    [Theory]
    [InlineData(SledKind.TwoFences, 12)]
    [InlineData(SledKind.TwoFences, 36)]
    [InlineData(SledKind.DiscSander, 24)]
    public void Sawn_discs_settle_without_overlap(SledKind kind, int segments)
    {
        Shop shop = Shop.Starting with { Sled = new() { Kind = kind } };
        var disc = new WedgeDisc { Name = "Disc", Segments = segments, Diameter = Length.FromMillimetres(60), Thickness = Length.FromMillimetres(20), Tip = default, Woods = ["maple"] };
        RingPlan plan = Planner.Plan(new() { Name = "Test", Rings = [disc] }, shop).Rings[0];
        for (ulong seed = 0; seed < 5; seed++)
        {
            DryFitResult fit = DryFitSolver.Fit([.. RingJobs.Saw(plan, shop, seed, ErrorCause.All).Select(w => RingJobs.Lay(w, plan["board-thickness"].Value))]);
            Assert.True(fit.Summary.Settled, $"seed {seed}: {fit.Summary}");
            Assert.InRange(WidestOverlap(fit), 0, Deepest);
        }
    }

    /// <summary>One wedge of twelve sawn 0.37 mm longer to its point: it cannot pass the centre, so it stands out at the rim or opens joints.</summary>
    [Fact]
    public void A_point_too_long_stays_out()
    {
        FitWedge[] wedges = DryFitRings.Equal(12, 12.5, 12.5 * Math.Cos(Math.PI / 12), 0);
        double rim = (25 * Math.Sin(Math.PI / 12)) + 0.2;
        wedges[3] = FitWedge.FromCaliper(rim, 0, rim / 2 / Math.Tan(Math.PI / 12));
        DryFitResult fit = DryFitSolver.Fit(wedges);

        Assert.True(fit.Summary.Settled);
        Assert.InRange(WidestOverlap(fit), 0, Deepest);
        Assert.True(fit.Summary.WorstGap > 0.01 || fit.Joints.Any(j => Math.Abs(j.Step) > 0.01));
    }

    private static Gen<FitWedge> Wedge(int n, double radius, double tip) =>
        from wider in Gen.Double[-0.03, 0.03]
        from turned in Gen.Double[-0.0008, 0.0008]
        let rim = (2 * radius * Math.Tan(Math.PI / n)) + wider
        select FitWedge.FromCaliper(rim, tip, (rim - tip) / 2 / Math.Tan((Math.PI / n) + turned));

    /// <summary>Width of the widest overlap of any two wedges at either level, mm, by NetTopologySuite.</summary>
    private static double WidestOverlap(DryFitResult fit)
    {
        double widest = 0;
        foreach (bool top in fit.Wedges.All(w => w.IsUpright) ? new[] { false } : [false, true])
        {
            Polygon[] plan = [.. FitOutlines.Draw(fit, top, 1).Select(o => DryFitRings.ToPolygon(o))];
            for (int i = 0; i < plan.Length; i++)
                for (int k = 0; k < i; k++) widest = Math.Max(widest, Width(plan[i].Intersection(plan[k])));
        }

        return widest;
    }

    private static double Width(NetTopologySuite.Geometries.Geometry overlap) => overlap.Area > 0 ? new MinimumDiameter(overlap).Length : 0;
}
