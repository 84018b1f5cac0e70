using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

/// <summary>Jobs the tests start from: a small board, 18 wedges, half angle 10°.</summary>
internal static class Example
{
    public const double Degree = Math.PI / 180;
    public const int Segments = 18;
    public const double Half = Math.PI / Segments;
    public const double Width = 12.7;
    public const double Thickness = 30;
    public const double Kerf = 1.1;

    /// <summary>Rim edge of a wedge with this tip flat, mm: Lo = f + 2 w tan a.</summary>
    public static double Rim(double tip) => tip + (2 * Width * Math.Tan(Half));

    public static TwoFenceSled Sled(double first = Half, double second = Half) => new(new(first), new(second));

    public static FlippedMitre Mitre(double angle = Half) => new(new(angle));

    public static SawJob Job(Jig jig, double tip = 1, int wanted = Segments) =>
        new(new(300, Width, Thickness), new(jig, Rim(tip), Kerf), wanted);

    public static SawJob Leaning(Jig jig, double lean) =>
        Job(jig) is var job ? job with { Saw = job.Saw with { BladeLean = lean } } : job;

    public static double SumOfAngles(SawRun run)
    {
        double sum = 0;
        foreach (SawnWedge wedge in run.Wedges) sum += wedge.Angle;
        return sum;
    }
}
