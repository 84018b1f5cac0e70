namespace Ringwright.Paper.Drawings;

/// <summary>Which point of a line of text stands at the given place.</summary>
/// <param name="X">0 its left end, 0.5 its middle, 1 its right end.</param>
/// <param name="Y">0 its baseline, 0.5 half a capital above it, 1 the top of a capital.</param>
public readonly record struct Anchor(double X, double Y)
{
    /// <summary>Left end of the baseline.</summary>
    public static Anchor Left => default;

    /// <summary>Middle of the baseline.</summary>
    public static Anchor Centre { get; } = new(0.5, 0);

    /// <summary>Right end of the baseline.</summary>
    public static Anchor Right { get; } = new(1, 0);

    /// <summary>Left end, half a capital up.</summary>
    public static Anchor MiddleLeft { get; } = new(0, 0.5);

    /// <summary>The middle of the line's capitals.</summary>
    public static Anchor Middle { get; } = new(0.5, 0.5);

    /// <summary>Right end, half a capital up.</summary>
    public static Anchor MiddleRight { get; } = new(1, 0.5);

    /// <summary>Left end, top of the capitals.</summary>
    public static Anchor TopLeft { get; } = new(0, 1);

    /// <summary>Middle, top of the capitals.</summary>
    public static Anchor TopCentre { get; } = new(0.5, 1);

    /// <summary>Right end, top of the capitals.</summary>
    public static Anchor TopRight { get; } = new(1, 1);
}
