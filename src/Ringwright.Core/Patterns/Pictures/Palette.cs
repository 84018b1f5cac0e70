using System.Collections.Immutable;
using Ringwright.Core.Timber;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>The woods at hand with their colours.</summary>
internal sealed class Palette
{
    public Palette(IEnumerable<string> woods)
    {
        Names = [.. woods.Select(w => w.Trim()).Distinct(StringComparer.OrdinalIgnoreCase)];
        Labs = [.. Names.Select(n => Wood.Named(n).Lab)];
        Lights = [.. Names.Select(LightOf)];
    }

    public ImmutableArray<string> Names { get; }

    public ImmutableArray<Lab> Labs { get; }

    public ImmutableArray<LinearRgb> Lights { get; }

    public static LinearRgb LightOf(string wood) => Srgb.Parse(Wood.Named(wood).Hex).Linear;

    /// <summary>The wood that looks nearest, the first of equals, and its ΔE00.</summary>
    public (int Wood, double Difference) Nearest(Lab colour)
    {
        (int wood, double least) = (0, double.PositiveInfinity);
        for (int i = 0; i < Labs.Length; i++)
        {
            double difference = ColourDifference.Between(colour, Labs[i]);
            if (difference < least) (wood, least) = (i, difference);
        }

        return (wood, least);
    }
}
