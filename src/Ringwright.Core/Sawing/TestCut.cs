using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>
/// The first wedge in plan view, for judging a first cut by eye: three pictures with the stop too far, right and not far
/// enough. All shapes are in the board frame at half the board's thickness.
/// </summary>
/// <param name="Setting">Which of the three.</param>
/// <param name="StopOffset">How much farther from the blade than set the stop stands, mm; negative when nearer.</param>
/// <param name="BoardEnd">The board's end after the cut, as far as it is shown.</param>
/// <param name="Kerf">What turned to sawdust. Empty for a knife.</param>
/// <param name="Piece">The wedge that falls.</param>
/// <param name="RimLength">Its rim edge, mm.</param>
/// <param name="TipLength">Its tip flat, mm; 0 for a point.</param>
/// <param name="EndsBeforeFarEdge">How far before the board's far edge the wedge ends, mm; 0 when it reaches it.</param>
/// <param name="NextRimLoss">What the next wedge's rim edge lacks for it, mm.</param>
public sealed record TestCut(
    TestCutSetting Setting,
    double StopOffset,
    ConvexPolygon BoardEnd,
    ConvexPolygon Kerf,
    ConvexPolygon Piece,
    double RimLength,
    double TipLength,
    double EndsBeforeFarEdge,
    double NextRimLoss)
{
    /// <summary>
    /// The three pictures, in the order of <see cref="TestCutSetting"/>, with the stop off by <paramref name="offset"/> mm
    /// either way. Errors of fences and blade count as given; nothing varies from cut to cut.
    /// </summary>
    /// <exception cref="BadInputException">A value cannot be used, or the board is too short for two wedges.</exception>
    public static ImmutableArray<TestCut> Pictures(BoardBlank board, SawSetup saw, double offset)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(saw);
        new SawJob(board, saw, 2).Check();
        Require.Between("test cut: stop offset", offset, 0.01, saw.StopDistance / 2, "mm");
        return
        [
            Picture(TestCutSetting.TooFar, board, saw, offset),
            Picture(TestCutSetting.Right, board, saw, 0),
            Picture(TestCutSetting.NotFarEnough, board, saw, -offset),
        ];
    }

    private static TestCut Picture(TestCutSetting setting, BoardBlank board, SawSetup saw, double offset)
    {
        SawRun run = SawSimulator.Run(new(board, saw with { StopDistance = saw.StopDistance + offset }, 2));
        if (run.Wedges.Length < 2) throw new BadInputException("test cut", run.Explanation.TrimEnd('.'), "two wedges are needed for the picture");

        SawnWedge wedge = run.Wedges[0];
        double level = board.Thickness / 2;
        Cut cut = run.Cuts[^2];
        ConvexPolygon end = Outline(board, run.Cuts.AsSpan()[..^2], level, Shown(board, saw, run.Cuts[^3]));
        HalfPlane piece = cut.Piece.Trace(level);
        HalfPlane rest = cut.Rest.Trace(level);
        ConvexPolygon falling = end.Clip(piece);
        return new(setting, offset, end.Clip(rest), end.Clip(piece.Complement).Clip(rest.Complement), falling,
            wedge.RimLength(level), wedge.TipLength(level),
            Gap(falling, board.Plane(cut.Edge.Opposite()).Trace(level)), run.Wedges[1].RimLoss(level));
    }

    private static ConvexPolygon Outline(BoardBlank board, ReadOnlySpan<Cut> before, double level, double shown)
    {
        ConvexPolygon outline = board.Solid().Section(level).Clip(new(new(1, 0), shown));
        foreach (Cut cut in before) outline = outline.Clip(cut.Rest.Trace(level));
        return outline;
    }

    // From where the first cut ends, on whichever edge that is farther: three wedges and a width show what the cut did to the board.
    private static double Shown(BoardBlank board, SawSetup saw, Cut first) =>
        board.FarthestStart(first.Rest) + (3 * saw.StopDistance) + board.Width;

    private static double Gap(ConvexPolygon piece, HalfPlane farEdge)
    {
        double gap = double.PositiveInfinity;
        foreach (Vector2D corner in piece.Vertices) gap = Math.Min(gap, -farEdge.Distance(corner));
        return gap > ConvexSolid.OnPlane ? gap : 0;
    }
}
