namespace Ringwright.Core.Fitting;

/// <summary>
/// Counts of |E| in equal bins from zero, from which quantiles are read: exact to one bin, and much better by linear
/// interpolation. Whatever lies beyond the last bin is kept in one open bin up to the largest value.
/// </summary>
internal sealed class ErrorHistogram(double range)
{
    private const int Bins = 4096;

    private readonly long[] _counts = new long[Bins + 1];
    private readonly double _binsPerRadian = Bins / range;

    internal void Add(ReadOnlySpan<double> closing)
    {
        foreach (double error in closing)
            _counts[(int)Math.Min(Math.Abs(error) * _binsPerRadian, Bins)]++;
    }

    /// <summary>Adds the counts of a histogram of the same range.</summary>
    internal void Add(ErrorHistogram other)
    {
        for (int i = 0; i < _counts.Length; i++)
            _counts[i] += other._counts[i];
    }

    /// <summary>The |E| below which the given part of all counts lies, radians.</summary>
    internal double Quantile(double probability, double largest)
    {
        double wanted = probability * _counts.Sum();
        double below = 0;
        int bin = 0;
        while (bin < Bins && below + _counts[bin] < wanted)
            below += _counts[bin++];
        double start = bin / _binsPerRadian;
        double end = Math.Min(bin < Bins ? (bin + 1) / _binsPerRadian : largest, largest);
        return _counts[bin] == 0 ? start : start + (end - start) * (wanted - below) / _counts[bin];
    }
}
