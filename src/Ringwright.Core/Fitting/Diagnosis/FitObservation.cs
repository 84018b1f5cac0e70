using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>The height at which a joint is read.</summary>
public enum JointLevel
{
    /// <summary>Not told, or halfway up.</summary>
    Middle,

    /// <summary>On the table.</summary>
    Bottom,

    /// <summary>The upper side.</summary>
    Top,
}

/// <summary>Something seen or measured on a dry ring.</summary>
/// <param name="Sd">Standard deviation of the reading, in the unit of the reading.</param>
public abstract record FitObservation(double Sd)
{
    /// <summary>What a feeler gauge or a good eye over a rule tells apart, mm (common practice, no source).</summary>
    public const double FeelerSd = 0.05;
}

/// <summary>All other joints pressed shut by hand, rims in line; the last joint is read at its rim or centre end.</summary>
/// <param name="At">The end that was read.</param>
/// <param name="Level">The height.</param>
/// <param name="Gap">The opening, mm; 0 for closed.</param>
/// <param name="Sd">Standard deviation, mm.</param>
public sealed record GatheredGap(OpenAt At, JointLevel Level, double Gap, double Sd = FitObservation.FeelerSd) : FitObservation(Sd);

/// <summary>One of the joints of a ring under a rubber band.</summary>
/// <param name="Joint">The joint, counted from 0; joint i lies between wedge i and the next.</param>
/// <param name="At">The end that was read.</param>
/// <param name="Level">The height.</param>
/// <param name="Gap">The opening, mm; 0 for closed.</param>
/// <param name="Sd">Standard deviation, mm.</param>
public sealed record BandedGap(int Joint, OpenAt At, JointLevel Level, double Gap, double Sd = FitObservation.FeelerSd) : FitObservation(Sd);

/// <summary>
/// Half the wedges pressed shut, their two end faces laid evenly against a straightedge: open at the outside when the
/// half is short of half a turn, at the centre when it is more.
/// </summary>
/// <param name="At">Where light shows: at the rim ends or in the middle.</param>
/// <param name="Gap">The opening at either end (rim), or at either inner corner (centre), mm.</param>
/// <param name="Sd">Standard deviation, mm.</param>
public sealed record HalfRingGap(OpenAt At, double Gap, double Sd = FitObservation.FeelerSd) : FitObservation(Sd);

/// <summary>The angle of one wedge, measured with a protractor or worked out from caliper readings.</summary>
/// <param name="Angle">The wedge angle, radians.</param>
/// <param name="Sd">Standard deviation, radians.</param>
public sealed record WedgeAngleReading(double Angle, double Sd) : FitObservation(Sd);
