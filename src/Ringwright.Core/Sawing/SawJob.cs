namespace Ringwright.Core.Sawing;

/// <summary>One board to be sawn into wedges: all that the simulation needs.</summary>
/// <param name="Board">The milled board.</param>
/// <param name="Saw">The saw as set.</param>
/// <param name="Wanted">How many wedges are wanted.</param>
public sealed record SawJob(BoardBlank Board, SawSetup Saw, int Wanted)
{
    private const double Degree = Math.PI / 180;

    /// <summary>What differs from cut to cut.</summary>
    public Variation Variation { get; init; } = Variation.None;

    /// <summary>The disc sander, when the wedges are trued on one.</summary>
    public DiscSander? Sander { get; init; }

    /// <summary>Hand sanding after all else.</summary>
    public Sanding Sanding { get; init; } = Sanding.None;

    /// <summary>Seed of all draws: the same job with the same seed gives the same run to the bit.</summary>
    public ulong Seed { get; init; }

    /// <summary>
    /// Seed of what happens to each wedge after the saw, truing and sanding; <see cref="Seed"/> when null. Pieces crosscut from one
    /// ripped strip share its cuts and are sanded each by itself.
    /// </summary>
    public ulong? FinishSeed { get; init; }

    /// <summary>Throws <see cref="BadInputException"/> with the first value that cannot be used.</summary>
    public void Check()
    {
        Require.Count("wedges wanted", Wanted, 1, 100_000);
        Board.Check();
        Saw.Check();
        Variation.Check(Saw);
        Sander?.Check(Saw);
        Sanding.Check();
        CheckReach("cuts at the first fence", Saw.Jig.FenceAt(BoardEdge.Edge1), Variation.SeatingMean);
        CheckReach("cuts at the second fence", Saw.Jig.FenceAt(BoardEdge.Edge2), Variation.SeatingMean);
    }

    private static void CheckReach(string where, Fence fence, double mean) =>
        Require.Angle($"{where}: angle with its errors", fence.True + mean, -10 * Degree, 75 * Degree);
}
