namespace Ringwright.Core.Sawing;

/// <summary>
/// Truing on a disc sander: wedges are rough-sawn oversize, then each joint face is trued by itself with the rim edge
/// against a fence. The first face (-y) loses the oversize at the rim, the second is sanded until the rim edge at the
/// table measures the saw's stop distance. Every face has errors of its own.
/// </summary>
/// <param name="Fence">Angle of a face against the fence, rad: half the wedge angle.</param>
/// <param name="Oversize">Wood left on each face by the rough cut, normal to it, mm; the rough stop stands farther by this.</param>
public sealed record DiscSander(Fence Fence, double Oversize)
{
    private const double Degree = Math.PI / 180;

    /// <summary>
    /// Whether the wedge is turned over between its two faces, as one fence demands. Then the table's lean shears the
    /// wedge, all wedges alike; with a fence for each face (never turned) it makes the wedge taper in height.
    /// </summary>
    public bool TurnedOver { get; init; } = true;

    /// <summary>Lean of the disc against the table's normal, rad; positive makes the wedge longer at the table, like <see cref="SawSetup.BladeLean"/>.</summary>
    public double TableLean { get; init; }

    /// <summary>Standard deviation of the lean per face, rad.</summary>
    public double LeanDeviation { get; init; }

    /// <summary>Length of the trued rim edge at the table, mm; the saw's stop distance when null.</summary>
    public double? RimEdge { get; init; }

    /// <summary>Mean seating angle per face, rad; positive makes the wedge angle greater.</summary>
    public double SeatingMean { get; init; }

    /// <summary>Standard deviation of the seating angle per face, rad.</summary>
    public double SeatingDeviation { get; init; }

    /// <summary>Standard deviation of where a face ends along the rim, per face, mm.</summary>
    public double SizeDeviation { get; init; }

    internal void Check(SawSetup saw)
    {
        Fence.Check("sander's fence");
        Require.Between("sander: oversize", Oversize, 0, 20, "mm");
        Require.Angle("sander: table lean", TableLean, -75 * Degree, 75 * Degree);
        Require.Angle("sander: lean deviation", LeanDeviation, 0, 0.5 * Degree);
        if (RimEdge is { } rim) Require.Between("sander: rim edge", rim, 0, 10_000, "mm");
        Require.Angle("sander: seating mean", SeatingMean, -5 * Degree, 5 * Degree);
        Require.Angle("sander: seating deviation", SeatingDeviation, 0, 0.5 * Degree);
        Require.Spread("sander: size deviation", SizeDeviation, saw.StopDistance, 10, "mm");
    }
}
