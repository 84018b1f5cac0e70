using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The fence before and after a correction, as numbers for a picture: pivot at the origin, a square cut along y, the
/// fence along +x turned up by its angle from square. The move is drawn <see cref="Factor"/> times as large as it is.
/// </summary>
/// <param name="Now">Where the fence line meets the rule now, mm.</param>
/// <param name="After">Where it meets the rule afterwards, with the move drawn larger, mm.</param>
/// <param name="Factor">How many times larger the move is drawn than it is.</param>
/// <param name="Move">Real length of the move on the rule, mm.</param>
public sealed record FencePicture(Vector2D Now, Vector2D After, double Factor, double Move)
{
    private const double DrawnTurn = 0.15;

    /// <summary>The picture of a correction; the move is drawn as a turn of about 0.15 radians whatever its size.</summary>
    public static FencePicture Of(FenceCorrection correction)
    {
        double turn = Math.Abs(correction.FenceAngle);
        double factor = turn == 0 ? 1 : Math.Max(1, DrawnTurn / turn);
        return new(
            Vector2D.Polar(correction.RuleDistance, correction.FenceAngleNow),
            Vector2D.Polar(correction.RuleDistance, correction.FenceAngleNow + (factor * correction.FenceAngle)),
            factor,
            correction.RuleMove);
    }
}
