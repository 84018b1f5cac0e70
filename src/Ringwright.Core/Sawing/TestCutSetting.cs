namespace Ringwright.Core.Sawing;

/// <summary>How far the board was pushed past the blade for a test cut.</summary>
public enum TestCutSetting
{
    /// <summary>Too far: the stop stands too far from the blade, the tip stays blunt.</summary>
    TooFar,

    /// <summary>As set.</summary>
    Right,

    /// <summary>Not far enough: the stop stands too near, the tip ends early and the board loses a corner.</summary>
    NotFarEnough,
}
