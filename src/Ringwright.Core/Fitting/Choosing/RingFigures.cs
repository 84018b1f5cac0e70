namespace Ringwright.Core.Fitting;

/// <summary>What wedges in one order around the ring come to, from their measured angles.</summary>
/// <param name="ClosingError">E = 2π − sum of the wedge angles, rad; above 0 the last joint is open at the rim, below 0 at the tip.</param>
/// <param name="HalfSums">Sums of the wedge angles of the first and the second half, rad; null when N is odd.</param>
/// <param name="WorstGap">Worst joint gap for the way of closing (<see cref="Closing"/>), mm at the radius.</param>
/// <param name="EvenGap">Gap at each joint when a band shares the closing error evenly, R |E| / N, mm.</param>
/// <param name="Wander">
/// Farthest any joint line strays from evenly spaced spokes turned to fit best, rad: half the range of D(k) = sum over the first k
/// wedges of (angle − mean angle). The mean is taken off because the closing error is not the order's doing; so neither turning the
/// ring nor its mirror image changes it.
/// </param>
/// <param name="TotalStep">Sum over the joints of the larger of rim and tip difference between the two neighbours, mm.</param>
/// <param name="WorstStep">Largest such difference, mm.</param>
public sealed record RingFigures(
    double ClosingError, (double First, double Second)? HalfSums, double WorstGap, double EvenGap, double Wander, double TotalStep, double WorstStep)
{
    /// <summary>Whether the error opens the joint at the rim; at the tip otherwise.</summary>
    public bool OpenAtRim => ClosingError > 0;

    /// <summary>Figures of the wedges in their order around the ring.</summary>
    public static RingFigures Of(IReadOnlyList<CaliperReading> ring, WedgeChoiceInput input)
    {
        var angles = ring.Select(w => w.Angle(input.Depth)).ToList();
        double error = 2 * Math.PI - angles.Sum();
        (double First, double Second)? halves = ring.Count % 2 == 0 ? (angles.Take(ring.Count / 2).Sum(), angles.Skip(ring.Count / 2).Sum()) : null;
        var steps = ring.Select((w, k) => Step(w, ring[(k + 1) % ring.Count])).ToList();
        return new(error, halves, input.Radius * WorstAngle(error, halves, input.Closing), input.Radius * Math.Abs(error) / ring.Count, WanderOf(angles), steps.Sum(), steps.Max());
    }

    /// <summary>Size mismatch of two neighbours, the larger of their differences at rim and tip, mm.</summary>
    public static double Step(CaliperReading one, CaliperReading next) => Math.Max(Math.Abs(one.Rim - next.Rim), Math.Abs(one.Tip - next.Tip));

    private static double WorstAngle(double error, (double First, double Second)? halves, Closing closing) =>
        closing == Closing.Halves && halves is var (first, second)
            ? Math.Max(Math.Abs(first - Math.PI), Math.Abs(second - Math.PI))
            : Math.Abs(error);

    private static double WanderOf(List<double> angles)
    {
        double mean = angles.Sum() / angles.Count;
        double line = 0, least = 0, most = 0;
        foreach (double angle in angles)
        {
            line += angle - mean;
            least = Math.Min(least, line);
            most = Math.Max(most, line);
        }

        return (most - least) / 2;
    }
}
