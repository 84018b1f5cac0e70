using System.Collections.Immutable;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>What a cell sees of a picture.</summary>
/// <param name="Light">Light of the picture, already multiplied by how much of the cell it covers.</param>
/// <param name="Cover">How much of the cell the picture covers, opacity counted, 0 to 1.</param>
internal readonly record struct CellLight(LinearRgb Light, double Cover)
{
    // Rounding of the sums; a cell covered less than this is background.
    private const double Nothing = 1e-9;

    /// <summary>Whether the cell is outside the picture or wholly transparent.</summary>
    public bool IsEmpty => Cover <= Nothing;

    /// <summary>The cell's light with <paramref name="background"/> where the picture lets it through.</summary>
    public LinearRgb Over(LinearRgb background) => Light + ((1 - Cover) * background);

    /// <summary>
    /// The mean over each cell's own area, in linear light, exact: every pixel counts by the area it shares with the cell.
    /// Per ring from the bottom up, per segment.
    /// </summary>
    public static ImmutableArray<ImmutableArray<CellLight>> Of(PixelPicture picture, Lattice lattice, PicturePlacement placement)
    {
        var map = new PictureMap(picture, lattice, placement);
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<CellLight>>(lattice.Rings.Length);
        double bottom = 0;
        for (int r = 0; r < lattice.Rings.Length; r++)
        {
            int ring = r;
            double z = bottom, area = map.CellArea(ring);
            rows.Add([.. Enumerable.Range(0, lattice.Rings[r].Segments).Select(k => Mean(picture, map.Boxes(ring, k, z), area))]);
            bottom += lattice.Rings[r].Height;
        }

        return rows.MoveToImmutable();
    }

    private static CellLight Mean(PixelPicture picture, IEnumerable<PixelBox> boxes, double area)
    {
        (LinearRgb light, double cover) = (default, 0);
        foreach (PixelBox box in boxes)
        {
            (LinearRgb more, double opaque) = Sum(picture, box);
            light += more;
            cover += opaque;
        }

        return new((1 / area) * light, Math.Min(1, cover / area));
    }

    private static (LinearRgb Light, double Opaque) Sum(PixelPicture picture, PixelBox box)
    {
        ReadOnlySpan<byte> rgba = picture.Rgba.AsSpan();
        (double red, double green, double blue, double opaque) = (0, 0, 0, 0);
        int firstX = (int)box.Left, pastX = Math.Min(picture.Width, (int)Math.Ceiling(box.Right));
        for (int y = (int)box.Top; y < picture.Height && y < box.Bottom; y++)
        {
            double high = Math.Min(box.Bottom, y + 1) - Math.Max(box.Top, y);
            for (int x = firstX; x < pastX; x++)
            {
                ReadOnlySpan<byte> pixel = rgba.Slice(4 * ((y * picture.Width) + x), 4);
                double share = high * (Math.Min(box.Right, x + 1) - Math.Max(box.Left, x)) * pixel[3] / 255;
                red += share * LinearRgb.Decoded(pixel[0]);
                green += share * LinearRgb.Decoded(pixel[1]);
                blue += share * LinearRgb.Decoded(pixel[2]);
                opaque += share;
            }
        }

        return (new(red, green, blue), opaque);
    }
}
