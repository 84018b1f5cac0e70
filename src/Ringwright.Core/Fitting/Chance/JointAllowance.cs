namespace Ringwright.Core.Fitting;

/// <summary>How a closing error shows up at the joints.</summary>
public enum GapSharing
{
    /// <summary>All other joints are tight and the whole error opens one of them: gap = |E| R.</summary>
    OneJoint,

    /// <summary>The error is spread evenly over all N joints: gap = |E| R / N.</summary>
    AllJoints,
}

/// <summary>The widest gap a joint may show and where it is seen.</summary>
/// <param name="Gap">Widest gap that still closes, mm.</param>
/// <param name="Radius">Distance from the ring's axis at which the gap is read, mm (the rim for E above 0).</param>
/// <param name="Sharing">Whether the error is gathered in one joint or shared by all.</param>
public sealed record JointAllowance(double Gap, double Radius, GapSharing Sharing)
{
    /// <summary>Largest |E| that keeps every joint within <see cref="Gap"/>, radians: g / R, or N g / R when shared.</summary>
    /// <exception cref="BadInputException">Gap negative, radius not above zero, or no wedges.</exception>
    public double ClosingLimit(int wedges)
    {
        Validate(wedges);
        return Gap / Radius * Joints(wedges);
    }

    /// <summary>The gap that a closing error of <paramref name="closingError"/> radians leaves at the radius, mm.</summary>
    /// <exception cref="BadInputException">Radius not above zero, or no wedges.</exception>
    public double GapOf(double closingError, int wedges)
    {
        Validate(wedges);
        return Math.Abs(closingError) * Radius / Joints(wedges);
    }

    private int Joints(int wedges) => Sharing == GapSharing.OneJoint ? 1 : wedges;

    private void Validate(int wedges)
    {
        ChanceInput.NotNegative("gap of a joint", Gap);
        ChanceInput.Positive("radius at which the gap is read", Radius);
        CutRuns.OneRun(wedges).Validate();
    }
}
