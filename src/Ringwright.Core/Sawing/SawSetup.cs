namespace Ringwright.Core.Sawing;

/// <summary>The saw as it stands for one run of wedges.</summary>
/// <param name="Jig">How the board is held.</param>
/// <param name="StopDistance">
/// From the blade to the stop along the fence, at the table, mm. The stop is a flat plate square to the fence and as tall
/// as the board; the foremost point of the board's end touches it. For a clean end and no lean this is the wedge's rim edge.
/// </param>
/// <param name="Kerf">Width of the saw's kerf, normal to the blade, mm. It eats the board, not the wedge. 0 for a knife.</param>
public sealed record SawSetup(Jig Jig, double StopDistance, double Kerf)
{
    private const double Degree = Math.PI / 180;

    /// <summary>
    /// Lean of the blade from the vertical, rad. Positive: the falling piece comes out longer at the table than at its
    /// upper face.
    /// </summary>
    public double BladeLean { get; init; }

    /// <summary>
    /// Tilt of the blade as wanted, rad, for every cut but the squaring one: the falling piece comes out wider at its upper face by
    /// it, and with the board turned over between cuts so do both its joint faces slope. Its error is a <see cref="BladeLean"/>. 0 for wedges.
    /// </summary>
    public double BladeTilt { get; init; }

    /// <summary>Length of the piece sawn off to square the board's end before the first wedge, mm; 0 when the end is square already.</summary>
    public double SquaringTrim { get; init; }

    /// <summary>Length left at the far edge on the first angled offcut, mm; enough that the whole end is sawn at an angle.</summary>
    public double FirstOffcutTip { get; init; } = 1;

    /// <summary>Length of board that must be left after the last cut, to hold it by, mm: measured on its shortest long edge.</summary>
    public double HoldingLength { get; init; }

    internal void Check()
    {
        Require.Between("stop distance", StopDistance, 0.05, 10_000, "mm");
        Require.Between("kerf", Kerf, 0, 50, "mm");
        Require.Angle("blade lean", BladeLean, -30 * Degree, 30 * Degree);
        Require.Angle("blade tilt", BladeTilt, 0, 75 * Degree);
        Require.Between("squaring trim", SquaringTrim, 0, 10_000, "mm");
        Require.Between("first offcut's tip", FirstOffcutTip, 0, 10_000, "mm");
        Require.Between("holding length", HoldingLength, 0, 100_000, "mm");
        Jig.Check(BladeTilt);
    }
}
