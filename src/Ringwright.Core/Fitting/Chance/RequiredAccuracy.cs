namespace Ringwright.Core.Fitting;

/// <summary>The inverse question: how exact must each cut be for a ring to close with a wanted chance?</summary>
public static class RequiredAccuracy
{
    /// <summary>
    /// The largest standard deviation of a well-seated cut, radians, with which P(|E| &lt;= limit) reaches
    /// <paramref name="chance"/>, everything else in <paramref name="making"/> (bias, setting, bad seating) as given.
    /// Null when even perfectly repeatable cuts do not reach it: then bias or setting is what must improve.
    /// </summary>
    /// <remarks>
    /// Without bias, setting error and bad seating it is limit / (z sqrt(4 N - 2 runs)) with z the two-sided normal
    /// quantile; the general case is found by bisection.
    /// </remarks>
    /// <param name="making">How the ring is made; its own <see cref="CutError.Sd"/> is not used.</param>
    /// <param name="limit">Largest closing error that still closes, radians.</param>
    /// <param name="chance">Wanted chance, strictly between 0 and 1.</param>
    /// <exception cref="BadInputException">An input out of range.</exception>
    public static double? CutSd(RingMaking making, double limit, double chance)
    {
        ArgumentNullException.ThrowIfNull(making);
        ChanceInput.Positive("closing error that still closes", limit);
        ChanceInput.InnerChance("wanted chance to close", chance);
        double With(double sd) => ClosureStatistics.Of(making with { Cut = making.Cut with { Sd = sd } }).ChanceToClose(limit);

        // A biased ring may be closed by luck of large errors; only accuracy that helps counts, hence the start at zero.
        return With(0) < chance ? null : LargestReaching(With, chance, limit);
    }

    private static double LargestReaching(Func<double, double> chanceWith, double chance, double start)
    {
        double high = start;
        while (chanceWith(high) >= chance)
            high *= 2;
        double low = 0;
        for (int i = 0; i < 200 && high - low > 1e-14 * high; i++)
        {
            double middle = (low + high) / 2;
            if (chanceWith(middle) >= chance)
                low = middle;
            else
                high = middle;
        }

        return low;
    }
}
