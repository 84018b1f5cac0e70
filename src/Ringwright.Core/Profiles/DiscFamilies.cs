using System.Collections.Immutable;

namespace Ringwright.Core.Profiles;

/// <summary>Takes the outer curve apart into families of circles of which only the innermost one matters at each height.</summary>
internal static class DiscFamilies
{
    // Splitting ends here: what still turns about is shorter than a thousandth of a span.
    private const double Finest = 1.0 / 1024;

    /// <summary>The families along the curve, from the bottom up.</summary>
    public static List<DiscFamily> Of(ProfileCurve curve, ImmutableArray<ThicknessStretch> thickness)
    {
        var families = new List<DiscFamily>();
        bool corner = true;
        for (int i = 0; i < curve.Spans.Length; i++)
        {
            CurveSpan span = curve.Spans[i];
            if (corner || span.Level) families.Add(Single(i, span, thickness, 0));
            if (!span.Level) AddStretches(i, span, thickness, families);
            corner = span.Level || !curve.SmoothAbove[i];
        }

        int last = curve.Spans.Length - 1;
        families.Add(Single(last, curve.Spans[last], thickness, 1));
        return families;
    }

    private static DiscFamily Single(int place, CurveSpan span, ImmutableArray<ThicknessStretch> thickness, double u)
    {
        double height = u == 0 ? span.Height.A : span.End.Y;
        return new(place, new(span, thickness.First(t => t.To >= height)), u, u);
    }

    // A change of thickness is a corner too: where it begins to grow thinner faster, one circle stands out.
    private static void AddStretches(int place, CurveSpan span, ImmutableArray<ThicknessStretch> thickness, List<DiscFamily> families)
    {
        foreach (ThicknessStretch stretch in thickness)
        {
            if (stretch.To <= span.Height.A || stretch.From >= span.End.Y) continue;
            var sweep = new Sweep(span, stretch);
            double from = Rising.Solve(span.Height, stretch.From, 0, 1), to = Rising.Solve(span.Height, stretch.To, 0, 1);
            if (stretch.From >= span.Height.A) families.Add(new(place, sweep, from, from));
            AddAdvancing(place, sweep, from, to, families);
        }
    }

    private static void AddAdvancing(int place, Sweep sweep, double from, double to, List<DiscFamily> families)
    {
        var cuts = new List<double> { from };
        CutWhereItTurns(sweep, from, to, cuts);
        CutAtExtremes(sweep, from, to, cuts);
        cuts.Add(to);
        cuts.Sort();
        for (int i = 1; i < cuts.Count; i++)
            if (cuts[i - 1] < cuts[i] && sweep.Touch((cuts[i - 1] + cuts[i]) / 2).Speed > 0) families.Add(new(place, sweep, cuts[i - 1], cuts[i]));
    }

    // Where the thickness varies, the inner wall runs upright where R' = t'.
    private static void CutAtExtremes(Sweep sweep, double from, double to, List<double> cuts)
    {
        double slope = sweep.Thickness.Slope;
        if (slope == 0) return;
        Quadratic r = sweep.Span.Radius.Derivative, z = sweep.Span.Height.Derivative;
        (double first, double second) = new Quadratic(r.A - (slope * z.A), r.B - (slope * z.B), r.C - (slope * z.C)).Roots();
        if (first > from && first < to) cuts.Add(first);
        if (second > from && second < to && second != first) cuts.Add(second);
    }

    private static void CutWhereItTurns(Sweep sweep, double from, double to, List<double> cuts)
    {
        if (KeepsItsSign(sweep, from, to)) return;
        if (to - from > Finest)
        {
            double middle = (from + to) / 2;
            CutWhereItTurns(sweep, from, middle, cuts);
            CutWhereItTurns(sweep, middle, to, cuts);
            return;
        }

        bool advances = sweep.Touch(from).Speed > 0;
        if (advances == sweep.Touch(to).Speed > 0) return;
        for (double middle = (from + to) / 2; middle > from && middle < to; middle = (from + to) / 2)
        {
            if (sweep.Touch(middle).Speed > 0 == advances) from = middle;
            else to = middle;
        }

        cuts.Add(to);
    }

    // Bounds curvature times thickness over the stretch, with the widest and narrowest factor a changing wall can add.
    private static bool KeepsItsSign(Sweep sweep, double from, double to)
    {
        (double leastTurn, double mostTurn) = sweep.Span.Turning.Range(from, to);
        (double slowest, double fastest) = Speeds(sweep.Span, from, to);
        double size = Math.Max(sweep.Size(from), sweep.Size(to)), small = Math.Min(sweep.Size(from), sweep.Size(to));
        double slope = Math.Abs(sweep.Thickness.Slope);
        bool advances = mostTurn * size * (1 + slope) < slowest * slowest * slowest * Math.Sqrt(1 - (slope * slope));
        bool swallowed = leastTurn * small * (1 - slope) > fastest * fastest * fastest;
        return advances || swallowed;
    }

    private static (double Slowest, double Fastest) Speeds(CurveSpan span, double from, double to)
    {
        (double leastR, double mostR) = span.Radius.Derivative.Range(from, to);
        (double leastZ, double mostZ) = span.Height.Derivative.Range(from, to);
        double slowR = leastR < 0 && mostR > 0 ? 0 : Math.Min(Math.Abs(leastR), Math.Abs(mostR));
        return (double.Hypot(slowR, Math.Max(0, leastZ)), double.Hypot(Math.Max(Math.Abs(leastR), Math.Abs(mostR)), mostZ));
    }
}
