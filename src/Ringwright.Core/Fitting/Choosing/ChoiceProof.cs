namespace Ringwright.Core.Fitting;

/// <summary>What is proved about one figure of a choice.</summary>
/// <param name="Proved">
/// Whether no choice (as good in the figures before this one) is better by a whole comparison step; otherwise only the bound is known.
/// </param>
/// <param name="Found">The figure of the choice, rad or mm.</param>
/// <param name="Bound">
/// In the same unit. No choice (as good in the figures before this one) is below this. The rounding of angles to nanoradians and of figures to
/// comparison steps is taken off, so a proved figure may lie above its bound by up to about one step.
/// </param>
public sealed record ProvedFigure(bool Proved, double Found, double Bound)
{
    /// <summary>What may at most be left to gain, in the unit of the figure: rad or mm.</summary>
    public double Gap => Math.Max(0, Found - Bound);
}

/// <summary>What is proved about a choice, in the order in which its figures count.</summary>
/// <param name="GapAngle">Worst opening of a joint, rad.</param>
/// <param name="Gap">The same at the radius, mm.</param>
/// <param name="Wander">Straying of the joint lines, rad.</param>
/// <param name="WanderLength">The same at the radius, mm.</param>
/// <param name="TotalStep">Sum of the size steps between neighbours, mm; the comparison step is 0.001 mm a joint.</param>
public sealed record ChoiceProof(ProvedFigure GapAngle, ProvedFigure Gap, ProvedFigure Wander, ProvedFigure WanderLength, ProvedFigure TotalStep)
{
    /// <summary>Whether the worst gap and the wander are both proved; the steps only break ties.</summary>
    public bool FitProved => Gap.Proved && Wander.Proved;
}
