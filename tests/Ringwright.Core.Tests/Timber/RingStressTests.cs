using CsCheck;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Tests.Timber;

public class RingStressTests
{
    // Timoshenko and Goodier, Theory of Elasticity, "Pure bending of curved bars", table of σ = m·M/a² at inner and outer edge,
    // printed figures from memory; the last but one of the first row
    // is a thousandth off what the book's own formula gives. A ring closed over a gap bends in this way.
    [Theory]
    [InlineData(1.3, 73.05, -61.27)]
    [InlineData(2, 7.755, -4.917)]
    [InlineData(3, 2.292, -1.130)]
    public void Equal_stiffness_is_Timoshenko_and_Goodier_s_ring(double ratio, double inner, double outer)
    {
        var ring = new RingStress(1 / ratio, 1, 1);
        double moment = Simpson(rho => ring.Hoop(rho) * rho, 1 / ratio, 1);
        double scale = 1 / (ratio * ratio * moment); // a²/M with b = 1
        Assert.Equal(Math.Abs(inner), Math.Abs(ring.Hoop(1 / ratio) * scale), 0.0006 * Math.Abs(inner));
        Assert.Equal(Math.Abs(outer), Math.Abs(ring.Hoop(1) * scale), 0.0015 * Math.Abs(outer));
        Assert.True(ring.Hoop(1) > 0 && ring.Hoop(1 / ratio) < 0);
    }

    // The same book, "ring with initial stress": M = −(αE/8π)·((b² − a²)² − 4a²b²·ln²(b/a))/(2·(b² − a²)) for a gap α; from memory.
    [Fact]
    public void The_moment_is_that_of_the_closed_gap()
    {
        const double a = 0.6, e = 9000, closing = 0.004;
        double alpha = 2 * Math.PI * closing, log = Math.Log(1 / a), b2a2 = 1 - (a * a);
        double published = alpha * e / (8 * Math.PI) * ((b2a2 * b2a2) - (4 * a * a * log * log)) / (2 * b2a2);
        var ring = new RingStress(a, e, e);
        Assert.Equal(published, Simpson(rho => closing * ring.Hoop(rho) * rho, a, 1), 1e-6 * published);
    }

    [Fact]
    public void Edges_are_free_and_a_cut_carries_no_force() =>
        Gen.Select(Hole, Around, Across).Sample((c, around, across) =>
        {
            var ring = new RingStress(c, around, across);
            double scale = Math.Abs(ring.Hoop(1)) + Math.Abs(ring.Hoop(c));
            return Math.Abs(ring.Radial(1)) < 1e-9 * scale && Math.Abs(ring.Radial(c)) < 1e-9 * scale && Math.Abs(Simpson(ring.Hoop, c, 1)) < 1e-4 * scale;
        });

    // An independent numeric solution: r·F″ + F′ − k²·F/r = E by differences of second order, F = r·σr.
    [Fact]
    public void The_closed_form_is_the_numeric_solution() =>
        Gen.Select(Gen.Double[0.1, 0.9], Around, Across).Sample(
            (c, around, across) =>
            {
                var ring = new RingStress(c, around, across);
                (double[] r, double[] f) = Differences(c, around, across);
                double scale = f.Max(Math.Abs);
                for (int i = 0; i < r.Length; i += 50) Assert.Equal(f[i], r[i] * ring.Radial(r[i]), 1e-3 * scale);
            },
            iter: 30);

    [Fact]
    public void It_is_continuous_where_both_stiffnesses_are_equal()
    {
        var equal = new RingStress(0.4, 8000, 8000);
        foreach (double k in new[] { 0.999, 0.9999, 1.00001, 1.001 })
        {
            var near = new RingStress(0.4, 8000, 8000 / (k * k));
            Assert.Equal(equal.Hoop(0.7), near.Hoop(0.7), 5 * Math.Abs(k - 1) * 8000);
            Assert.Equal(equal.Radial(0.7), near.Radial(0.7), 5 * Math.Abs(k - 1) * 8000);
        }
    }

    [Fact]
    public void The_radial_stress_is_largest_where_it_is_said_to_be() =>
        Gen.Select(Hole, Around, Across).Sample((c, around, across) =>
        {
            var ring = new RingStress(c, around, across);
            double peak = Math.Abs(ring.Radial(ring.RadialPeak()));
            return Enumerable.Range(0, 101).All(i => Math.Abs(ring.Radial(c + ((1 - c) * i / 100))) <= peak * (1 + 1e-9));
        });

    [Fact]
    public void A_full_disc_of_wood_is_the_limit_of_the_smallest_hole()
    {
        RingStress full = new(0, 12_000, 800), tiny = new(1e-4, 12_000, 800);
        Assert.Equal(full.Hoop(0.05), tiny.Hoop(0.05), 1e-3);
        Assert.Equal(12_000 / (1 - 15.0), full.Centre, 1e-9);
        Assert.Equal(12_000 / (Math.Sqrt(15) + 1), full.Hoop(1), 1e-8);
    }

    // N·e·sin 2a → 2π·e: every wedge loses e·sin 2a of its angle.
    [Fact]
    public void The_gap_is_that_of_wedges_that_grow_across_the_grain() =>
        Gen.Select(Gen.Int[3, 360], Gen.Double[-0.02, 0.02]).Sample((n, e) =>
        {
            double a = Math.PI / n;
            double exact = n * 2 * (a - Math.Atan(Math.Tan(a) / (1 + e)));
            double told = 2 * Math.PI * new RingBody(n, 50, 20).ClosingPerStrain * e;
            return Math.Abs(exact - told) < (8 * Math.PI * e * e) + 1e-12;
        });

    [Fact]
    public void Narrow_wedges_are_as_stiff_as_their_wood_and_wide_ones_less()
    {
        RingStiffness narrow = RingStiffness.Averaged(12_000, 800, 900, 0.4, 1e-3), wide = RingStiffness.Averaged(12_000, 800, 900, 0.4, Math.PI / 6);
        Assert.Equal(12_000, narrow.Around, 1);
        Assert.Equal(800, narrow.Across, 1);
        Assert.True(wide.Around < 8000);
    }

    private static readonly Gen<double> Hole = Gen.Double[0.02, 0.95];
    private static readonly Gen<double> Around = Gen.Double[500, 20_000];
    private static readonly Gen<double> Across = Gen.Double[300, 2000];

    private static double Simpson(Func<double, double> f, double from, double to)
    {
        const int n = 2000;
        double step = (to - from) / n, sum = f(from) + f(to);
        for (int i = 1; i < n; i++) sum += f(from + (i * step)) * (i % 2 == 1 ? 4 : 2);
        return sum * step / 3;
    }

    private static (double[] R, double[] F) Differences(double c, double around, double across)
    {
        const int n = 2000;
        double h = (1 - c) / n, k2 = around / across;
        double[] r = [.. Enumerable.Range(0, n + 1).Select(i => c + (i * h))], f = new double[n + 1], upper = new double[n + 1], right = new double[n + 1];
        for (int i = 1; i < n; i++)
        {
            double low = (r[i] / (h * h)) - (1 / (2 * h)), high = (r[i] / (h * h)) + (1 / (2 * h));
            double pivot = (-2 * r[i] / (h * h)) - (k2 / r[i]) - (low * upper[i - 1]);
            upper[i] = high / pivot;
            right[i] = (around - (low * right[i - 1])) / pivot;
        }

        for (int i = n - 1; i > 0; i--) f[i] = right[i] - (upper[i] * f[i + 1]);
        return (r, f);
    }
}
