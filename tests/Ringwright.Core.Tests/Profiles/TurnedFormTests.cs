using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using Ringwright.Core.Turning;
using static Ringwright.Core.Tests.Profiles.AnyShape;

namespace Ringwright.Core.Tests.Profiles;

public class TurnedFormTests
{
    private static readonly Gen<(TurnedForm Form, double Z0, double Z1)> Ranges =
        from shape in Good
        from ends in Gen.Double[0, 1].Array[2]
        let form = TurnedForm.Of(shape)
        let z0 = form.Bottom + (form.Height * Math.Min(ends.Min(), 0.99))
        select (form, z0, Math.Max(form.Bottom + (form.Height * ends.Max()), z0 + (0.01 * form.Height)));

    [Fact]
    public void A_solid_cone_has_the_volume_and_centre_of_a_handbook()
    {
        // Bronshtein and Semendyayev, Handbook of Mathematics, frustum of a cone: V = πh/3 (R² + Rr + r²), centre h/4 (R² + 2Rr + 3r²)/(R² + Rr + r²).
        var form = TurnedForm.Of(new Shape { Outer = [At(100, 0), At(60, 90)] });
        const double R = 50, r = 30, Sum = (R * R) + (R * r) + (r * r);
        Assert.Equal(Math.PI * 90 / 3 * Sum, form.Volume, 7);
        Assert.Equal(90 / 4.0 * ((R * R) + (2 * R * r) + (3 * r * r)) / Sum, form.CentroidHeight, 10);
        Assert.True(form.IsSolid);
        Assert.Null(form.Thinnest());
    }

    /// <summary>Pappus' second theorem: volume = 2π · area of the half section · radius of its centroid, both from NetTopologySuite.</summary>
    [Fact]
    public void The_volume_is_that_of_Pappus() => Good.Sample(
        shape =>
        {
            var form = TurnedForm.Of(shape);
            ImmutableArray<WallLevel> levels = form.SectionWithin(form.Bottom, form.Top, 0.0005).Levels;
            Polygon[] slices = [.. levels.Zip(levels.Skip(1)).Where(p => p.Second.Z > p.First.Z).SelectMany(p => Slices(p.First, p.Second, form.Height / 500))];
            double volume = slices.Sum(s => 2 * Math.PI * s.Area * s.Centroid.X), raised = slices.Sum(s => 2 * Math.PI * s.Area * s.Centroid.X * s.Centroid.Y);
            Assert.InRange(form.Volume / volume, 1 - 2e-4, 1 + 2e-4);
            Assert.InRange(form.CentroidHeight - (raised / volume), -1e-3 * form.Height, 1e-3 * form.Height);
        },
        iter: 60);

    [Fact]
    public void An_even_shell_around_a_ball_has_its_volume()
    {
        var form = TurnedForm.Of(Walled(10, null, Circle(80, 0, 80, -1.4, 1.4, 301)));
        double Cap(double radius, double z) => Math.PI * ((radius * radius * z) - (z * z * z / 3));
        double z0 = 20, z1 = 130; // well inside, where both walls are balls
        double shell = Cap(80, z1 - 80) - Cap(80, z0 - 80) - Cap(70, z1 - 80) + Cap(70, z0 - 80);
        Assert.InRange(form.VolumeBetween(z0, z1) / shell, 1 - 1e-6, 1 + 1e-6);
    }

    [Fact]
    public void Parts_add_up_to_the_whole() => Ranges.Sample(s =>
    {
        double parts = s.Form.VolumeBetween(s.Z0, s.Z1);
        if (s.Z0 > s.Form.Bottom) parts += s.Form.VolumeBetween(s.Form.Bottom, s.Z0);
        if (s.Z1 < s.Form.Top) parts += s.Form.VolumeBetween(s.Z1, s.Form.Top);
        Assert.InRange(parts / s.Form.Volume, 1 - 1e-5, 1 + 1e-5);
    });

    [Fact]
    public void There_is_wood_everywhere_and_every_number_is_finite() => Good.Sample(shape =>
    {
        var form = TurnedForm.Of(shape);
        Assert.True(double.IsFinite(form.Volume) && form.Volume > 0);
        Assert.InRange(form.CentroidHeight, form.Bottom, form.Top);
        for (int i = 0; i <= 100; i++)
        {
            double z = form.Bottom + (form.Height * i / 100);
            foreach (Side side in new[] { Side.Below, Side.Above })
            {
                Assert.InRange(form.Inner(z, side), 0, double.MaxValue);
                Assert.True(form.Inner(z, side) < form.Outer(z, side), $"at {z}");
            }
        }
    });

    [Fact]
    public void Extents_contain_every_radius_and_are_attained() => Ranges.Sample(s =>
    {
        (TurnedForm form, double z0, double z1) = s;
        WallExtents extents = form.Extents(z0, z1);
        double[] corners = [.. form.Corners.Where(z => z > z0 && z < z1)];
        double[] outer = [.. Sampled(form.Outer)], inner = [.. Sampled(form.Inner)];
        Assert.InRange(outer.Max(), 0, extents.MaxOuter + 1e-9);
        Assert.InRange(outer.Min(), extents.MinOuter - 1e-9, double.MaxValue);
        Assert.InRange(inner.Max(), 0, extents.MaxInner + 1e-9);
        Assert.InRange(inner.Min(), extents.MinInner - 1e-9, double.MaxValue);
        Assert.InRange(extents.MaxOuter - outer.Max() + outer.Min() - extents.MinOuter, 0, 0.2);
        Assert.InRange(extents.MaxInner - inner.Max() + inner.Min() - extents.MinInner, 0, 0.2);

        IEnumerable<double> Sampled(Func<double, Side, double> radius) =>
            Enumerable.Range(0, 301).Select(i => radius(z0 + ((z1 - z0) * i / 300), i == 300 ? Side.Below : Side.Above))
                .Concat(corners.SelectMany(z => new[] { radius(z, Side.Below), radius(z, Side.Above) }));
    });

    [Fact]
    public void A_bore_in_a_cone_is_thinnest_square_to_the_cone_or_at_its_floor()
    {
        var form = TurnedForm.Of(new Shape { Outer = [At(60, 0), At(100, 60)], Inside = new Bore { Diameter = Mm(40), Floor = Mm(15) } });
        ThinnestWood thin = form.Thinnest()!.Value;
        // Square from the floor's edge (20, 15) to the cone's line through (35, 15), which leans by atan(1/3).
        Assert.Equal(15 * 3 / Math.Sqrt(10), thin.Thickness, 12);
        Assert.Equal((20, 15), (thin.Inside.X, thin.Inside.Y));
        Assert.Equal(5, TurnedForm.Of(new Shape { Outer = [At(60, 0), At(100, 60)], Inside = new Bore { Diameter = Mm(40), Floor = Mm(5) } }).Thinnest()!.Value.Thickness, 9);
    }

    [Fact]
    public void A_flat_rim_that_the_bore_opens_through_is_no_thin_wood()
    {
        var form = TurnedForm.Of(new Shape { Outer = [At(100, 0), At(100, 60, true), At(70, 60)], Inside = new Bore { Diameter = Mm(80), Floor = Mm(12) } });
        Assert.Equal(10, form.Thinnest()!.Value.Thickness, 9);
    }

    /// <summary>NetTopologySuite's distance between both walls, finely cut; an even wall has its own thickness.</summary>
    [Fact]
    public void The_thinnest_wood_is_what_a_general_library_finds() => Good.Where(s => s.Inside is Bore or Hollow).Sample(
        shape =>
        {
            var form = TurnedForm.Of(shape);
            ThinnestWood thin = form.Thinnest()!.Value;
            ImmutableArray<WallLevel> levels = form.SectionWithin(form.Bottom, form.Top, 0.001).Levels;
            WallLevel[] hollow = [.. levels.Where(l => l.Inner > 0)];
            var inner = new LineString([.. hollow.Select(l => new Coordinate(l.Inner, l.Z))]);
            var outer = new LineString([.. form.OuterCurve.Spans.Where(s => !IsFace(s)).SelectMany(s => Enumerable.Range(0, 201).Select(i => s.At(i / 200.0))).Select(p => new Coordinate(p.X, p.Y))]);
            double floor = hollow[0].Z > form.Bottom ? hollow[0].Z - form.Bottom : double.PositiveInfinity;
            Assert.InRange(thin.Thickness - Math.Min(floor, inner.Distance(outer)), -0.02, 0.02);
            Assert.Equal(thin.Thickness, (thin.Outside - thin.Inside).Length, 9);

            bool IsFace(CurveSpan s) => s.Start.Y == s.End.Y && (s.End.Y == form.Top || s.End.Y == form.Bottom) && form.Inner(s.End.Y) > Math.Min(s.Start.X, s.End.X);
        },
        iter: 60);

    [Fact]
    public void An_even_wall_open_at_both_ends_is_nowhere_thinner() => EvenWall.Select(s => (Form: TurnedForm.Of(s.Shape), s.Thickness))
        .Where(s => s.Form.Inner(s.Form.Bottom) > 0 && s.Form.Inner(s.Form.Top) > 0)
        .Sample(s => Assert.Equal(s.Thickness, s.Form.Thinnest()!.Value.Thickness, 8), iter: 60);

    // Thin slices, as the centroid of a slice's area is not that of the body it sweeps.
    private static IEnumerable<Polygon> Slices(WallLevel low, WallLevel high, double thin)
    {
        int count = 1 + (int)((high.Z - low.Z) / thin);
        return Enumerable.Range(0, count).Select(i => Slice(Between(low, high, i / (double)count), Between(low, high, (i + 1.0) / count)));
    }

    private static WallLevel Between(WallLevel a, WallLevel b, double share) =>
        new(a.Z + (share * (b.Z - a.Z)), a.Outer + (share * (b.Outer - a.Outer)), a.Inner + (share * (b.Inner - a.Inner)));

    private static Polygon Slice(WallLevel low, WallLevel high) => new(new LinearRing(
        [new(low.Inner, low.Z), new(low.Outer, low.Z), new(high.Outer, high.Z), new(high.Inner, high.Z), new(low.Inner, low.Z)]));
}
