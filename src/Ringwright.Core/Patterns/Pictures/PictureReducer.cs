using System.Collections.Immutable;
using Ringwright.Core.Patterns.Reports;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>
/// Turns a picture into a pattern: the mean of the picture over each segment's visible area, in linear light, then the wood
/// at hand that looks nearest by CIEDE2000.
/// </summary>
public static class PictureReducer
{
    private const double Rounding = 1e-9; // of equal differences the lowest counts as the worst, not the one rounded up

    /// <summary>The picture in the woods at hand.</summary>
    /// <exception cref="BadInputException">An option is out of range, a wood has no name, or nothing of the picture lies on the piece.</exception>
    public static PicturedPattern Reduce(PixelPicture picture, Lattice lattice, PictureOptions options)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(options);
        Check(options);
        var palette = new Palette(options.Woods);
        LinearRgb?[][] wanted = Wanted(picture, lattice, options);
        if (options.FitTones) Tones.Fit(wanted, palette.Labs);
        int?[][] chosen = options.Spread == ErrorSpread.None
            ? [.. wanted.Select(row => row.Select(c => c is { } light ? palette.Nearest(Lab.From(light)).Wood : (int?)null).ToArray())]
            : new ErrorDiffusion(lattice, palette, options.Spread).Choose(wanted);
        return Result(lattice, palette, options.Background, wanted, chosen);
    }

    // The colour of each cell, null for background.
    private static LinearRgb?[][] Wanted(PixelPicture picture, Lattice lattice, PictureOptions options)
    {
        LinearRgb ground = Palette.LightOf(options.Background);
        LinearRgb?[][] wanted = [.. CellLight.Of(picture, lattice, options.Placement).Select(row => row.Select(c => c.IsEmpty ? (LinearRgb?)null : c.Over(ground)).ToArray())];
        if (wanted.All(row => row.All(c => c is null)))
            throw new BadInputException("picture", "no segment would show any of it", "lift it less, wrap it wider, or give one that is not wholly transparent");
        return wanted;
    }

    private static PicturedPattern Result(Lattice lattice, Palette palette, string background, LinearRgb?[][] wanted, int?[][] chosen)
    {
        ImmutableArray<ImmutableArray<string>> rows = [.. chosen.Select(row => row.Select(w => w is { } wood ? palette.Names[wood] : background).ToImmutableArray())];
        (double sum, double area, double worst, int worstRing, int worstSegment) = (0, 0, 0, 0, 0);
        for (int r = 0; r < wanted.Length; r++)
            for (int k = 0; k < wanted[r].Length; k++)
            {
                if (wanted[r][k] is not { } light || chosen[r][k] is not { } wood) continue;
                double difference = ColourDifference.Between(Lab.From(light), palette.Labs[wood]);
                sum += difference * lattice.Rings[r].CellArea;
                area += lattice.Rings[r].CellArea;
                if (worstRing == 0 || difference > worst + Rounding) (worst, worstRing, worstSegment) = (difference, r + 1, k + 1);
            }

        return new(rows, WoodCounts.Of(rows), sum / area, worst, worstRing, worstSegment);
    }

    private static void Check(PictureOptions options)
    {
        PatternWords.CheckWoods("picture, woods", options.Woods);
        PatternWords.CheckWood("picture, background", options.Background);
        if (!Enum.IsDefined(options.Spread)) throw new BadInputException("picture, spread", $"{options.Spread} is not known", "use none, light or Lab");
        options.Placement.Check();
    }
}
