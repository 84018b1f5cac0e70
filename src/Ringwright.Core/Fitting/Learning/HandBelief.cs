namespace Ringwright.Core.Fitting;

/// <summary>
/// What is known of one pair of hands at one jig: angle error, loss and pace. Keep one for each jig, since a sanded
/// face and a sawn one err differently. A value: learning from a record gives a new one, and the order of records
/// does not matter.
/// </summary>
/// <param name="Angle">Error of a cut's or sanded face's angle.</param>
/// <param name="Loss">Chance that a wedge is lost.</param>
/// <param name="Cutting">Minutes per cut.</param>
/// <param name="Sanding">Minutes per sanded face.</param>
public sealed record HandBelief(AngleBelief Angle, LossBelief Loss, PaceBelief Cutting, PaceBelief Sanding)
{
    private const double Degree = Math.PI / 180;

    /// <summary>
    /// HandBelief of which nothing is recorded yet (common practice, no source): no bias and 0.05 degrees per cut, each worth 6
    /// cuts; one wedge in 20 lost, worth 20 wedges; half a minute per cut and per sanded face, worth 10 each (72 small
    /// wedges, 144 faces, then take over an hour).
    /// </summary>
    public static HandBelief Unrecorded { get; } = new(
        new(new(Bias: 0, BiasWorth: 6, Sd: 0.05 * Degree, SdWorth: 6)),
        new(PriorLoss: 0.05, PriorWorth: 20),
        new(PriorMinutes: 0.5, PriorWorth: 10),
        new(PriorMinutes: 0.5, PriorWorth: 10));

    /// <summary>What these hands are believed to do after one more record.</summary>
    /// <exception cref="BadInputException">Something recorded, or believed before, cannot be; nothing is learned then.</exception>
    public HandBelief Update(RunRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        Validate();
        RecordCheck.Check(record);
        return new(
            Angle.With(record),
            Loss.With(record),
            Cutting.With(record.Cuts, record.CuttingMinutes),
            Sanding.With(record.FacesSanded, record.SandingMinutes));
    }

    /// <summary>The same for several records.</summary>
    /// <exception cref="BadInputException">Something in one of the records cannot be.</exception>
    public HandBelief Update(IEnumerable<RunRecord> records)
    {
        ArgumentNullException.ThrowIfNull(records);
        return records.Aggregate(this, (hands, record) => hands.Update(record));
    }

    private void Validate()
    {
        Angle.Prior.Validate();
        Loss.Validate();
        Cutting.Validate("cut");
        Sanding.Validate("sanded face");
    }
}
