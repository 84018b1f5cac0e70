using System.Collections.Immutable;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>What caliper readings say of the segments of a ring that are sawn with one setting.</summary>
/// <param name="Batch">Which of the ring's batches, 0-based.</param>
/// <param name="Places">Which segments of the ring, counter-clockwise, 0-based.</param>
/// <param name="Wanted">The angle that each should have, radians.</param>
/// <param name="Mean">The angle that they have in the mean, radians.</param>
/// <param name="Readings">The angle of each as a reading, with what the caliper leaves unknown of it.</param>
/// <param name="Diagnosis">What those readings say of the setting.</param>
public sealed record MeasuredKind(
    int Batch, ImmutableArray<int> Places, double Wanted, double Mean, ImmutableArray<FitObservation> Readings, FitDiagnosis Diagnosis)
{
    /// <summary>What these segments are, wanted and measured, in one sentence.</summary>
    public Sentence Says(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        string what = plan.Stave is not null ? "The staves" : plan.Batches.Length == 1 ? "The wedges" : FormattableString.Invariant($"Wedge {Batch + 1}: the {Places.Length} of this width");
        return Sentence.Of($"{what} should have {{0}} and have {{1}} in the mean.", Measured.FineAngle(Wanted), Measured.FineAngle(Mean));
    }
}
