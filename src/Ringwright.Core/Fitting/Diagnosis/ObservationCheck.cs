namespace Ringwright.Core.Fitting;

/// <summary>Refuses readings that cannot be.</summary>
internal static class ObservationCheck
{
    public static void All(IReadOnlyList<FitObservation> observations, DiagnosedRing ring)
    {
        if (observations.Count == 0) throw new BadInputException("Diagnosis", "there is no reading", "give at least one opening or wedge angle");
        for (int i = 0; i < observations.Count; i++) One(observations[i], $"Diagnosis, reading {i + 1}", ring);
    }

    private static void One(FitObservation observation, string where, DiagnosedRing ring)
    {
        Require(observation.Sd > 0 && double.IsFinite(observation.Sd), where, "its uncertainty", observation.Sd, "give more than 0");
        double gap = ObservationWords.Gap(observation);
        Require(gap >= 0 && gap <= ring.RimRadius, where, "the opening", gap, FormattableString.Invariant($"0 to {ring.RimRadius:0.##} mm, the rim radius, can"));
        if (observation is BandedGap banded)
            Require(banded.Joint >= 0 && banded.Joint < ring.Segments, where, "the joint", banded.Joint + 1, $"1 to {ring.Segments} can");
        if (observation is HalfRingGap)
            Require(ring.Segments % 2 == 0, where, "half of the segments", ring.Segments, "only an even number has halves");
        if (observation is WedgeAngleReading angle)
            Require(angle.Angle > 0 && angle.Angle < Math.PI, where, "the wedge angle in degrees", double.RadiansToDegrees(angle.Angle), "more than 0 and less than 180 can");
    }

    private static void Require(bool holds, string where, string what, double value, string right)
    {
        if (!holds) throw new BadInputException(where, FormattableString.Invariant($"{what} cannot be {value:0.####}"), right);
    }
}
