using System.Diagnostics;

namespace Ringwright.Bench;

/// <summary>Median wall time of several runs after warming up; long enough warm-up lets the compiler reach its last tier.</summary>
internal static class Stopclock
{
    private const int WarmUps = 3;

    /// <summary>Median time of <paramref name="runs"/> runs, ms.</summary>
    internal static double Median(Action work, int runs = 7)
    {
        for (int i = 0; i < WarmUps; i++)
            work();
        return MedianOf(Enumerable.Range(0, runs).Select(_ => Once(work)));
    }

    internal static double MedianOf(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        int middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private static double Once(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }
}
