using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>The part of a turn that is looked at.</summary>
/// <param name="From">Where it begins, radians.</param>
/// <param name="To">Where it ends, counter-clockwise, at most a full turn on.</param>
internal readonly record struct AroundView(double From, double To)
{
    private const double Turn = 2 * Math.PI;

    /// <summary>Each whole turn by which a segment must be moved to lie in view, radians: none, one, or two where the view begins inside it.</summary>
    public IEnumerable<double> Moves(TurnedSegment segment, WallLevel low, WallLevel high)
    {
        double from = Math.Min(At(segment.From, low), At(segment.From, high)), to = Math.Max(At(segment.To, low), At(segment.To, high));
        for (double k = Math.Floor(((From - to) / Turn) + 1); from + (k * Turn) < To; k++)
            yield return k * Turn;
    }

    /// <summary>The angle cut to what is in view.</summary>
    public double Clamp(double angle) => Math.Clamp(angle, From, To);

    /// <summary>Whether the angle is inside the view, not at its ends.</summary>
    public bool Shows(double angle) => angle > From + 1e-9 && angle < To - 1e-9;

    /// <summary>Where a joint stands on the outer wall, radians.</summary>
    public static double At(JointPlane joint, WallLevel level) => joint.AngleAt(level.Outer, level.Z);
}
