namespace Ringwright.Core.Fitting;

/// <summary>
/// How many wedges to saw when the loss is only known from a record: the number lost is beta-binomial, which asks for
/// more spares than a binomial with the mean loss would.
/// </summary>
public static class LearnedSpares
{
    private const int MostSawn = 100_000;

    /// <summary>
    /// P(at least <paramref name="needed"/> good of <paramref name="sawn"/>): sum over k lost of
    /// C(n, k) B(a + k, b + n - k) / B(a, b).
    /// </summary>
    /// <exception cref="BadInputException">A count or belief out of range.</exception>
    public static double ChanceOfEnough(LossBelief loss, int needed, int sawn)
    {
        ArgumentNullException.ThrowIfNull(loss);
        Check(loss, needed);
        ChanceInput.NotNegative("wedges sawn", sawn);
        return sawn < needed ? 0 : Enough(loss.LostWorth, loss.GoodWorth, needed, sawn);
    }

    /// <summary>Fewest wedges to saw so that <paramref name="needed"/> are good with at least <paramref name="confidence"/>.</summary>
    /// <exception cref="BadInputException">An input out of range, or so much loss that no workable number is enough.</exception>
    public static int ToSaw(LossBelief loss, int needed, double confidence)
    {
        ArgumentNullException.ThrowIfNull(loss);
        Check(loss, needed);
        ChanceInput.InnerChance("confidence", confidence);
        return Least(needed, sawn => Enough(loss.LostWorth, loss.GoodWorth, needed, sawn) >= confidence)
            ?? throw new BadInputException("confidence", $"not even {MostSawn} wedges give {confidence:R} at a loss near {loss.NextLost:P0}", "ask for less, or record more runs");
    }

    /// <summary>The chance only grows with the number sawn: double until enough, then halve.</summary>
    private static int? Least(int needed, Predicate<int> enough)
    {
        int step = 1;
        while (!enough(needed + step - 1))
        {
            step *= 2;
            if (step > MostSawn)
                return null;
        }

        int low = needed + step / 2 - 1;
        int high = needed + step - 1;
        while (high - low > 1)
        {
            int middle = (low + high) / 2;
            if (enough(middle))
                high = middle;
            else
                low = middle;
        }

        return high;
    }

    private static double Enough(double a, double b, int needed, int sawn)
    {
        // Term by term from none lost, in logarithms since the first may be below the smallest double. B(a, b + n) / B(a, b)
        // as a product: the difference of two logarithms of B would lose all digits for a well-known loss.
        double log = 0;
        for (int i = 0; i < sawn; i++)
            log -= double.LogP1(a / (b + i));
        double chance = 0;
        for (int lost = 0; lost <= sawn - needed; lost++)
        {
            chance += Math.Exp(log);
            log += Math.Log((sawn - lost) * (a + lost) / ((lost + 1) * (b + sawn - lost - 1)));
        }

        return Math.Min(1, chance);
    }

    private static void Check(LossBelief loss, int needed)
    {
        loss.Validate();
        if (needed < 1)
            throw new BadInputException("wedges needed", $"there are {needed}", "give at least one");
    }
}
