namespace Ringwright.Core.Sawing;

/// <summary>Why no further wedge was sawn.</summary>
public enum StopReason
{
    /// <summary>All wedges that were wanted are sawn.</summary>
    AllSawn,

    /// <summary>Another cut would leave less than the holding length.</summary>
    LengthUsedUp,

    /// <summary>The stop is so short for the width that the blade passes in front of the board's end.</summary>
    BladeMissesBoard,
}
