using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Ringwright.Core.Fitting;

/// <summary>A finite mixture of normal distributions; weights sum to 1, a standard deviation of zero is a fixed value.</summary>
internal sealed class NormalMixture(IReadOnlyList<NormalMixture.Part> parts)
{
    internal readonly record struct Part(double Weight, double Mean, double Sd);

    /// <summary>Parts lighter than this together change no printed digit and are left out.</summary>
    private const double NegligibleWeight = 1e-18;

    /// <summary>
    /// The closing error of a ring: of the shared and of the single cuts, a binomial number each is badly seated, and
    /// given those numbers the sum of normals is normal.
    /// </summary>
    internal static NormalMixture OfClosingError(RingMaking making)
    {
        CutRuns runs = making.Runs;
        CutError cut = making.Cut;
        List<Part> parts = [];
        foreach ((int badShared, double sharedWeight) in BadCuts(cut, runs.SharedCuts))
        {
            foreach ((int badSingle, double singleWeight) in BadCuts(cut, runs.SingleCuts))
            {
                double weight = sharedWeight * singleWeight;
                if (weight >= NegligibleWeight)
                    parts.Add(Given(making, badShared, badSingle, weight));
            }
        }

        return new(parts);
    }

    private static Part Given(RingMaking making, int badShared, int badSingle, double weight)
    {
        CutError cut = making.Cut;
        double badVariance = cut.MisSeating is { } bad ? bad.Sd * bad.Sd : 0;
        double badWeight = 4.0 * badShared + badSingle;
        double variance = (making.Runs.VarianceFactor - badWeight) * cut.Sd * cut.Sd + badWeight * badVariance + making.SettingVariance;
        double mean = -2.0 * making.Runs.Wedges * cut.Bias - (2.0 * badShared + badSingle) * (cut.MisSeating?.Shift ?? 0);
        return new(weight, mean, Math.Sqrt(variance));
    }

    private static IEnumerable<(int Bad, double Weight)> BadCuts(CutError cut, int cuts)
    {
        if (cut.MisSeating is not { Probability: > 0 } bad)
            return [(0, 1.0)];
        return Enumerable.Range(0, cuts + 1)
            .Select(k => (k, Binomial.PMF(bad.Probability, cuts, k)))
            .Where(term => term.Item2 >= NegligibleWeight);
    }

    /// <summary>P(|X| &lt;= limit).</summary>
    internal double Within(double limit) => Math.Clamp(parts.Sum(part => part.Weight * Within(part, limit)), 0, 1);

    /// <summary>The q for which P(|X| &lt;= q) = probability, by bisection to the last bits (the chance only grows with q).</summary>
    internal double AbsoluteQuantile(double probability)
    {
        double high = parts.Max(part => Math.Abs(part.Mean) + part.Sd);
        while (Within(high) < probability)
            high *= 2;
        double low = 0;
        for (int i = 0; i < 200 && high - low > 1e-15 * high; i++)
        {
            double middle = (low + high) / 2;
            if (Within(middle) < probability)
                low = middle;
            else
                high = middle;
        }

        return high;
    }

    private static double Within(Part part, double limit)
    {
        if (part.Sd == 0)
            return Math.Abs(part.Mean) <= limit ? 1 : 0;
        double scale = part.Sd * Math.Sqrt(2);
        return (SpecialFunctions.Erf((limit - part.Mean) / scale) + SpecialFunctions.Erf((limit + part.Mean) / scale)) / 2;
    }
}
