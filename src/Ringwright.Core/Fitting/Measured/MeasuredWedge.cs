namespace Ringwright.Core.Fitting;

/// <summary>One wedge as a caliper reads it, at its lower side and, where both sides were read, at its upper side.</summary>
/// <param name="Below">The reading on the lower side, or the only one.</param>
/// <param name="Above">The reading on the upper side; the same when the wedge was read once.</param>
public sealed record MeasuredWedge(CaliperReading Below, CaliperReading Above)
{
    /// <summary>A wedge that was read once: its faces are taken to stand upright.</summary>
    public MeasuredWedge(CaliperReading reading)
        : this(reading, reading)
    {
    }
}
