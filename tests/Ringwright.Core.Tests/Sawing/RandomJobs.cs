using CsCheck;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

/// <summary>Jobs of every kind, sensible and silly, that pass the checks of their values.</summary>
internal static class RandomJobs
{
    private static readonly Gen<BoardBlank> Board = Gen.Select(
        Gen.Double[60, 500], Gen.Double[3, 60], Gen.Double[3, 50], Gen.Double[-1, 1], Gen.Double[-1, 1],
        (length, width, thickness, wider, thicker) => new BoardBlank(length, width, thickness) { WidthChange = wider, ThicknessChange = thicker });

    private static readonly Gen<Fence> Fence = Gen.Select(
        Gen.Double[1, 35], Gen.Double[-0.5, 0.5], (angle, error) => new Fence(angle * Example.Degree, error * Example.Degree));

    private static readonly Gen<Jig> Jig = Gen.OneOf(
        Gen.Select(Fence, Fence, Gen.Bool, (a, b, square) => (Jig)new TwoFenceSled(square ? new(0, a.Error) : a, b)),
        Fence.Select(fence => (Jig)new FlippedMitre(fence)));

    // The stop as a share of the rim of a wedge sawn to a point: 0.3 is gross overcut, 3 a fat wedge.
    private static readonly Gen<(double Stop, double Lean, double Kerf, double Trim, double Tip, double Hold)> Saw = Gen.Select(
        Gen.OneOf(Gen.Double[0.3, 3], Gen.Const(1.0)), Gen.OneOf(Gen.Const(0.0), Gen.Double[-5, 5]), Gen.OneOf(Gen.Const(0.0), Gen.Double[0.3, 3]),
        Gen.OneOf(Gen.Const(0.0), Gen.Double[1, 10]), Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 3]), Gen.Double[0, 100]);

    private static readonly Gen<Variation> Vary = Gen.Select(Gen.Double[0, 0.3], Gen.Double[0, 0.01], Gen.Double[0, 0.02], (seat, stop, kerf) =>
        new Variation { SeatingDeviation = seat * Example.Degree, StopDeviation = stop, KerfDeviation = kerf });

    private static readonly Gen<FaceSanding> Face = Gen.OneOf(
        Gen.Const(default(FaceSanding)),
        Gen.Select(Gen.Double[0, 0.3], Gen.Double[0, 0.3], Gen.Double[0, 0.5], Gen.Double[0, 0.5],
            (rim, tip, rimRadius, tipRadius) => new FaceSanding(rim, tip) { RimRadius = rimRadius, TipRadius = tipRadius }));

    private static readonly Gen<DiscSander?> Sander = Gen.OneOf(
        Gen.Const((DiscSander?)null),
        Gen.Select(Fence, Gen.Double[0, 1], Gen.Double[-2, 2], Gen.Bool, (fence, oversize, lean, over) =>
            (DiscSander?)new DiscSander(fence, oversize) { TableLean = lean * Example.Degree, TurnedOver = over, SeatingDeviation = 0.002 }));

    /// <summary>Any job.</summary>
    public static Gen<SawJob> Any { get; } = Gen.Select(Board, Jig, Saw, Vary, Face, Face, Sander, Gen.ULong, (board, jig, saw, vary, minus, plus, sander, seed) =>
    {
        double point = board.Width * (Math.Tan(jig.FenceAt(BoardEdge.Edge1).Angle) + Math.Tan(jig.FenceAt(BoardEdge.Edge2).Angle));
        var setup = new SawSetup(jig, Math.Max(0.1, saw.Stop * point), saw.Kerf)
        {
            BladeLean = saw.Lean * Example.Degree,
            SquaringTrim = saw.Trim,
            FirstOffcutTip = saw.Tip,
            HoldingLength = saw.Hold,
        };
        return new SawJob(board, setup, 40)
        {
            Variation = saw.Kerf == 0 ? vary with { KerfDeviation = 0 } : vary,
            Sanding = new(minus, plus),
            Sander = sander,
            Seed = seed,
        };
    });
}
