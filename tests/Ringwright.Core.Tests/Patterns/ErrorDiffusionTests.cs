using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Tests.Patterns;

public class ErrorDiffusionTests
{
    private static readonly Palette Woods = new(["holly", "padauk", "walnut", "ebony"]);

    // What is lost: what the top ring would hand up, and what passes the mixtures' limit. Bound: a tenth of the way from
    // the lightest to the darkest wood.
    [Theory]
    [InlineData(ErrorSpread.Light)]
    [InlineData(ErrorSpread.Lab)]
    public void The_mean_over_the_piece_is_the_picture_s(ErrorSpread spread) => Gen.Select(AnyLattice, AnyMixture).Sample(
        (lattice, mixture) =>
        {
            var space = WorkingSpace.Of(spread);
            Vector3D[] woods = [.. Woods.Lights.Select(space.Point)];
            Vector3D target = mixture.Zip(woods).Aggregate(default(Vector3D), (sum, x) => sum + (x.First * x.Second));
            Vector3D missing = Missing(lattice, spread, space, woods, target);
            double size = (woods[0] - woods[3]).Length;
            return missing.Length < 0.1 * size;
        },
        iter: 50);

    // Half the light of holly and ebony each: half of the 192 within 5 %, evenly over the rings.
    [Fact]
    public void Half_and_half_alternate()
    {
        Lattice lattice = Text.BrickLaid(8, 24);
        LinearRgb half = 0.5 * (Palette.LightOf("holly") + Palette.LightOf("ebony"));
        int?[][] chosen = new ErrorDiffusion(lattice, new(["holly", "ebony"]), ErrorSpread.Light).Choose(Flat(lattice, half));
        Assert.InRange(chosen.Sum(row => row.Count(w => w == 0)), 87, 105);
        Assert.All(chosen, row => Assert.InRange(row.Count(w => w == 0), 8, 16));
    }

    // No mixture of woods is blue: without the hull the difference would grow from ring to ring.
    [Fact]
    public void A_colour_that_no_wood_reaches_gives_the_same_woods_at_the_top_as_at_the_bottom()
    {
        Lattice lattice = Text.Even(40, 12);
        int?[][] chosen = new ErrorDiffusion(lattice, Woods, ErrorSpread.Light).Choose(Flat(lattice, new(0, 0, 1)));
        double share(int ring) => chosen.Skip(ring).Take(10).Sum(row => row.Count(w => w == 3)) / 120.0;
        Assert.Equal(share(5), share(30), 0.1);
    }

    [Fact]
    public void The_hull_s_nearest_colour_is_nearer_than_any_mixture() => Gen.Select(AnyPoints, AnyPoint, Gen.Double[0, 1].Array[6].Array[40]).Sample((points, colour, mixtures) =>
    {
        var hull = new ColourHull(points);
        Vector3D nearest = hull.Nearest(colour);
        double distance = (nearest - colour).Length;
        return (hull.Nearest(nearest) - nearest).Length < 1e-7
            && mixtures.All(m => (Mix(points, m) - colour).Length >= distance - 1e-9 && (hull.Nearest(Mix(points, m)) - Mix(points, m)).Length < 1e-7);
    });

    private static Gen<Vector3D> AnyPoint => Gen.Select(Gen.Double[-1, 2], Gen.Double[-1, 2], Gen.Double[-1, 2], (x, y, z) => new Vector3D(x, y, z));

    // Also one, two or three points, and points in one plane.
    private static Gen<Vector3D[]> AnyPoints => Gen.Select(AnyPoint.Array[1, 6], Gen.Bool, (points, flat) => flat ? [.. points.Select(p => p with { Z = 0.5 })] : points);

    private static Gen<Lattice> AnyLattice => Gen.Select(Gen.Int[12, 36], Gen.Double[-1, 1], Gen.Double[30, 60], Gen.Double[5, 15],
        (n, shift, radius, height) => new LatticeRing(n, shift, radius, height)).Array[8, 20].Select(rings => new Lattice(rings));

    private static Gen<double[]> AnyMixture => Gen.Double[0.05, 1].Array[4].Select(w => w.Select(x => x / w.Sum()).ToArray());

    private static Vector3D Mix(Vector3D[] points, double[] weights)
    {
        double sum = points.Select((_, i) => weights[i] + 1e-3).Sum();
        return points.Select((p, i) => (weights[i] + 1e-3) / sum * p).Aggregate((a, b) => a + b);
    }

    private static LinearRgb?[][] Flat(Lattice lattice, LinearRgb light) => [.. lattice.Rings.Select(r => Enumerable.Repeat<LinearRgb?>(light, r.Segments).ToArray())];

    // What the piece as a whole lacks of the wanted colour.
    private static Vector3D Missing(Lattice lattice, ErrorSpread spread, WorkingSpace space, Vector3D[] woods, Vector3D target)
    {
        Lab lab = space.Lab(target);
        int?[][] chosen = new ErrorDiffusion(lattice, Woods, spread).Choose(Flat(lattice, lab.ToLinear()));
        double area = lattice.Rings.Sum(r => r.CellArea * r.Segments);
        Vector3D got = chosen.SelectMany((row, r) => row.Select(w => lattice.Rings[r].CellArea / area * woods[w!.Value])).Aggregate((a, b) => a + b);
        return target - got;
    }
}
