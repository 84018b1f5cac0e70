using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>A heading over a fine line, and what stands under it.</summary>
/// <param name="heading">The heading.</param>
/// <param name="content">What stands under it.</param>
public sealed class Section(string heading, IBlock content) : IBlock
{
    private const double LineGap = 1.2;
    private const double ContentGap = 3.2;

    private readonly Paragraph _heading = new(heading, TypeScale.Heading);

    /// <inheritdoc/>
    public double HeightAt(double width) => _heading.HeightAt(width) + LineGap + ContentGap + content.HeightAt(width);

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        _heading.Draw(drawing, box);
        Box below = box.Below(_heading.HeightAt(box.Width) + LineGap);
        drawing.Line(below.TopLeft, new(below.Right, below.Y), Pens.Fine);
        content.Draw(drawing, below.Below(ContentGap));
    }
}
