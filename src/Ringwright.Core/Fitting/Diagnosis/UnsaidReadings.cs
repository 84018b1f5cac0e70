using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>
/// What a report leaves unsaid. Who tells that a joint stands open at the rim, and nothing of its centre, saw no wider
/// opening there, and the other way round: wedges too narrow open the rim most, wedges too wide open only the centre.
/// Without this a single small opening at the rim could as well be a belly on wedges that are far too wide. Each is
/// taken as a rough reading of the end that was not told, twice as uncertain as a feeler gauge.
/// </summary>
internal static class UnsaidReadings
{
    private const double Rough = 2 * FitObservation.FeelerSd;

    /// <summary>Rough readings of the ends that some observations leave untold, unless one of <paramref name="all"/> tells them.</summary>
    public static IEnumerable<FitObservation> Of(IReadOnlyList<FitObservation> observations, IReadOnlyList<FitObservation> all, DiagnosedRing ring) =>
        OtherEnds(observations, ring).Where(u => !all.Any(o => IsSamePlace(o, u)));

    private static bool IsSamePlace(FitObservation a, FitObservation b) => (a, b) switch
    {
        (GatheredGap x, GatheredGap y) => x.At == y.At,
        (HalfRingGap x, HalfRingGap y) => x.At == y.At,
        (BandedGap x, BandedGap y) => (x.Joint, x.At) == (y.Joint, y.At),
        _ => false,
    };

    private static IEnumerable<FitObservation> OtherEnds(IReadOnlyList<FitObservation> observations, DiagnosedRing ring)
    {
        GatheredGap[] gathered = [.. observations.OfType<GatheredGap>()];
        if (gathered.Length > 0 && gathered.All(g => g.At == gathered[0].At)) yield return OtherEnd(gathered.MaxBy(g => g.Gap)!, ring);
        foreach (HalfRingGap half in observations.OfType<HalfRingGap>())
            yield return new HalfRingGap(Other(half.At), 0, Rough);
        foreach (IGrouping<int, BandedGap> joint in observations.OfType<BandedGap>().GroupBy(b => b.Joint))
        {
            BandedGap first = joint.First();
            if (joint.All(b => b.At == first.At)) yield return new BandedGap(first.Joint, Other(first.At), first.Level, 0, Rough);
        }
    }

    /// <summary>Beside an open rim the centre of a gathered joint stands open in proportion; beside an open centre the rim is closed.</summary>
    private static GatheredGap OtherEnd(GatheredGap told, DiagnosedRing ring) => told.At == OpenAt.Rim
        ? new(OpenAt.Centre, told.Level, told.Gap * ring.TipRadius / ring.RimRadius, Rough)
        : new(OpenAt.Rim, told.Level, 0, Rough);

    private static OpenAt Other(OpenAt at) => at == OpenAt.Rim ? OpenAt.Centre : OpenAt.Rim;
}
