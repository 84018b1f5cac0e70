using CsCheck;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Tests.Patterns;

public class CellLightTests
{
    private const int Fine = 60;

    // A cell's edge may cut the samples anywhere: of 60 across, one at each edge of each pixel may be on the wrong side.
    [Fact]
    public void Means_agree_with_many_samples_of_each_cell() => AnyCase.Sample(
        (picture, lattice, placement) =>
        {
            var cells = CellLight.Of(picture, lattice, placement);
            for (int r = 0; r < cells.Length; r++)
                for (int k = 0; k < cells[r].Length; k++)
                    if (Distance(cells[r][k], Sampled(picture, lattice, placement, r, k)) > 0.05) return false;
            return true;
        },
        iter: 30);

    [Fact]
    public void A_picture_once_around_leaves_none_of_its_light_out() => Gen.Select(AnyPicture, AnyLattice, Gen.Double[-4, 4], Gen.Bool).Sample(t =>
    {
        (PixelPicture picture, Lattice lattice, double middle, bool inside) = t;
        var cells = CellLight.Of(picture, lattice, new() { Sizing = PictureSizing.Stretch, Middle = middle, FromInside = inside });
        double onPiece = cells.Select((row, r) => row.Sum(c => c.Light.Green) / row.Length * lattice.Rings[r].Height).Sum() / lattice.Height;
        double inPicture = Enumerable.Range(0, picture.Width * picture.Height).Average(i => Pixel(picture, i % picture.Width, i / picture.Width).Light.Green);
        return Math.Abs(onPiece - inPicture) < 1e-12;
    });

    private static Gen<Lattice> AnyLattice => Gen.Select(Gen.Int[3, 14], Gen.Double[-1, 1], Gen.Double[20, 80], Gen.Double[5, 30],
        (n, shift, radius, height) => new LatticeRing(n, shift, radius, height)).Array[1, 4].Select(rings => new Lattice(rings));

    private static Gen<PixelPicture> AnyPicture => Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6], Gen.Byte.Array[144]).Select(t =>
        Pictures.Of(t.Item1, t.Item2, (x, y) => (new Srgb(t.Item3[4 * ((6 * y) + x)], t.Item3[(4 * ((6 * y) + x)) + 1], t.Item3[(4 * ((6 * y) + x)) + 2]), t.Item3[(4 * ((6 * y) + x)) + 3])));

    private static Gen<PicturePlacement> AnyPlacement => Gen.Select(Gen.Int[0, 3], Gen.Double[0.5, 2 * Math.PI], Gen.Double[-7, 7], Gen.Double[-20, 20], Gen.Bool,
        (sizing, angle, middle, lift, inside) => new PicturePlacement { Sizing = (PictureSizing)sizing, Angle = angle, Middle = middle, Lift = lift, FromInside = inside });

    private static Gen<(PixelPicture, Lattice, PicturePlacement)> AnyCase => Gen.Select(AnyPicture, AnyLattice, AnyPlacement);

    // Written anew from the words of PicturePlacement: in millimetres on the unrolled surface at the mean radius.
    private static CellLight Sampled(PixelPicture picture, Lattice lattice, PicturePlacement placement, int ring, int segment)
    {
        (int n, double shift, _, double height) = lattice.Rings[ring];
        double bottom = lattice.Rings.Take(ring).Sum(r => r.Height);
        double spaceWide = placement.Angle * lattice.MeanRadius, aspect = (double)picture.Height / picture.Width;
        (double wide, double high) = placement.Sizing switch
        {
            PictureSizing.Around => (spaceWide, spaceWide * aspect),
            PictureSizing.Whole when spaceWide * aspect > lattice.Height => (lattice.Height / aspect, lattice.Height),
            PictureSizing.Whole => (spaceWide, spaceWide * aspect),
            PictureSizing.Cover when spaceWide * aspect < lattice.Height => (lattice.Height / aspect, lattice.Height),
            PictureSizing.Cover => (spaceWide, spaceWide * aspect),
            _ => (spaceWide, lattice.Height),
        };
        (LinearRgb light, double cover) = (default, 0);
        for (int i = 0; i < Fine; i++)
            for (int j = 0; j < Fine; j++)
            {
                double angle = Math.IEEERemainder(((segment + shift - 0.5 + ((i + 0.5) / Fine)) * 2 * Math.PI / n) - placement.Middle, 2 * Math.PI);
                double x = (placement.FromInside ? -angle : angle) * lattice.MeanRadius;
                double z = bottom + (height * (j + 0.5) / Fine) - (lattice.Height / 2) - placement.Lift;
                if (Math.Abs(x) > Math.Min(wide, spaceWide) / 2 || Math.Abs(z) > high / 2) continue;
                (LinearRgb more, double opaque) = Pixel(picture, (int)((x / wide + 0.5) * picture.Width), (int)((0.5 - (z / high)) * picture.Height));
                light += more;
                cover += opaque;
            }

        return new((1.0 / (Fine * Fine)) * light, cover / (Fine * Fine));
    }

    private static CellLight Pixel(PixelPicture picture, int x, int y)
    {
        int at = 4 * ((y * picture.Width) + x);
        double opaque = picture.Rgba[at + 3] / 255.0;
        return new(opaque * new Srgb(picture.Rgba[at], picture.Rgba[at + 1], picture.Rgba[at + 2]).Linear, opaque);
    }

    private static double Distance(CellLight a, CellLight b) => new[] { a.Light.Red - b.Light.Red, a.Light.Green - b.Light.Green, a.Light.Blue - b.Light.Blue, a.Cover - b.Cover }.Max(Math.Abs);
}
