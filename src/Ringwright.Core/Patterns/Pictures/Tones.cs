using System.Collections.Immutable;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>Fits a picture's range of lightness to that of the woods.</summary>
internal static class Tones
{
    /// <summary>Moves each colour's L* so that the darkest is as dark as the darkest wood and the lightest as light as the lightest; hue stays.</summary>
    public static void Fit(LinearRgb?[][] cells, ImmutableArray<Lab> woods)
    {
        var lightness = cells.SelectMany(row => row).OfType<LinearRgb>().Select(c => Lab.From(c).L).ToList();
        (double darkest, double lightest) = (lightness.Min(), lightness.Max());
        if (lightest - darkest < 1e-6) return; // one shade has no range
        (double low, double high) = (woods.Min(w => w.L), woods.Max(w => w.L));
        foreach (LinearRgb?[] row in cells)
            for (int k = 0; k < row.Length; k++)
                if (row[k] is { } light && Lab.From(light) is var lab)
                    row[k] = (lab with { L = low + ((lab.L - darkest) / (lightest - darkest) * (high - low)) }).ToLinear();
    }
}
