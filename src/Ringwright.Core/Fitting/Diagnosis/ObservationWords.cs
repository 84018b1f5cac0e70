using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>Readings in words.</summary>
public static class ObservationWords
{
    /// <summary>What was read, with its value and its uncertainty.</summary>
    public static Sentence Say(FitObservation observation)
    {
        ArgumentNullException.ThrowIfNull(observation);
        (Measured value, Measured sd) = observation is WedgeAngleReading angle
            ? (Measured.FineAngle(angle.Angle), Measured.FineAngle(angle.Sd))
            : (Measured.Fine(Gap(observation)), Measured.Fine(observation.Sd));
        return Sentence.Of($"{Name(observation)}: {{0}}, give or take {{1}}", value, sd);
    }

    internal static string End(OpenAt at) => at == OpenAt.Rim ? "rim" : "centre";

    internal static string Name(FitObservation observation) => observation switch
    {
        GatheredGap g => $"opening gathered in one joint, at the {Place(g.At, g.Level)}",
        BandedGap b => $"joint {b.Joint + 1} under the band, at the {Place(b.At, b.Level)}",
        HalfRingGap h => $"half ring on a straightedge, open at the {End(h.At)}",
        _ => "wedge angle",
    };

    /// <summary>The opening that was read, mm; 0 for a wedge angle.</summary>
    internal static double Gap(FitObservation observation) => observation switch
    {
        GatheredGap g => g.Gap,
        BandedGap b => b.Gap,
        HalfRingGap h => h.Gap,
        _ => 0,
    };

    private static string Place(OpenAt at, JointLevel level) => level switch
    {
        JointLevel.Top => $"{End(at)}, top",
        JointLevel.Bottom => $"{End(at)}, bottom",
        _ => End(at),
    };
}
