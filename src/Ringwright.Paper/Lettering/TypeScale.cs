using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Lettering;

/// <summary>
/// The one type scale of all sheets: heights of capitals in the steps of the square root of two of ISO 3098-1
/// (1.8, 2.5, 3.5, 5, 7, 10, 14, 20 mm).
/// </summary>
public static class TypeScale
{
    private static readonly double[] Steps = [1.8, 2.5, 3.5, 5, 7, 10, 14, 20];

    /// <summary>Captions and small print, 1.8 mm. Nothing is set smaller.</summary>
    public static TextStyle Note { get; } = new(1.8);

    /// <summary>A caption beside a figure: small print in grey.</summary>
    public static TextStyle Caption { get; } = new(1.8, Colour: Colour.Soft);

    /// <summary>Running text, 2.5 mm.</summary>
    public static TextStyle Body { get; } = new(2.5);

    /// <summary>Numbers in tables, 2.5 mm, digits of one width, true fractions.</summary>
    public static TextStyle Number { get; } = new(2.5, Tabular: true, Fractions: true);

    /// <summary>Values of dimensions, 2.5 mm.</summary>
    public static TextStyle Dimension { get; } = new(2.5, Fractions: true);

    /// <summary>Headings of blocks, 3.5 mm.</summary>
    public static TextStyle Heading { get; } = new(3.5, FontWeight.SemiBold);

    /// <summary>The title of a sheet, 5 mm.</summary>
    public static TextStyle Title { get; } = new(5, FontWeight.SemiBold);

    /// <summary>A figure to read from a metre away, 10 mm.</summary>
    public static TextStyle Figure { get; } = new(10, FontWeight.SemiBold, Fractions: true);

    /// <summary>
    /// The least height that is read at a metre, mm: one two-hundredth of the distance (common rule of signage, no source).
    /// </summary>
    public static double ReadFromAMetre => 5;

    /// <summary>The next smaller height of the scale, mm, or null when <paramref name="height"/> is the smallest.</summary>
    public static double? Below(double height)
    {
        int index = Array.FindLastIndex(Steps, step => step < height - 1e-9);
        return index < 0 ? null : Steps[index];
    }

    /// <summary><paramref name="style"/> and its smaller sizes down to <paramref name="least"/> mm, largest first.</summary>
    public static IEnumerable<TextStyle> Down(TextStyle style, double least)
    {
        for (double? height = style.Height; height >= least - 1e-9; height = Below(height.Value))
            yield return style with { Height = height.Value };
    }
}
