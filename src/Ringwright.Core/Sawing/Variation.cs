namespace Ringwright.Core.Sawing;

/// <summary>
/// What differs from cut to cut and from face to face: normal, independent from cut to cut. One cut makes two faces, so the end of
/// one wedge and the start of the next share its draw.
/// </summary>
public sealed record Variation
{
    private const double Degree = Math.PI / 180;

    /// <summary>No variation at all.</summary>
    public static Variation None { get; } = new();

    /// <summary>Mean of the angle by which the board is seated wrongly, rad; positive makes the cut's angle greater.</summary>
    public double SeatingMean { get; init; }

    /// <summary>Standard deviation of the seating angle, rad.</summary>
    public double SeatingDeviation { get; init; }

    /// <summary>Standard deviation of the blade's lean from cut to cut, rad: the board lies not quite flat, or dust is under it.</summary>
    public double LeanDeviation { get; init; }

    /// <summary>Mean error of the length set by the stop, mm; positive makes the wedge longer.</summary>
    public double StopMean { get; init; }

    /// <summary>Standard deviation of the length set by the stop, mm.</summary>
    public double StopDeviation { get; init; }

    /// <summary>Standard deviation of the kerf's width, mm.</summary>
    public double KerfDeviation { get; init; }

    /// <summary>
    /// Standard deviation of the difference between what hand sanding takes off a face at the rim and at the tip, mm; each face
    /// has a draw of its own. Where a draw would take off less than nothing at one end, nothing is taken off there.
    /// </summary>
    public double SandingUnevenness { get; init; }

    /// <summary>
    /// Standard deviation of the difference between what hand sanding takes off a face at its upper and at its lower side, mm; each
    /// face has a draw of its own. It is never so uneven that nothing is taken off somewhere.
    /// </summary>
    public double SandingUnevennessAcross { get; init; }

    internal void Check(SawSetup saw)
    {
        Require.Angle("seating error: mean", SeatingMean, -5 * Degree, 5 * Degree);
        Require.Angle("seating error: deviation", SeatingDeviation, 0, 0.5 * Degree);
        Require.Angle("lean from cut to cut: deviation", LeanDeviation, 0, 0.5 * Degree);
        Require.Between("stop error: mean", StopMean, -saw.StopDistance / 2, saw.StopDistance / 2, "mm");
        Require.Spread("stop error: deviation", StopDeviation, saw.StopDistance + StopMean, 10, "mm");
        Require.Between("sanding unevenness: deviation", SandingUnevenness, 0, 2, "mm");
        Require.Between("sanding unevenness across: deviation", SandingUnevennessAcross, 0, 2, "mm");
        Require.Spread("kerf wander: deviation", KerfDeviation, saw.Kerf, 5, "mm");
    }
}
