using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>Which way a fence moves.</summary>
public enum FenceMove
{
    /// <summary>Away from square: the cut leans more, the wedge grows wider in angle.</summary>
    AwayFromSquare,

    /// <summary>Towards square: the cut leans less, the wedge grows narrower in angle.</summary>
    TowardsSquare,
}

/// <summary>
/// What to change so that the next ring closes: every wedge's angle by E/N, so each of its two faces by c = E/(2N). Two
/// fences each move by that (or one of them by twice as much: only their sum matters); a single fence makes both faces
/// and moves by it once, and so does a sander's. A rule that stands square to the square line at distance D from the
/// pivot reads D tan a of a fence at the angle a, so it shows the move as D (tan(a + c) − tan a).
/// </summary>
/// <param name="Sled">What carries the fences.</param>
/// <param name="FenceAngleNow">What each fence is set to now, a, radians from square.</param>
/// <param name="FenceAngle">Change of each fence's angle, c, radians; positive away from square.</param>
/// <param name="FenceAngleSd">
/// Its standard deviation, radians: from the readings, and from the scatter of single wedges, which made part of this
/// ring's closing error and will not come again. 0 when nothing is told of it.
/// </param>
/// <param name="RuleDistance">Distance from the pivot at which the move is read, along the square line, D, mm.</param>
public sealed record FenceCorrection(SledKind Sled, double FenceAngleNow, double FenceAngle, double FenceAngleSd, double RuleDistance)
{
    /// <summary>A correction this many standard deviations large is worth making.</summary>
    public const double WorthwhileSds = 2;

    /// <summary>Whether it is the blade's tilt that changes, by <see cref="FenceAngle"/>, and no fence.</summary>
    public bool IsTilt { get; init; }

    /// <summary>What part of the change turns a joint about the ring's axis: 1 for wedges, less for staves.</summary>
    public double Counts { get; init; } = 1;

    /// <summary>How many fences are to be moved.</summary>
    public int Fences => Sled == SledKind.TwoFences ? 2 : 1;

    /// <summary>Change of the wedge angle, radians; positive for a wider wedge.</summary>
    public double WedgeAngle => 2 * FenceAngle * Counts;

    /// <summary>What each fence is set to afterwards, radians from square.</summary>
    public double FenceAngleAfter => FenceAngleNow + FenceAngle;

    /// <summary>Which way each fence moves.</summary>
    public FenceMove Move => FenceAngle >= 0 ? FenceMove.AwayFromSquare : FenceMove.TowardsSquare;

    /// <summary>How much each fence's reading on the rule grows, mm; negative towards square.</summary>
    public double RuleChange => RuleDistance * (Math.Tan(FenceAngleAfter) - Math.Tan(FenceAngleNow));

    /// <summary>How far each fence moves on the rule, mm, always positive.</summary>
    public double RuleMove => Math.Abs(RuleChange);

    /// <summary>Standard deviation of that move, mm, to first order: D sd / cos² (a + c).</summary>
    public double RuleMoveSd => RuleDistance * FenceAngleSd / Math.Pow(Math.Cos(FenceAngleAfter), 2);

    /// <summary>Whether the correction stands out from its own uncertainty.</summary>
    public bool IsWorthwhile => Math.Abs(FenceAngle) >= WorthwhileSds * FenceAngleSd;

    /// <summary>The correction of a closing error.</summary>
    /// <param name="ring">The ring and its sled.</param>
    /// <param name="closing">2 pi less the sum of the wedge angles, E, radians.</param>
    /// <param name="closingSd">Its standard deviation, radians.</param>
    public static FenceCorrection Of(DiagnosedRing ring, double closing, double closingSd = 0)
    {
        ArgumentNullException.ThrowIfNull(ring);
        double faces = 2.0 * ring.Segments * ring.Counts;
        return new(ring.Sled, ring.Setting, closing / faces, closingSd / faces, ring.RuleDistance) { IsTilt = ring.IsTilt, Counts = ring.Counts };
    }

    /// <summary>The correction when all joints but one are pressed shut and that one stands open by <paramref name="gap"/> mm (see <see cref="DiagnosedRing.ClosingError"/>).</summary>
    public static FenceCorrection Of(DiagnosedRing ring, OpenAt at, double gap)
    {
        ArgumentNullException.ThrowIfNull(ring);
        return Of(ring, ring.ClosingError(at, gap));
    }
}
