using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The loss a plan reckons with: taken as it stands, the number lost is binomial; learned from a record it is itself
/// unsure, the number lost is beta-binomial and asks for more spares.
/// </summary>
/// <param name="Share">Chance that a wedge is lost, 0 to less than 1.</param>
/// <param name="Worth">Wedges the share is known from, seen and believed; null when it is taken as it stands.</param>
public readonly record struct WedgeLoss(double Share, double? Worth)
{
    /// <summary>The loss of these hands. A loss of nothing is certain, whatever it was learned from.</summary>
    public static WedgeLoss Of(Hands hands)
    {
        ArgumentNullException.ThrowIfNull(hands);
        return new(hands.Loss, hands.Loss > 0 ? hands.LossWorth : null);
    }

    /// <summary>Chance that at least <paramref name="needed"/> of <paramref name="sawn"/> wedges are good.</summary>
    /// <exception cref="BadInputException">A count or loss out of range.</exception>
    public double ChanceOfEnough(int needed, int sawn) => Worth is double worth
        ? LearnedSpares.ChanceOfEnough(new(Share, worth), needed, sawn)
        : Spares.ChanceOfEnough(needed, sawn, Share);

    /// <summary>Fewest wedges to saw so that <paramref name="needed"/> are good with at least <paramref name="confidence"/>.</summary>
    /// <exception cref="BadInputException">An input out of range, or a loss for which no workable number is enough.</exception>
    public int ToSaw(int needed, double confidence) => Worth is double worth
        ? LearnedSpares.ToSaw(new(Share, worth), needed, confidence)
        : Spares.ToSaw(needed, Share, confidence);
}
