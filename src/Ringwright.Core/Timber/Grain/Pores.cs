namespace Ringwright.Core.Timber.Grain;

/// <summary>How a hardwood's pores lie in its growth rings.</summary>
public enum Pores
{
    /// <summary>Of one size all through the ring.</summary>
    Diffuse,

    /// <summary>Growing smaller from the ring's start to its end.</summary>
    Graded,

    /// <summary>Large ones at the ring's start, hardly any after.</summary>
    RingPorous,
}
