using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>What was read on a dry ring, as a closure for the record.</summary>
public static class ReadClosure
{
    private const double Nothing = 1e-9; // mm

    /// <summary>
    /// The closure that readings of the openings make; of several the mean. The ring gathered in one joint counts before half a ring,
    /// and that before single joints under a band, which each hold a part of the closing error: E = gap / R at the rim and
    /// −gap / w at the centre, four times that over w for half a ring, N times for one joint (see <see cref="DiagnosedRing.ClosingError"/>;
    /// w from rim to centre). A closed end counts when nothing else was read. Null when no opening was read, and for staves and segments that stand apart.
    /// </summary>
    /// <param name="plan">The ring.</param>
    /// <param name="sled">The sled it came from.</param>
    /// <param name="readings">What was read.</param>
    public static LoggedClosure? Of(RingPlan plan, Sled sled, IReadOnlyList<FitObservation> readings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(readings);
        if (plan.Stave is not null || plan.Ring is OpenRing || plan.Batches.IsEmpty) return null;
        var ring = DiagnosedRing.Of(plan, sled);
        double[] gathered = Errors(readings.OfType<GatheredGap>().Select(g => (g.Gap, ring.ClosingError(g.At, g.Gap))));
        double[] half = Errors(readings.OfType<HalfRingGap>().Select(h => (h.Gap, 4 * Signed(h.At, h.Gap) / ring.JointLength)));
        double[] joints = Errors(readings.OfType<BandedGap>().Select(b => (b.Gap, ring.Segments * Signed(b.At, b.Gap) / ring.JointLength)));
        double[] told = gathered.Length > 0 ? gathered : half.Length > 0 ? half : joints;
        if (told.Length == 0) return null;
        double error = told.Average();
        bool rim = error >= 0;
        double reach = rim ? ring.RimRadius : ring.JointLength;
        int wedges = plan.Ring.Around;
        return new()
        {
            Wedges = wedges,
            Boards = Math.Clamp(plan.Woods.Sum(w => w.Boards), 1, wedges),
            At = rim ? OpenAt.Rim : OpenAt.Centre,
            Gap = Length.FromMillimetres(Math.Round(Math.Abs(error) * reach, 4)),
            Reach = Length.FromMillimetres(Math.Round(reach, 4)),
        };
    }

    private static double Signed(OpenAt at, double gap) => at == OpenAt.Rim ? gap : -gap;

    // The closed end of an open joint says only that the other end is the open one.
    private static double[] Errors(IEnumerable<(double Gap, double Error)> read)
    {
        (double Gap, double Error)[] all = [.. read];
        return [.. (all.Any(r => r.Gap > Nothing) ? all.Where(r => r.Gap > Nothing) : all).Select(r => r.Error)];
    }
}
