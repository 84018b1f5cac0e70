using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>Text broken into lines.</summary>
/// <param name="text">The text; a line end begins a new line.</param>
/// <param name="style">How it is set; <see cref="TypeScale.Body"/> when absent.</param>
public sealed class Paragraph(string text, TextStyle? style = null) : IBlock
{
    private readonly TextStyle _style = style ?? TypeScale.Body;

    /// <inheritdoc/>
    public double HeightAt(double width) => Wrapping.HeightOf(Wrapping.Lines(text, _style, width));

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        drawing.Text(Wrapping.Lines(text, _style, box.Width), box.TopLeft, Anchor.TopLeft);
    }
}
