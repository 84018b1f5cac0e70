using Ringwright.Core.Fitting;

namespace Ringwright.Bench;

/// <summary>Rings of unequal wedges for the dry fit: a few hundredths of a millimetre at the rim, of a degree in angle.</summary>
internal static class FitRings
{
    internal const double Radius = 60;
    private const double Wider = 0.03;
    private const double Turned = 0.0008;

    /// <summary>An open ring of depth 15 mm.</summary>
    internal static FitWedge[] Ring(int wedges) => Make(wedges, (rim, half) => FitWedge.FromCaliper(rim, rim - (30 * Math.Tan(half)), 15));

    /// <summary>A disc of wedges sawn to a point, so of unequal length.</summary>
    internal static FitWedge[] Disc(int wedges) => Make(wedges, (rim, half) => FitWedge.FromCaliper(rim, 0, rim / 2 / Math.Tan(half)));

    private static FitWedge[] Make(int wedges, Func<double, double, FitWedge> make)
    {
        var random = new Random(1);
        double Error(double size) => ((2 * random.NextDouble()) - 1) * size;
        double scale = Math.Min(1, 36.0 / wedges); // narrow wedges need finer hands
        return [.. Enumerable.Range(0, wedges).Select(_ => make((2 * Radius * Math.Tan(Math.PI / wedges)) + Error(scale * Wider), (Math.PI / wedges) + Error(scale * Turned)))];
    }
}
