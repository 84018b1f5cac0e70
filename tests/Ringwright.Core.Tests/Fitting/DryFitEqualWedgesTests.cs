using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Equal wedges, where the fit has a closed form (design section 6: all joints alike, hinged at tip or rim).</summary>
public class DryFitEqualWedgesTests
{
    public static TheoryData<int, double, double> Rings() => new()
    {
        { 3, 50, 20 }, { 4, 20, 12 }, { 6, 12.5, 6 }, { 12, 30, 10 },
        { 18, 12.7, 11 }, { 36, 12.5, 11 }, { 36, 60, 20 }, { 60, 80, 15 }, { 360, 200, 20 },
    };

    [Theory]
    [MemberData(nameof(Rings))]
    public void Perfect_wedges_close(int n, double radius, double depth)
    {
        DryFitResult fit = DryFitSolver.Fit(DryFitRings.Equal(n, radius, depth, 0));

        Assert.True(fit.Summary.Settled);
        Assert.InRange(fit.Summary.WorstGap, -1e-9, 1e-9);
        Assert.Equal(2 * n * radius * Math.Sin(Math.PI / n), fit.Summary.BandLength, 1e-6);
        Assert.All(fit.Joints, j => Assert.Equal(
            JointCorners.RimBottom | JointCorners.RimTop | JointCorners.TipBottom | JointCorners.TipTop, j.Touching));
    }

    /// <summary>Sawn to a point, as discs are.</summary>
    [Theory]
    [InlineData(6)]
    [InlineData(18)]
    [InlineData(36)]
    public void Perfect_points_close(int n)
    {
        double apothem = 12.5 * Math.Cos(Math.PI / n);
        DryFitResult fit = DryFitSolver.Fit(DryFitRings.Equal(n, 12.5, apothem, 0));

        Assert.True(fit.Summary.Settled);
        Assert.InRange(fit.Summary.WorstGap, -1e-9, 1e-9);
    }

    /// <summary>Each joint turns by E/N about its tip, over the length of the face, depth / cos(half angle); to second order in E/N.</summary>
    [Theory]
    [MemberData(nameof(Rings))]
    public void Wedges_too_narrow_open_at_the_rim_evenly(int n, double radius, double depth)
    {
        const double Error = 0.01;
        DryFitResult fit = DryFitSolver.Fit(DryFitRings.Equal(n, radius, depth, Error));

        double face = depth / Math.Cos((Math.PI / n) - (Error / (2 * n)));
        Assert.True(fit.Summary.Settled);
        Assert.Equal(Error, fit.Summary.ClosingError, 1e-11);
        Assert.All(fit.Joints, j => Assert.Equal(face * Math.Sin(Error / n), j.RimBottom, 1e-6));
        Assert.All(fit.Joints, j => Assert.InRange(j.TipBottom, -1e-9, 1e-8));
    }

    [Theory]
    [MemberData(nameof(Rings))]
    public void Wedges_too_wide_open_at_the_tip_evenly(int n, double radius, double depth)
    {
        const double Error = -0.01;
        DryFitResult fit = DryFitSolver.Fit(DryFitRings.Equal(n, radius, depth, Error));

        double face = depth / Math.Cos((Math.PI / n) - (Error / (2 * n)));
        Assert.True(fit.Summary.Settled);
        Assert.All(fit.Joints, j => Assert.Equal(face * Math.Sin(-Error / n), j.TipBottom, 1e-6));
        Assert.All(fit.Joints, j => Assert.InRange(j.RimBottom, -1e-9, 1e-9));
        Assert.Equal(2 * n * radius * Math.Sin(Math.PI / n), fit.Summary.BandLength, 1e-6);
    }

    /// <summary>Gathered in one joint, the faces make the angle E about the ring's centre: R E at the rim (design section 6).</summary>
    [Fact]
    public void Gathered_opening_is_radius_times_closing_error()
    {
        const double Error = 0.01;
        DryFitResult fit = DryFitSolver.Fit(DryFitRings.Equal(36, 60, 20, Error));

        Assert.Equal(60 * Error, fit.Gathered.Gap.RimBottom, 0.005 * 60 * Error);
        Assert.Equal(40 * Error, fit.Gathered.Gap.TipBottom, 0.01 * 60 * Error);
    }

    [Fact]
    public void Gathered_excess_opens_one_tip_by_depth_times_closing_error()
    {
        DryFitResult fit = DryFitSolver.Fit(DryFitRings.Equal(36, 60, 20, -0.01));

        Assert.Equal(0.2, fit.Gathered.Gap.TipBottom, 0.002);
        Assert.Equal(0, fit.Gathered.Gap.RimBottom, 1e-9);
    }

    /// <summary>One wedge too narrow in angle: rims less tips open by depth / cos(half angle) times E in all, wherever they open.</summary>
    [Fact]
    public void One_odd_wedge_is_found()
    {
        FitWedge[] wedges = DryFitRings.Equal(12, 40, 15, 0);
        double rim = 80 * Math.Sin(Math.PI / 12);
        wedges[4] = FitWedge.FromCaliper(rim, rim - (30 * Math.Tan((Math.PI / 12) - 0.004)), 15);
        DryFitResult fit = DryFitSolver.Fit(wedges);

        Assert.True(fit.Summary.Settled);
        Assert.Equal(0.008, fit.Summary.ClosingError, 1e-9);
        Assert.Equal(0.008 * 15 / Math.Cos(Math.PI / 12), fit.Joints.Sum(j => j.RimBottom - j.TipBottom), 1e-3);
        Assert.InRange(DryFitRings.WorstOverlap(fit), 0, 1e-9);
    }

    [Fact]
    public void The_same_ring_gives_the_same_bits_and_a_used_workspace_allocates_nothing()
    {
        FitWedge[] small = DryFitRings.Equal(6, 20, 8, 0.01);
        FitWedge[] large = DryFitRings.Equal(36, 60, 20, -0.02);
        var solver = new DryFitSolver();
        DryFitSummary first = solver.Solve(large);
        solver.Solve(small);

        Assert.Equal(first, solver.Solve(large));
        long before = GC.GetAllocatedBytesForCurrentThread();
        solver.Solve(large);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
