using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Wedges whose faces lean, and wedges with rounded edges or bellied faces.</summary>
public class DryFitLeanTests
{
    private const int N = 12;
    private const double Half = Math.PI / N;
    private const double Depth = 15;
    private const double Rim = 20;

    /// <summary>Both faces lean the same way: the ring closes at both levels (design section 5).</summary>
    [Fact]
    public void Sheared_wedges_close_top_and_bottom()
    {
        ConvexPolygon bottom = DryFitRings.Section(Half, Half, Rim / 2, -Rim / 2, Depth);
        ConvexPolygon top = DryFitRings.Section(Half, Half, (Rim / 2) + 0.4, (-Rim / 2) + 0.4, Depth);
        DryFitResult fit = DryFitSolver.Fit([.. Enumerable.Repeat(new FitWedge(bottom, top), N)]);

        Assert.True(fit.Summary.Settled);
        Assert.InRange(fit.Summary.WorstGap, -1e-9, 1e-6);
        Assert.InRange(DryFitRings.WorstOverlap(fit), 0, 1e-9);
    }

    /// <summary>Both faces lean inwards over the height: closed at the bottom, open at the top by twice what one face leans, square to the face.</summary>
    [Fact]
    public void Tapered_wedges_open_at_the_top_by_twice_the_lean()
    {
        const double Lean = 0.1;
        ConvexPolygon bottom = DryFitRings.Section(Half, Half, Rim / 2, -Rim / 2, Depth);
        ConvexPolygon top = DryFitRings.Section(Half, Half, (Rim / 2) - Lean, (-Rim / 2) + Lean, Depth);
        DryFitResult fit = DryFitSolver.Fit([.. Enumerable.Repeat(new FitWedge(bottom, top), N)]);

        Assert.True(fit.Summary.Settled);
        Assert.All(fit.Joints, j => Assert.InRange(Math.Max(j.RimBottom, j.TipBottom), -1e-9, 1e-8));
        Assert.All(fit.Joints, j => Assert.Equal(2 * Lean * Math.Cos(Half), j.RimTop, 1e-8));
        Assert.All(fit.Joints, j => Assert.Equal(2 * Lean * Math.Cos(Half), j.TipTop, 1e-8));
        Assert.Equal(JointCorners.RimBottom | JointCorners.TipBottom, fit.Joints[0].Touching);
    }

    /// <summary>An angle that is right at the bottom and too small at the top: the closing errors say so.</summary>
    [Fact]
    public void Closing_error_is_told_per_level()
    {
        const double Narrower = 0.001;
        ConvexPolygon bottom = DryFitRings.Section(Half, Half, Rim / 2, -Rim / 2, Depth);
        ConvexPolygon top = DryFitRings.Section(Half - Narrower, Half - Narrower, Rim / 2, -Rim / 2, Depth);
        DryFitResult fit = DryFitSolver.Fit([.. Enumerable.Repeat(new FitWedge(bottom, top), N)]);

        Assert.Equal(0, fit.ClosingErrorBottom, 1e-12);
        Assert.Equal(2 * N * Narrower, fit.ClosingErrorTop, 1e-12);
        Assert.InRange(DryFitRings.WorstOverlap(fit), 0, 1e-9);
    }

    /// <summary>Rounded edges are not part of the face: the faces between them still close, and the band spans the grooves.</summary>
    [Fact]
    public void Rounded_edges_do_not_open_the_joint()
    {
        double c = Math.Cos(Half);
        double s = Math.Sin(Half);
        const double Cut = 0.3;
        Vector2D rim = new(0, Rim / 2);
        Vector2D tip = new(-Depth, (Rim / 2) - (Depth * Math.Tan(Half)));
        Vector2D along = new(c, s);
        Vector2D[] upper = [new(rim.X, rim.Y - Cut), rim - (Cut * along), tip + (Cut * along), new(tip.X, tip.Y - Cut)];
        ConvexPolygon plan = new([.. upper, .. upper.Reverse().Select(p => new Vector2D(p.X, -p.Y))]);
        DryFitResult fit = DryFitSolver.Fit([.. Enumerable.Repeat(new FitWedge(plan, plan), N)]);

        Assert.True(fit.Summary.Settled);
        Assert.InRange(fit.Summary.WorstGap, -1e-9, 1e-8);
        Assert.Equal(N * (Rim - (2 * Cut) + (2 * Cut * c)), fit.Summary.BandLength, 1e-6);
    }

    /// <summary>One face of each wedge bellied (two facets a sixth of a degree apart): it touches the flat one in the middle, open by the belly's height at both ends.</summary>
    [Fact]
    public void A_bellied_face_touches_in_the_middle()
    {
        const double Belly = 0.02;
        ConvexPolygon flat = DryFitRings.Section(Half, Half, Rim / 2, -Rim / 2, Depth);
        Vector2D middle = (0.5 * (flat.Vertices[2] + flat.Vertices[3])) + (Belly * new Vector2D(-Math.Sin(Half), Math.Cos(Half)));
        ConvexPolygon bellied = new([flat.Vertices[0], flat.Vertices[1], flat.Vertices[2], middle, flat.Vertices[3]]);
        DryFitResult fit = DryFitSolver.Fit([.. Enumerable.Repeat(new FitWedge(bellied, bellied), N)]);

        Assert.True(fit.Summary.Settled);
        Assert.InRange(DryFitRings.WorstOverlap(fit), 0, 1e-9);
        Assert.All(fit.Joints, j => Assert.Equal(Belly, (j.RimBottom + j.TipBottom) / 2, 1e-4));
    }
}
