using Ringwright.Core.Timber;
using Ringwright.Core.Turning;

namespace Ringwright.Cli.Output;

/// <summary>What a turned piece is made of.</summary>
internal static class SolidFigures
{
    /// <summary>The turned piece with one and the same density for all woods: volumes and surfaces.</summary>
    public static TurnedMass Weigh(TurnedPiece turned)
    {
        double[] densities = [.. turned.Woods.Select(_ => 1000.0)];
        return TurnedMass.Of(turned.Rings, densities);
    }

    /// <summary>How each wood is drawn.</summary>
    public static Wood[] Woods(TurnedPiece turned) => [.. turned.Woods.Select(Wood.Named)];

    /// <summary>Pieces and volume of each wood, mm³.</summary>
    public static IEnumerable<(string Wood, int Pieces, double Volume)> ByWood(TurnedPiece turned, TurnedMass mass)
    {
        var counts = new int[turned.Woods.Length];
        var volumes = new double[turned.Woods.Length];
        for (int ring = 0; ring < turned.Rings.Length; ring++)
            for (int i = 0; i < turned.Rings[ring].Segments.Length; i++)
            {
                int wood = turned.Rings[ring].Segments[i].Wood;
                counts[wood]++;
                volumes[wood] += mass.Segments[ring][i].Volume;
            }

        return turned.Woods.Select((wood, i) => (wood, counts[i], volumes[i]));
    }
}
