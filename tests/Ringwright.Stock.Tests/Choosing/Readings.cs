using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Tests.Choosing;

/// <summary>Made-up caliper readings: wedges of a disc, sawn with scatter, with a fixed seed.</summary>
internal static class Readings
{
    public const double Radius = 12.7;
    public const double Depth = 10;

    /// <summary>
    /// Wedges for <paramref name="places"/> places with spares, woods dealt in turn, angles off by <paramref name="biasMrad"/> on
    /// average and scattering by <paramref name="sdMrad"/>, read to <paramref name="resolution"/> mm.
    /// </summary>
    public static WedgeChoiceInput Make(
        int places, int spares, int seed, string[]? pattern = null, Closing closing = Closing.Whole,
        double biasMrad = 0, double sdMrad = 3, double resolution = 0.001, double woodBiasMrad = 0)
    {
        var random = new Random(seed);
        var woods = pattern ?? ["maple"];
        return new()
        {
            Places = places,
            Radius = Radius,
            Depth = Depth,
            Pattern = pattern ?? [],
            Closing = closing,
            Wedges = [.. Enumerable.Range(0, places + spares).Select(i => Wedge(i, woods[i % woods.Length]))],
        };

        CaliperReading Wedge(int i, string wood)
        {
            double normal = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            double bias = biasMrad + (wood == woods[0] ? woodBiasMrad : -woodBiasMrad);
            double angle = 2 * Math.PI / places + (bias + sdMrad * normal) / 1000;
            double tip = 0.6 + 0.1 * random.NextDouble();
            double rim = tip + 2 * Depth * Math.Tan(angle / 2);
            return new(i + 1, wood, Round(rim), Round(tip));
        }

        double Round(double mm) => resolution > 0 ? Math.Round(mm / resolution) * resolution : mm;
    }

    public static IReadOnlyList<CaliperReading> RingOf(this WedgeChoice choice) => [.. choice.Ring.Select(p => p.Wedge)];
}
