using CsCheck;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Random rings: neighbours never overlap, and the answer does not depend on how the ring was written down.</summary>
public class DryFitRandomRingsTests
{
    /// <summary>N wedges with errors of face angles (rad), rim width, lean and taper (mm) of the size a saw makes.</summary>
    private static readonly Gen<FitWedge[]> Rings =
        from n in Gen.Int[3, 40]
        from radius in Gen.Double[10, 80]
        from hole in Gen.Double[0.1, 0.8]
        from wedges in Wedge(n, radius, radius * (1 - hole) * Math.Cos(Math.PI / n)).Array[n]
        select wedges;

    [Fact]
    public void Nothing_overlaps_and_no_opening_is_negative() => Rings.Sample(
        wedges =>
        {
            DryFitResult fit = DryFitSolver.Fit(wedges);
            Assert.True(fit.Summary.Settled, $"{wedges.Length} wedges, {fit.Summary}");
            Assert.InRange(DryFitRings.WorstOverlap(fit), 0, 1e-7);
            Assert.InRange(fit.CentreOverlap, 0, 1e-9); // these rings all have an opening in the middle
            Assert.All(fit.Joints, j => Assert.True(Math.Min(Math.Min(j.RimBottom, j.RimTop), Math.Min(j.TipBottom, j.TipTop)) > -2e-8));
        },
        iter: 300);

    /// <summary>Wedges that make no ring at all: it may not settle, but says so, with finite numbers and an end.</summary>
    [Fact]
    public void Nonsense_ends_with_finite_numbers() =>
        (from n in Gen.Int[3, 20]
         from wedges in (from rim in Gen.Double[1, 30]
                         from tip in Gen.Double[0, 0.99]
                         from slender in Gen.Double[0.3, 4]
                         select FitWedge.FromCaliper(rim, tip * rim, slender * rim)).Array[n]
         select wedges).Sample(
            wedges =>
            {
                DryFitResult fit = DryFitSolver.Fit(wedges);
                Assert.True(double.IsFinite(fit.Summary.BandLength + fit.Summary.WorstGap + fit.Summary.ClosingError));
                Assert.All(fit.Poses, p => Assert.True(double.IsFinite(p.Origin.X + p.Origin.Y + p.Angle)));
                Assert.InRange(fit.Summary.Steps, 0, 5 * 80); // one try, and four with the centre watched
            },
            iter: 300);

    [Fact]
    public void Poses_turn_once_around_and_the_closing_error_is_the_mean_of_both_levels() => Rings.Sample(
        wedges =>
        {
            DryFitResult fit = DryFitSolver.Fit(wedges);
            double turned = 0;
            for (int i = 0; i < wedges.Length; i++)
                turned += Positive(fit.Poses[(i + 1) % wedges.Length].Angle - fit.Poses[i].Angle);
            Assert.Equal(2 * Math.PI, turned, 1e-9);
            Assert.Equal((fit.ClosingErrorBottom + fit.ClosingErrorTop) / 2, fit.Summary.ClosingError, 1e-5);
        },
        iter: 50);

    [Fact]
    public void Starting_the_list_elsewhere_changes_nothing() => Rings.Sample(
        wedges =>
        {
            DryFitResult fit = DryFitSolver.Fit(wedges);
            DryFitResult turned = DryFitSolver.Fit([.. wedges[1..], wedges[0]]);
            for (int i = 0; i < wedges.Length; i++) AssertSame(fit.Joints[(i + 1) % wedges.Length], turned.Joints[i]);
            Assert.Equal(fit.Summary.BandLength, turned.Summary.BandLength, 1e-5);
        },
        iter: 100);

    [Fact]
    public void The_mirrored_ring_has_the_mirrored_openings() => Rings.Sample(
        wedges =>
        {
            DryFitResult fit = DryFitSolver.Fit(wedges);
            DryFitResult mirrored = DryFitSolver.Fit([.. wedges.Reverse().Select(Mirror)]);
            int n = wedges.Length;
            for (int i = 0; i < n; i++) AssertSame(fit.Joints[i], mirrored.Joints[((2 * n) - 2 - i) % n]);
        },
        iter: 100);

    [Fact]
    public void Where_a_wedge_has_its_origin_changes_nothing() =>
        Gen.Select(Rings, Gen.Double[-50, 50], Gen.Double[-0.2, 0.2]).Sample(
            (wedges, shift, turn) =>
            {
                DryFitResult fit = DryFitSolver.Fit(wedges);
                DryFitResult moved = DryFitSolver.Fit([.. wedges.Select(w => Move(w, new(shift, -2 * shift), turn))]);
                for (int i = 0; i < wedges.Length; i++) AssertSame(fit.Joints[i], moved.Joints[i]);
            },
            iter: 60);

    /// <summary>
    /// Two rings that are the same on paper may settle on different sides of a corner that rocks on a face; that moves an
    /// opening by its angle times the step, well below what a feeler gauge tells (0.05 mm).
    /// </summary>
    private static void AssertSame(JointGap a, JointGap b)
    {
        const double Tolerance = 1e-3;
        Assert.Equal(a.RimBottom, b.RimBottom, Tolerance);
        Assert.Equal(a.RimTop, b.RimTop, Tolerance);
        Assert.Equal(a.TipBottom, b.TipBottom, Tolerance);
        Assert.Equal(a.TipTop, b.TipTop, Tolerance);
    }

    private static Gen<FitWedge> Wedge(int n, double radius, double depth) =>
        from plus in Gen.Double[-0.003, 0.003]
        from minus in Gen.Double[-0.003, 0.003]
        from wider in Gen.Double[-0.05, 0.05]
        from lean in Gen.Double[-0.05, 0.05]
        from taper in Gen.Double[-0.02, 0.02]
        let half = Math.PI / n
        let y = (radius * Math.Tan(half)) + wider
        select new FitWedge(
            DryFitRings.Section(half + plus, half + minus, y, -y, depth),
            DryFitRings.Section(half + plus, half + minus, y + lean - taper, -y + lean + taper, depth));

    private static double Positive(double angle) => angle - (2 * Math.PI * Math.Floor(angle / (2 * Math.PI)));

    private static FitWedge Mirror(FitWedge w) => new(Mirror(w.Bottom), Mirror(w.Top));

    private static ConvexPolygon Mirror(ConvexPolygon p) => new([.. p.Vertices.Reverse().Select(v => new Vector2D(v.X, -v.Y))]);

    private static FitWedge Move(FitWedge w, Vector2D shift, double turn) => new(Move(w.Bottom, shift, turn), Move(w.Top, shift, turn));

    private static ConvexPolygon Move(ConvexPolygon p, Vector2D shift, double turn) => new([.. p.Vertices.Select(v => v.Rotated(turn) + shift)]);
}
