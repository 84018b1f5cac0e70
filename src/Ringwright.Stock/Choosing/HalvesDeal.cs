namespace Ringwright.Stock.Choosing;

/// <summary>
/// Deals the wedges of a whole ring to two halves that each come near π: a random deal, then swaps of one wedge each way while they help.
/// With many wedges some swap nearly always lands; an integer program finds it hard, for its relaxation says nothing.
/// </summary>
internal static class HalvesDeal
{
    private const int Seed = 20_260;
    private const int Tries = 200;

    /// <summary>A ring of the counted wedges with neither half off by more than the limit, nanoradians; null when none was met.</summary>
    public static int[]? Find(ChoosingProblem problem, int[] ring, long gapLimit)
    {
        var random = new Random(Seed);
        long whole = ring.Sum(w => problem.Wedges[w].Excess);
        int[] dealt = [.. ring];
        for (int attempt = 0; attempt < Tries; attempt++)
        {
            Shuffle(problem, dealt, random);
            long first = dealt.Take(problem.PartSize).Sum(w => problem.Wedges[w].Excess);
            long aim = whole / 2;
            while (BestSwap(problem, dealt, first - aim) is var (one, other, change))
            {
                (dealt[one], dealt[other]) = (dealt[other], dealt[one]);
                first += change;
            }

            if (Math.Abs(first + problem.NominalExcess) <= gapLimit && Math.Abs(whole - first + problem.NominalExcess) <= gapLimit) return dealt;
        }

        return null;
    }

    private static void Shuffle(ChoosingProblem problem, int[] ring, Random random)
    {
        for (int k = ring.Length - 1; k > 0; k--)
        {
            int other = random.Next(k + 1);
            if (problem.PlaceWoods[k] == problem.PlaceWoods[other]) (ring[k], ring[other]) = (ring[other], ring[k]);
        }
    }

    // The swap between the halves that brings the first nearest to its aim, if any brings it nearer.
    private static (int One, int Other, long Change)? BestSwap(ChoosingProblem problem, int[] ring, long off)
    {
        (int, int, long)? best = null;
        long least = Math.Abs(off);
        for (int one = 0; one < problem.PartSize; one++)
            for (int other = problem.PartSize; other < ring.Length; other++)
            {
                long change = problem.Wedges[ring[other]].Excess - problem.Wedges[ring[one]].Excess;
                if (problem.PlaceWoods[one] != problem.PlaceWoods[other] || Math.Abs(off + change) >= least) continue;
                least = Math.Abs(off + change);
                best = (one, other, change);
            }

        return best;
    }
}
