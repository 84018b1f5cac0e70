using MathNet.Numerics.Distributions;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Belief about the minutes one cut or one sanded face takes. The time of each is gamma with known evenness c and
/// unknown pace; the pace (pieces per minute) is then gamma with shape c x pieces + 1 and rate c x minutes,
/// believed and timed ones added, so that the mean minutes per piece are simply all minutes over all pieces. Counting pieces against minutes keeps the result free of the unit of time.
/// </summary>
/// <param name="PriorMinutes">Believed minutes per piece before anything was timed, above 0.</param>
/// <param name="PriorWorth">Pieces this belief is worth, above 0.</param>
/// <param name="Timed">Pieces timed since.</param>
/// <param name="Minutes">Minutes they took together.</param>
public sealed record PaceBelief(double PriorMinutes, double PriorWorth, int Timed = 0, double Minutes = 0)
{
    /// <summary>
    /// Evenness c of the work: times of single pieces scatter by 1/sqrt(c) = half their mean (common practice, no
    /// source). It sets how wide the intervals are, not the mean in the long run.
    /// </summary>
    public const double Evenness = 4;

    /// <summary>Minutes per piece (posterior mean of 1 / pace).</summary>
    public double MinutesPerPiece => TotalMinutes / (PriorWorth + Timed);

    /// <summary>How much the prior still weighs, 0 to 1.</summary>
    public double PriorWeight => PriorWorth / (PriorWorth + Timed);

    private double Shape => Evenness * (PriorWorth + Timed) + 1;

    private double Rate => Evenness * TotalMinutes;

    private double TotalMinutes => PriorWorth * PriorMinutes + Minutes;

    /// <summary>Interval for the mean minutes per piece.</summary>
    /// <exception cref="BadInputException">The level is not strictly between 0 and 1.</exception>
    public CredibleInterval Interval(double level) =>
        CredibleInterval.Between(p => 1 / Gamma.InvCDF(Shape, Rate, 1 - p), level);

    /// <summary>Interval for the minutes that the next pieces will take together (compound gamma: believed and timed minutes x beta prime).</summary>
    /// <exception cref="BadInputException">No pieces, or the level is not strictly between 0 and 1.</exception>
    public CredibleInterval NextMinutes(int pieces, double level)
    {
        if (pieces < 1)
            throw new BadInputException("pieces to come", $"there are {pieces}", "give at least one");
        return CredibleInterval.Between(p => TotalMinutes * Odds(Beta.InvCDF(Evenness * pieces, Shape, p)), level);
    }

    internal PaceBelief With(int pieces, double minutes) => this with { Timed = Timed + pieces, Minutes = Minutes + minutes };

    internal void Validate(string work)
    {
        ChanceInput.Positive($"believed minutes per {work}", PriorMinutes);
        ChanceInput.Positive($"worth of the believed minutes per {work}", PriorWorth);
    }

    private static double Odds(double p) => p / (1 - p);
}
