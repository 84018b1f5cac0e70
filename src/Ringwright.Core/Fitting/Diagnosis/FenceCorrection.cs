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
/// What to change so that the next ring closes: every wedge's angle by E/N, so each of its two faces by E/(2N). Two
/// fences each move by that (or one of them by twice as much: only their sum matters); a single fence makes both faces
/// and moves by it once, and so does a sander's. At distance D from the pivot that is D E/(2N) on the rule.
/// </summary>
/// <param name="Sled">What carries the fences.</param>
/// <param name="Fences">How many fences are to be moved.</param>
/// <param name="WedgeAngle">Change of the wedge angle, radians; positive for a wider wedge.</param>
/// <param name="FenceAngle">Change of each fence's angle from square, radians.</param>
/// <param name="FenceAngleSd">
/// Its standard deviation, radians: from the readings, and from the scatter of single wedges, which made part of this
/// ring's closing error and will not come again.
/// </param>
/// <param name="FenceAngleNow">What each fence is set to now, radians from square.</param>
/// <param name="RuleDistance">Distance from the pivot at which the move is read, mm.</param>
public sealed record FenceCorrection(
    SledKind Sled,
    int Fences,
    double WedgeAngle,
    double FenceAngle,
    double FenceAngleSd,
    double FenceAngleNow,
    double RuleDistance)
{
    /// <summary>A correction this many standard deviations large is worth making.</summary>
    public const double WorthwhileSds = 2;

    /// <summary>Which way each fence moves.</summary>
    public FenceMove Move => FenceAngle >= 0 ? FenceMove.AwayFromSquare : FenceMove.TowardsSquare;

    /// <summary>How far each fence moves on the rule, mm, always positive.</summary>
    public double RuleMove => RuleDistance * Math.Abs(FenceAngle);

    /// <summary>Standard deviation of that move, mm.</summary>
    public double RuleMoveSd => RuleDistance * FenceAngleSd;

    /// <summary>Whether the correction stands out from its own uncertainty.</summary>
    public bool IsWorthwhile => Math.Abs(FenceAngle) >= WorthwhileSds * FenceAngleSd;

    /// <summary>What each fence is set to afterwards, radians from square.</summary>
    public double FenceAngleAfter => FenceAngleNow + FenceAngle;

    internal static FenceCorrection Of(DiagnosedRing ring, DiagnosisPriors priors, double closing, double closingSd)
    {
        double faces = 2.0 * ring.Segments;
        double scatter = Math.Sqrt(ring.Segments) * priors.ScatterSd;
        return new(
            ring.Sled,
            ring.Sled == SledKind.TwoFences ? 2 : 1,
            closing / ring.Segments,
            closing / faces,
            Math.Sqrt((closingSd * closingSd) + (scatter * scatter)) / faces,
            ring.Setting,
            ring.RuleDistance);
    }
}
