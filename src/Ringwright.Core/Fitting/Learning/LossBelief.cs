using MathNet.Numerics.Distributions;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Belief about the chance that a wedge is lost: Beta(prior loss x worth + lost, the rest of both), as if the prior
/// had been that many wedges seen.
/// </summary>
/// <param name="PriorLoss">Believed loss before anything was sawn, strictly between 0 and 1.</param>
/// <param name="PriorWorth">Wedges this belief is worth, above 0.</param>
/// <param name="Sawn">Wedges sawn since.</param>
/// <param name="Lost">Wedges of these that were lost.</param>
public sealed record LossBelief(double PriorLoss, double PriorWorth, int Sawn = 0, int Lost = 0)
{
    /// <summary>First parameter of the Beta distribution: lost wedges, seen and believed.</summary>
    public double LostWorth => PriorLoss * PriorWorth + Lost;

    /// <summary>Second parameter of the Beta distribution: good wedges, seen and believed.</summary>
    public double GoodWorth => (1 - PriorLoss) * PriorWorth + Sawn - Lost;

    /// <summary>Chance that the next wedge is lost (posterior mean).</summary>
    public double NextLost => LostWorth / (LostWorth + GoodWorth);

    /// <summary>How much the prior still weighs, 0 to 1.</summary>
    public double PriorWeight => PriorWorth / (PriorWorth + Sawn);

    /// <summary>Interval for the loss.</summary>
    /// <exception cref="BadInputException">The level is not strictly between 0 and 1.</exception>
    public CredibleInterval Interval(double level) =>
        CredibleInterval.Between(p => Beta.InvCDF(LostWorth, GoodWorth, p), level);

    internal LossBelief With(RunRecord record) => this with { Sawn = Sawn + record.PiecesSawn, Lost = Lost + record.PiecesLost };

    internal void Validate()
    {
        ChanceInput.InnerChance("believed loss", PriorLoss);
        ChanceInput.Positive("worth of the believed loss", PriorWorth);
    }
}
