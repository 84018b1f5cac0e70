namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>The part of a turn that is looked at.</summary>
/// <param name="From">Where it begins, radians.</param>
/// <param name="To">Where it ends, counter-clockwise, at most a full turn on.</param>
internal readonly record struct AroundView(double From, double To)
{
    private const double Turn = 2 * Math.PI;
    private const double Tiny = 1e-9; // radians

    /// <summary>Each whole turn by which a segment must be moved to lie in view, radians: none, one, or two where the view begins inside it.</summary>
    public IEnumerable<double> Moves(SeenSegment segment)
    {
        double from = segment.Levels.Min(level => level.From), to = segment.Levels.Max(level => level.To);
        // What only touches the view, or all but, is a rounding and not in it.
        for (double k = Math.Floor(((From + Tiny - to) / Turn) + 1); from + (k * Turn) < To - Tiny; k++)
            yield return k * Turn;
    }

    /// <summary>The angle cut to what is in view.</summary>
    public double Clamp(double angle) => Math.Clamp(angle, From, To);

    /// <summary>Whether the angle is inside the view, not at its ends.</summary>
    public bool Shows(double angle) => angle > From + Tiny && angle < To - Tiny;
}
