using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The Gaussian posterior of the causes for one choice of signs: precision = prior + sum of a a' / variance. Besides the
/// three common causes every joint end that was read has a deviation of its own (wedges are not all alike).
/// </summary>
internal sealed class SignedPosterior
{
    /// <summary>Closing error, taper, shape.</summary>
    public const int Common = 3;

    private readonly Vector<double> _mean;
    private readonly Matrix<double> _covariance;
    private readonly Dictionary<(int Joint, OpenAt At), int> _places = [];
    private readonly double _placeVariance;

    /// <summary>Weighs the observations.</summary>
    public SignedPosterior(IReadOnlyList<FitObservation> observations, DiagnosedRing ring, DiagnosisPriors priors, CauseSigns signs)
    {
        Signs = signs;
        Readings = [.. observations.Select(o => ReadingModel.Of(o, ring, priors, signs))];
        foreach (LinearReading reading in Readings)
            if (reading.Place is { } place) _places.TryAdd(place, Common + _places.Count);
        _placeVariance = Math.Pow(ring.JointLength * priors.ScatterSd, 2) + (priors.UnevenSd * priors.UnevenSd);

        int size = Common + _places.Count;
        Vector<double> prior = Vector<double>.Build.Dense(size, 1 / _placeVariance);
        prior[0] = Math.Pow(ring.Segments * priors.WedgeAngleSd, -2);
        prior[1] = Math.Pow(priors.TaperSd, -2);
        prior[2] = Math.Pow(priors.ShapeSd, -2);
        Matrix<double> precision = Matrix<double>.Build.DenseOfDiagonalVector(prior);
        Vector<double> right = Vector<double>.Build.Dense(size);
        foreach (LinearReading reading in Readings)
        {
            Vector<double> a = Row(reading);
            precision += a.OuterProduct(a) / reading.Variance;
            right += a * (reading.Value / reading.Variance);
        }

        Cholesky<double> factors = precision.Cholesky();
        _mean = factors.Solve(right);
        _covariance = factors.Solve(Matrix<double>.Build.DenseIdentity(size));
        LogEvidence = (right.DotProduct(_mean) - factors.DeterminantLn) / 2;
        Surprise = Readings.Sum(r => r.Value * r.Value / r.Variance) - right.DotProduct(_mean);
    }

    /// <summary>The signs that were assumed.</summary>
    public CauseSigns Signs { get; }

    /// <summary>The observations as linear forms.</summary>
    public IReadOnlyList<LinearReading> Readings { get; }

    /// <summary>Logarithm of the evidence up to what all choices of signs share.</summary>
    public double LogEvidence { get; }

    /// <summary>y' (R + A P A')⁻¹ y: how far the readings are from what noise and priors together foresee; chi-square with as many degrees of freedom as readings.</summary>
    public double Surprise { get; }

    /// <summary>Mean of one of the three common causes.</summary>
    public double Mean(int cause) => _mean[cause];

    /// <summary>Standard deviation of one of the three common causes.</summary>
    public double Sd(int cause) => Math.Sqrt(_covariance[cause, cause]);

    /// <summary>Own deviation of each joint end that was read: mean and standard deviation, mm.</summary>
    public IEnumerable<((int Joint, OpenAt At) Place, double Mean, double Sd)> Deviations =>
        _places.Select(p => (p.Key, _mean[p.Value], Math.Sqrt(_covariance[p.Value, p.Value])));

    /// <summary>What a further observation would read: mean and variance, without its own noise.</summary>
    public (double Mean, double Variance) Foresee(LinearReading reading)
    {
        Vector<double> a = Row(reading);
        double unknownPlace = reading.Place is { } place && !_places.ContainsKey(place) ? _placeVariance : 0;
        return (a.DotProduct(_mean), a.DotProduct(_covariance * a) + unknownPlace);
    }

    /// <summary>Standard deviation of the closing error once a further observation is in.</summary>
    public double ClosingSdWith(LinearReading reading)
    {
        Vector<double> a = Row(reading);
        double variance = Foresee(reading).Variance;
        double shared = (_covariance * a)[0];
        return Math.Sqrt(_covariance[0, 0] - (shared * shared / (variance + reading.Variance)));
    }

    private Vector<double> Row(LinearReading reading)
    {
        Vector<double> a = Vector<double>.Build.Dense(Common + _places.Count);
        (a[0], a[1], a[2]) = (reading.Closing, reading.Taper, reading.Shape);
        if (reading.Place is { } place && _places.TryGetValue(place, out int at)) a[at] = 1;
        return a;
    }
}
