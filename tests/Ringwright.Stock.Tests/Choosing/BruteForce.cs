using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Tests.Choosing;

/// <summary>
/// What is compared, worked out from the definitions alone and by trying every ring: worst gap and range of the joint lines in whole
/// steps of nanoradians, sum of size steps in micrometres.
/// </summary>
internal static class BruteForce
{
    public static (long Gap, long Wander, long Steps) Best(WedgeChoiceInput input)
    {
        var best = (Gap: long.MaxValue, Wander: long.MaxValue, Steps: long.MaxValue);
        foreach (var ring in Rings(input, []))
        {
            var score = Score(input, ring);
            if (score.CompareTo(best) < 0) best = score;
        }

        return best;
    }

    public static (long Gap, long Wander, long Steps) Score(WedgeChoiceInput input, IReadOnlyList<CaliperReading> ring)
    {
        long grain = Math.Max(1, (long)(input.GapStep / input.Radius * 1e9));
        long[] angles = [.. ring.Select(w => (long)Math.Round(2e9 * Math.Atan((w.Rim - w.Tip) / (2 * input.Depth))))];
        long pi = (long)Math.Round(Math.PI * 1e9);
        int half = ring.Count / 2;
        long gap = input.Closing == Closing.Whole
            ? Math.Abs(2 * pi - angles.Sum())
            : Math.Max(Math.Abs(pi - angles[..half].Sum()), Math.Abs(pi - angles[half..].Sum()));
        return (Steps(gap, grain), Steps(Range(angles), grain * ring.Count), Sizes(ring));
    }

    private static long Steps(long value, long grain) => Math.Max(1, (long)decimal.Ceiling((decimal)value / grain));

    // Every run of neighbours: how far its angles are off its even share of the whole, times N.
    private static long Range(long[] angles)
    {
        long sum = angles.Sum(), most = 0;
        for (int from = 0; from < angles.Length; from++)
            for (int count = 1; count < angles.Length; count++)
            {
                long run = Enumerable.Range(from, count).Sum(k => angles[k % angles.Length]);
                most = Math.Max(most, Math.Abs(angles.Length * run - count * sum));
            }

        return most;
    }

    private static long Sizes(IReadOnlyList<CaliperReading> ring)
    {
        long sum = 0;
        for (int k = 0; k < ring.Count; k++)
        {
            var (one, next) = (ring[k], ring[(k + 1) % ring.Count]);
            long rim = Math.Abs(Micrometres(one.Rim) - Micrometres(next.Rim)), tip = Math.Abs(Micrometres(one.Tip) - Micrometres(next.Tip));
            sum += Math.Max(rim, tip);
        }

        return sum;
    }

    private static long Micrometres(double mm) => (long)Math.Round(mm * 1000);

    private static IEnumerable<List<CaliperReading>> Rings(WedgeChoiceInput input, List<CaliperReading> begun)
    {
        if (begun.Count == input.Places)
        {
            yield return begun;
            yield break;
        }

        foreach (var wedge in input.Wedges.Except(begun).Where(w => input.Pattern.Count == 0 || input.Pattern[begun.Count % input.Pattern.Count] == w.Wood))
            foreach (var ring in Rings(input, [.. begun, wedge]))
                yield return ring;
    }
}
