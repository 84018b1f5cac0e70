using CsCheck;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

public class DryFitSolverTests
{
    // A wedge of the given angle whose faces are 10 mm deep (radially) and 2 mm apart at the tip.
    private static FitWedge Wedge(double angle) => FitWedge.FromCaliper(2 + (20 * Math.Tan(angle / 2)), 2, 10);

    private static FitWedge[] Ring(int n, double error) => [.. Enumerable.Repeat(Wedge((2 * Math.PI / n) + error), n)];

    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(24)]
    [InlineData(60)]
    public void Perfect_wedges_close(int n)
    {
        DryFitResult fit = DryFitSolver.Fit(Ring(n, 0));
        Assert.True(fit.Summary.Settled);
        Assert.InRange(fit.Summary.WorstGap, 0, 1e-6);
    }

    // Closed form: each of N equal joints turns about its closed end by E/N, and opens by that times the face's length.
    [Theory]
    [InlineData(12, -0.002)]
    [InlineData(24, -0.001)]
    [InlineData(12, 0.002)]
    [InlineData(24, 0.001)]
    public void Equal_wedges_share_the_closing_error(int n, double error)
    {
        DryFitResult fit = DryFitSolver.Fit(Ring(n, error));
        Assert.True(fit.Summary.Settled);
        Assert.Equal(-n * error, fit.Summary.ClosingError, 1e-9);
        double opening = Math.Abs(error) * 10 / Math.Cos(Math.PI / n);
        foreach (JointGap joint in fit.Joints)
        {
            (double open, double shut) = error < 0 ? (joint.RimBottom, joint.TipBottom) : (joint.TipBottom, joint.RimBottom);
            Assert.Equal(opening, open, 0.02 * opening);
            Assert.InRange(shut, -1e-9, 0.02 * opening);
        }
    }

    [Fact]
    public void Random_wedges_settle_without_overlap() =>
        Gen.Select(Gen.Int[4, 36], Gen.Double[-0.004, 0.004].Array[36]).Sample((n, errors) =>
        {
            FitWedge[] wedges = [.. Enumerable.Range(0, n).Select(i => Wedge((2 * Math.PI / n) + errors[i]))];
            DryFitResult fit = DryFitSolver.Fit(wedges);
            return fit.Summary.Settled && fit.Joints.All(j => Math.Min(Math.Min(j.RimBottom, j.RimTop), Math.Min(j.TipBottom, j.TipTop)) > -1e-6);
        });

    [Fact]
    public void The_first_wedge_is_nobody_special() =>
        Gen.Double[-0.004, 0.004].Array[12].Sample(errors =>
        {
            FitWedge[] wedges = [.. errors.Select(e => Wedge((Math.PI / 6) + e))];
            double gap = DryFitSolver.Fit(wedges).Summary.WorstGap;
            double turned = DryFitSolver.Fit([.. wedges[5..], .. wedges[..5]]).Summary.WorstGap;
            return Math.Abs(gap - turned) < 1e-4;
        });

    [Fact]
    public void Two_wedges_make_no_ring() => Assert.Throws<BadInputException>(() => DryFitSolver.Fit(Ring(2, 0)));
}
