namespace Ringwright.Core.Profiles;

/// <summary>From which side a height is reached, where a radius jumps: at a step, at the floor.</summary>
public enum Side
{
    /// <summary>The wood just below that height.</summary>
    Below,

    /// <summary>The wood just above that height.</summary>
    Above,
}
