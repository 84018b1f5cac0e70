using MathNet.Numerics;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The posterior over all choices of signs: each Gaussian is weighed by its evidence and by the chance that it keeps to
/// its own signs, and cut off where it does not (each cause by itself, an approximation that is exact when only one
/// choice of signs matters or the causes are not correlated).
/// </summary>
internal sealed class CausePosterior
{
    private readonly SignedPosterior[] _parts;
    private readonly double[] _weights;
    private readonly DiagnosedRing _ring;
    private readonly DiagnosisPriors _priors;

    private CausePosterior(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors)
    {
        (_ring, _priors) = (ring, priors);
        _parts = [.. CauseSigns.All.Select(s => new SignedPosterior(observations, ring, priors, s))];
        double[] logs = [.. _parts.Select(p => p.LogEvidence + Enumerable.Range(0, SignedPosterior.Common).Sum(c => Math.Log(Math.Max(1e-300, Kept(p, c).Chance))))];
        double most = logs.Max();
        double[] raw = [.. logs.Select(l => Math.Exp(l - most))];
        _weights = [.. raw.Select(w => w / raw.Sum())];
        Best = _parts[Array.IndexOf(_weights, _weights.Max())];
    }

    /// <summary>Weighs the observations, and what they leave unsaid.</summary>
    /// <param name="observations">What is weighed.</param>
    /// <param name="all">All that was told, of which some may be left out of the weighing.</param>
    /// <param name="ring">The ring.</param>
    /// <param name="priors">What is believed beforehand.</param>
    public static CausePosterior Of(IReadOnlyList<FitObservation> observations, IReadOnlyList<FitObservation> all, DiagnosedRing ring, DiagnosisPriors priors) =>
        new([.. observations, .. UnsaidReadings.Of(observations, all, ring)], ring, priors);

    /// <summary>The likeliest choice of signs.</summary>
    public SignedPosterior Best { get; }

    /// <summary>Mean and standard deviation of a common cause.</summary>
    public (double Mean, double Sd) Of(int cause)
    {
        (double Mean, double Variance)[] parts = [.. _parts.Select(p => (Kept(p, cause).Mean, Kept(p, cause).Variance))];
        return Mix(parts);
    }

    /// <summary>What an observation would read, with its own noise: mean and standard deviation.</summary>
    public (double Mean, double Sd) Foresee(FitObservation observation)
    {
        (double Mean, double Variance)[] parts =
        [
            .. _parts.Select(p =>
            {
                LinearReading reading = ReadingModel.Of(observation, _ring, _priors, p.Signs);
                (double mean, double variance) = p.Foresee(reading);
                return (mean, variance + reading.Variance);
            }),
        ];
        return Mix(parts);
    }

    /// <summary>Chance that a common cause is larger than <paramref name="limit"/> either way.</summary>
    public double ChanceBeyond(int cause, double limit)
    {
        double sum = 0;
        for (int i = 0; i < _parts.Length; i++)
        {
            double side = _parts[i].Signs.Of(cause) * _parts[i].Mean(cause);
            double sd = _parts[i].Sd(cause);
            sum += _weights[i] * Math.Min(1, Above((limit - side) / sd) / Math.Max(1e-300, Above(-side / sd)));
        }

        return Math.Min(1, sum);
    }

    private (double Mean, double Sd) Mix((double Mean, double Variance)[] parts)
    {
        double mean = 0;
        for (int i = 0; i < parts.Length; i++) mean += _weights[i] * parts[i].Mean;
        double variance = 0;
        for (int i = 0; i < parts.Length; i++) variance += _weights[i] * (parts[i].Variance + Math.Pow(parts[i].Mean - mean, 2));
        return (mean, Math.Sqrt(variance));
    }

    /// <summary>A normal cut off at zero on the wrong side: chance of the right side, mean and variance there (the truncated normal distribution).</summary>
    private static (double Chance, double Mean, double Variance) Kept(SignedPosterior part, int cause)
    {
        double sign = part.Signs.Of(cause);
        double mean = sign * part.Mean(cause);
        double sd = part.Sd(cause);
        double from = -mean / sd;
        double chance = Above(from);
        if (from > 25) return (0, sign * sd / from, sd * sd / (from * from)); // so far out it is an exponential tail
        double hazard = Math.Exp(-from * from / 2) / Math.Sqrt(2 * Math.PI) / chance;
        return (chance, sign * (mean + (sd * hazard)), sd * sd * (1 + (from * hazard) - (hazard * hazard)));
    }

    /// <summary>Chance of a standard normal above <paramref name="z"/>.</summary>
    public static double Above(double z) => SpecialFunctions.Erfc(z / Constants.Sqrt2) / 2;
}
