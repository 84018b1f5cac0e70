using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>A shop in which the truth is known: fences with a known error, the ring they make, and what exact geometry reads off it.</summary>
internal static class DiagnosisRings
{
    public const int N = 24;
    public const double Rim = 50;
    public const double Tip = 20;

    public static DiagnosedRing Ring(SledKind sled = SledKind.TwoFences, int segments = N, double tip = Tip) => new()
    {
        Segments = segments,
        RimRadius = Rim,
        TipRadius = tip,
        Thickness = 20,
        Sled = sled,
        RuleDistance = 300,
    };

    /// <summary>The closing error when both fences (or the one, twice) err by <paramref name="fence"/> radians.</summary>
    public static double ClosingError(double fence, int segments = N) => -2 * segments * fence;

    /// <summary>The dry fit of N equal wedges with that closing error.</summary>
    public static DryFitResult Fit(double closing, int segments = N) =>
        DryFitSolver.Fit(DryFitRings.Equal(segments, Rim, (Rim - Tip) * Math.Cos(Math.PI / segments), closing));

    /// <summary>Gathered opening at either end, by the chain of flush wedges.</summary>
    public static GatheredGap Gathered(DryFitResult fit, OpenAt at, JointLevel level = JointLevel.Middle) =>
        new(at, level, Math.Max(0, at == OpenAt.Rim ? fit.Gathered.Gap.RimBottom : fit.Gathered.Gap.TipBottom));

    /// <summary>Half the wedges, flush, laid evenly on a straightedge: each end face stands off by half of what the half misses of pi.</summary>
    public static HalfRingGap HalfRing(double closing)
    {
        double missing = closing / 2;
        double gap = (Rim - Tip) * Math.Sin(Math.Abs(missing) / 2);
        return new(closing >= 0 ? OpenAt.Rim : OpenAt.Centre, gap);
    }
}
