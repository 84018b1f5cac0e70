using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>A reading as a linear form of the causes: value = closing * E + taper * h + shape * c + own scatter of its joint, plus noise.</summary>
internal readonly record struct LinearReading(double Value, double Variance, double Closing, double Taper, double Shape, (int Joint, OpenAt At)? Place);

/// <summary>
/// What each kind of observation would read for given causes (first order in angles; R, r rim and tip radius, w = R - r).
/// </summary>
/// <remarks>
/// Closing error E (2 pi less the sum of the wedge angles). Gathered in one joint: the faces stand at the angle E about
/// the centre, so the joint is open by R E at the rim and r E at the tip; for E below 0 the rims touch and the tip is
/// open by w |E|. Under a band each joint turns by E/N about its closed end: w E / N. Half a ring spans pi - E/2: laid
/// evenly on a straightedge each end face stands off by E/4, w E / 4 at its far end. Taper h: faces that lean open a
/// joint by |h| at the top (h above 0) or at the bottom. Shape c above 0: bellied faces hold both ends open by c; hollow
/// faces (c below 0) do not show at the ends.
/// </remarks>
internal static class ReadingModel
{
    /// <summary>The linear form of an observation when the causes have the given signs.</summary>
    public static LinearReading Of(FitObservation observation, DiagnosedRing ring, DiagnosisPriors priors, CauseSigns signs)
    {
        double variance = observation.Sd * observation.Sd;
        double n = ring.Segments;
        return observation switch
        {
            GatheredGap g => new(g.Gap, variance, Gathered(g.At, ring, signs), Taper(g.Level, signs), Shape(signs), null),
            BandedGap b => new(b.Gap, variance, Turned(b.At, ring.JointLength / n, signs), Taper(b.Level, signs), Shape(signs), (b.Joint, b.At)),
            HalfRingGap h => new(h.Gap, variance + HalfScatter(ring, priors), Turned(h.At, ring.JointLength / 4, signs), 0, 0, null),
            WedgeAngleReading a => new(a.Angle - ring.Wanted, variance + (priors.ScatterSd * priors.ScatterSd), -1 / n, 0, 0, null),
            _ => throw new NotSupportedException(observation.GetType().Name),
        };
    }

    private static double Gathered(OpenAt at, DiagnosedRing ring, CauseSigns signs) => (at, signs.TooNarrow) switch
    {
        (OpenAt.Rim, true) => ring.RimRadius,
        (OpenAt.Rim, false) => 0,
        (OpenAt.Centre, true) => ring.TipRadius,
        (OpenAt.Centre, false) => -ring.JointLength,
        _ => throw new NotSupportedException(at.ToString()),
    };

    private static double Turned(OpenAt at, double length, CauseSigns signs) =>
        (at == OpenAt.Rim) == signs.TooNarrow ? (signs.TooNarrow ? length : -length) : 0;

    private static double Taper(JointLevel level, CauseSigns signs) => level switch
    {
        JointLevel.Top => signs.OpenAtTop ? 1 : 0,
        JointLevel.Bottom => signs.OpenAtTop ? 0 : -1,
        _ => signs.OpenAtTop ? 0.5 : -0.5,
    };

    private static double Shape(CauseSigns signs) => signs.Bellied ? 1 : 0;

    /// <summary>The N/2 wedges of a half scatter by sqrt(N/2) times one wedge's scatter, of which either end face shows half.</summary>
    private static double HalfScatter(DiagnosedRing ring, DiagnosisPriors priors) =>
        Math.Pow(ring.JointLength / 2 * priors.ScatterSd, 2) * ring.Segments / 2;
}
