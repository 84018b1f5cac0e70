namespace Ringwright.Core.Planning;

/// <summary>Chooses the tilts of a board's cuts: as few different ones as the ranges allow, each a round number where one fits.</summary>
internal static class TiltChoice
{
    private const double Degree = Math.PI / 180;
    private const double Hair = 1e-12; // radians
    private static readonly double[] Rounds = [Degree, Degree / 2, Degree / 10];

    /// <summary>A tilt for each range, radians. No range is empty.</summary>
    public static double[] Of(IReadOnlyList<TiltRange> ranges)
    {
        double[] tilts = new double[ranges.Count];
        int[] waiting = [.. Enumerable.Range(0, ranges.Count).OrderBy(i => ranges[i].Most)];
        // The cut with the lowest upper end shares its tilt with all that reach down to it: the fewest points that meet all ranges.
        while (waiting.Length > 0)
        {
            double most = ranges[waiting[0]].MostTilt;
            int[] together = [.. waiting.Where(i => ranges[i].LeastTilt <= most + Hair)];
            double tilt = Handy(together.Max(i => ranges[i].LeastTilt), most);
            foreach (int i in together) tilts[i] = tilt;
            waiting = [.. waiting.Except(together)];
        }

        return tilts;
    }

    // Upright where that will do; otherwise a little more than the least, so that an error of the table is forgiven.
    private static double Handy(double least, double most)
    {
        if (least <= 0) return 0;
        double aim = least + (Math.Min(2 * Degree, most - least) / 2);
        foreach (double round in Rounds)
        {
            double tilt = round * Math.Round(aim / round);
            if (tilt >= least && tilt <= most) return tilt;
        }

        return aim;
    }
}
