using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Blocks;

/// <summary>A swatch with its letter, and beside it what it stands for.</summary>
/// <param name="hatch">The pattern.</param>
/// <param name="letter">The letter; none when empty.</param>
/// <param name="text">What it stands for.</param>
public sealed class LegendEntry(Hatch hatch, string letter, string text) : IBlock
{
    private const double Wide = 12, Tall = 7; // of the swatch, mm
    private const double Gap = 4;
    private const double Behind = 2.3; // radius of the clear disc behind the letter, mm

    private readonly Paragraph _words = new(text);

    /// <inheritdoc/>
    public double HeightAt(double width) => Math.Max(Tall, _words.HeightAt(width - Wide - Gap));

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        Outline swatch = Outline.Rectangle(box with { Width = Wide, Height = Tall });
        drawing.Hatch(swatch, hatch).Stroke(swatch, Pens.Medium);
        if (letter.Length > 0)
            drawing.LetterOn(letter, new(box.X + (Wide / 2), box.Y + (Tall / 2)), Behind);
        double left = Math.Max(0, Tall - _words.HeightAt(box.Width - Wide - Gap)) / 2;
        _words.Draw(drawing, box.After(Wide + Gap).Below(left));
    }
}
