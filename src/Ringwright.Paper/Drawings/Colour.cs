namespace Ringwright.Paper.Drawings;

/// <summary>
/// An ink in sRGB. The default is black. Colour only adds to what line, hatch and letter already say: every drawing must
/// be complete in black and white.
/// </summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>Lines and letters.</summary>
    public static Colour Black => default;

    /// <summary>Captions: dark enough to print well (contrast to white 7.5 to 1).</summary>
    public static Colour Soft { get; } = Grey(84);

    /// <summary>A grey, 0 black to 255 white.</summary>
    public static Colour Grey(byte level) => new(level, level, level);
}
