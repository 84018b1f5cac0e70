namespace Ringwright.Stock.Choosing;

/// <summary>
/// Simulated annealing over swaps of two wedges of one wood, in the ring or with a spare, that keeps gap and wander within what was
/// reached and lowers the sum of size steps. Fixed seed, fixed number of moves.
/// </summary>
internal sealed class StepSearch
{
    private const int Seed = 20_260;
    // From a step worth losing at the start to less than a micrometre at the end.
    private const double Cooled = 0.5;

    private readonly ChoosingProblem _problem;
    private readonly RingLevels _limit;
    private readonly int[] _seats;

    private StepSearch(ChoosingProblem problem, int[] ring)
    {
        _problem = problem;
        _limit = RingLevels.Of(problem, ring);
        // The ring first, the spares behind it: a swap with a spare is a swap like any other.
        _seats = [.. ring, .. Enumerable.Range(0, problem.Wedges.Length).Except(ring)];
    }

    /// <summary>A ring no worse in any figure.</summary>
    public static int[] Improve(ChoosingProblem problem, int[] ring, int moves, CancellationToken cancel) =>
        new StepSearch(problem, ring).Run(moves, cancel);

    private int[] Run(int moves, CancellationToken cancel)
    {
        var random = new Random(Seed);
        long steps = _limit.Steps, least = steps;
        int[] best = Ring();
        double hot = Math.Max(Cooled, (double)steps / _problem.Places), heat = hot;
        double cooling = Math.Pow(Cooled / hot, 1.0 / moves);
        for (int move = 0; move < moves; move++, heat *= cooling)
        {
            if (move % 1024 == 0) cancel.ThrowIfCancellationRequested();
            int one = random.Next(_problem.Places), other = random.Next(_seats.Length);
            double luck = random.NextDouble();
            if (one == other || Wood(one) != Wood(other)) continue;
            long change = Swap(one, other);
            if ((change <= 0 || luck < Math.Exp(-change / heat)) && Allowed()) steps += change;
            else Swap(one, other);
            if (steps >= least) continue;
            least = steps;
            best = Ring();
        }

        return best;
    }

    private int[] Ring() => _seats[.._problem.Places];

    private int Wood(int seat) => _problem.Wedges[_seats[seat]].Wood;

    private bool Allowed()
    {
        int[] ring = Ring();
        return RingLevels.WanderOf(_problem, ring) <= _limit.Wander && RingLevels.GapOf(_problem, ring) <= _limit.Gap;
    }

    // Returns by how much the sum of steps grows.
    private long Swap(int one, int other)
    {
        long before = StepsAround(one, other);
        (_seats[one], _seats[other]) = (_seats[other], _seats[one]);
        return StepsAround(one, other) - before;
    }

    private long StepsAround(int one, int other)
    {
        int n = _problem.Places;
        int left = (one + n - 1) % n;
        long steps = StepAfter(one) + StepAfter(left);
        if (other >= n) return steps;
        int otherLeft = (other + n - 1) % n;
        if (other != left) steps += StepAfter(other);
        return otherLeft == one ? steps : steps + StepAfter(otherLeft);
    }

    private long StepAfter(int place) => _problem.Wedges[_seats[place]].StepTo(_problem.Wedges[_seats[(place + 1) % _problem.Places]]);
}
