using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Choosing;

/// <summary>From whole numbers back to millimetres and radians, and to what is proved in them.</summary>
internal static class ChoiceReport
{
    public static WedgeChoice Of(ChoosingProblem problem, SettledRing settled)
    {
        var input = problem.Input;
        var ring = Readings(problem, settled.Ring);
        var before = RingFigures.Of(Readings(problem, settled.Taken), input);
        var after = RingFigures.Of(ring, input);
        double gapSd = GapSd(input, ring);
        var chosen = ring.Select(w => w.Number).ToHashSet();
        return new(
            [.. ring.Select((w, k) => new PlacedWedge(k + 1, w, w.Angle(input.Depth)))],
            [.. input.Wedges.Select(w => w.Number).Where(n => !chosen.Contains(n)).Order()],
            before,
            after,
            gapSd,
            Proof(problem, settled, after),
            ChoiceWords.Sentence(input, before, after, gapSd));
    }

    private static List<CaliperReading> Readings(ChoosingProblem problem, int[] ring) => [.. ring.Select(i => problem.Wedges[i].Reading)];

    private static double GapSd(WedgeChoiceInput input, List<CaliperReading> ring)
    {
        var variances = ring.Select(w => w.AngleSd(input.Depth, input.CaliperSd)).Select(sd => sd * sd).ToList();
        double variance = input.Closing == Closing.Halves
            ? Math.Max(variances.Take(ring.Count / 2).Sum(), variances.Skip(ring.Count / 2).Sum())
            : variances.Sum();
        return input.Radius * Math.Sqrt(variance);
    }

    private static ChoiceProof Proof(ChoosingProblem problem, SettledRing settled, RingFigures after)
    {
        var found = RingLevels.Of(problem, settled.Ring);
        double radius = problem.Input.Radius;
        // Each angle is rounded by at most half a unit, and so is π, twice in a whole ring.
        double gapRounding = problem.PartSize / 2.0 + 1;
        // Rounding moves one joint line against another by at most N/4 half units each way.
        double rangeRounding = problem.Places / 4.0;
        var gap = new ProvedFigure(settled.Bound.Gap >= found.Gap, after.WorstGap / radius, Radians(settled.Bound.Gap, problem.Grain, gapRounding));
        var wander = new ProvedFigure(settled.Bound.Wander >= found.Wander, after.Wander, Radians(settled.Bound.Wander, problem.Grain, rangeRounding) / 2);
        double stepBound = Math.Max(0, settled.Bound.Steps - problem.Places) / 1000.0;
        var steps = new ProvedFigure(settled.Bound.Steps >= found.Steps, after.TotalStep, stepBound);
        return new(gap, AtRadius(gap, radius), wander, AtRadius(wander, radius), steps);
    }

    // A level of 1 rules nothing out; a higher one rules out all up to the grain below it.
    private static double Radians(long level, long grain, double rounding) =>
        level <= 1 ? 0 : Math.Max(0, (level - 1) * grain - rounding) / ChoosingProblem.UnitsPerRadian;

    private static ProvedFigure AtRadius(ProvedFigure angle, double radius) => new(angle.Proved, angle.Found * radius, angle.Bound * radius);
}
