using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace Ringwright.Bench;

/// <summary>
/// The same job done by others on one thread: rings of independent faces, normal errors, count of rings that close.
/// All work in batches that stay in the cache, which is their best case.
/// </summary>
internal sealed class ChainPeers(int rings, int faces, double sd, double limit)
{
    private const int BatchRings = 512;

    /// <summary>numpy: the best of its ways here, its default generator filling batches in place.</summary>
    internal string NumpyScript { get; } = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"""
        import time, numpy
        random = numpy.random.Generator(numpy.random.SFC64(1))
        batch = numpy.empty(({BatchRings}, {faces}))
        def once():
            start = time.perf_counter()
            closed = 0
            for i in range({rings} // {BatchRings}):
                random.standard_normal(out=batch)
                closed += numpy.count_nonzero(numpy.abs(batch.sum(axis=1)) <= {limit / sd})
            return (time.perf_counter() - start) * 1000
        once()
        print(once())
        """);

    /// <summary>MathNet's sampling into an array, with the generator given.</summary>
    internal int MathNet(RandomSource random)
    {
        double[] batch = new double[BatchRings * faces];
        int closed = 0;
        for (int i = 0; i < rings / BatchRings; i++)
        {
            Normal.Samples(random, batch, 0, sd);
            closed += CountClosed(batch);
        }

        return closed;
    }

    /// <summary>What one would write first: System.Random and the transform of Box and Muller, one number after another.</summary>
    internal int ScalarLoop()
    {
        Random random = new(1);
        int closed = 0;
        for (int i = 0; i < rings; i++)
        {
            double sum = 0;
            for (int face = 0; face < faces; face += 2)
            {
                double radius = sd * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble()));
                (double sin, double cos) = Math.SinCos(2 * Math.PI * random.NextDouble());
                sum += radius * cos;
                sum += radius * sin;
            }

            if (Math.Abs(sum) <= limit)
                closed++;
        }

        return closed;
    }

    private int CountClosed(double[] batch)
    {
        int closed = 0;
        for (int ring = 0; ring < BatchRings; ring++)
        {
            double sum = 0;
            foreach (double error in batch.AsSpan(ring * faces, faces))
                sum += error;
            if (Math.Abs(sum) <= limit)
                closed++;
        }

        return closed;
    }
}
