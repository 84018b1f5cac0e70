namespace Ringwright.Core.Fitting;

/// <summary>How many wedges to saw so that enough are good: binomial, each lost by itself with the same chance.</summary>
public static class Spares
{
    /// <summary>Spare wedges for a disc by common practice (no source).</summary>
    public const int UsualSpares = 2;

    // More than this many for one ring means that the loss, not the count, has to change.
    private const int MostSawn = 100_000;

    /// <summary>
    /// Chance that at least <paramref name="needed"/> of <paramref name="sawn"/> wedges are good:
    /// P(Binomial(sawn, 1 − loss) ≥ needed), summed term by term.
    /// </summary>
    /// <param name="needed">Good wedges needed, at least 0.</param>
    /// <param name="sawn">Wedges sawn, at least 0.</param>
    /// <param name="loss">Chance that a wedge is lost, 0 to less than 1.</param>
    public static double ChanceOfEnough(int needed, int sawn, double loss)
    {
        Check(needed, loss);
        if (sawn < needed) return 0;
        if (loss == 0) return 1;
        // From the likeliest case, all good, downwards: every term is a ratio of the one before, none underflows early.
        double logTerm = sawn * Math.Log(1 - loss);
        double odds = Math.Log(loss / (1 - loss));
        double chance = 0;
        for (int lost = 0; lost <= sawn - needed; lost++)
        {
            chance += Math.Exp(logTerm);
            logTerm += odds + Math.Log((double)(sawn - lost) / (lost + 1));
        }

        return Math.Min(1, chance);
    }

    /// <summary>Fewest wedges to saw so that <paramref name="needed"/> are good with at least <paramref name="confidence"/>.</summary>
    /// <exception cref="BadInputException">Confidence not within 0 to less than 1, or a loss that never gives enough.</exception>
    public static int ToSaw(int needed, double loss, double confidence)
    {
        Check(needed, loss);
        if (!(confidence >= 0 && confidence < 1))
            throw new BadInputException("confidence", $"{confidence} cannot be", "0 to less than 1 can, such as 0.95");
        int sawn = needed;
        while (ChanceOfEnough(needed, sawn, loss) < confidence)
            if (++sawn > MostSawn) throw new BadInputException("loss", $"at a loss of {loss} no number of wedges is enough", "a smaller loss is needed");
        return sawn;
    }

    private static void Check(int needed, double loss)
    {
        if (needed < 0) throw new BadInputException("needed", $"{needed} wedges cannot be", "0 or more can");
        if (!(loss >= 0 && loss < 1)) throw new BadInputException("loss", $"{loss} cannot be", "0 to less than 1 can, such as 0.04");
    }
}
