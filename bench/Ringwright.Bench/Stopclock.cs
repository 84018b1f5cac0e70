using System.Diagnostics;

namespace Ringwright.Bench;

/// <summary>Wall time and medians.</summary>
internal static class Stopclock
{
    /// <summary>Wall time of one run, ms.</summary>
    internal static double Once(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    /// <summary>Mean wall time of one of several runs, ms.</summary>
    internal static double Mean(int times, Action work)
    {
        return Once(All) / times;

        void All()
        {
            for (int i = 0; i < times; i++) work();
        }
    }

    internal static double MedianOf(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        int middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
