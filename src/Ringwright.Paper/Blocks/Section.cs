using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>A heading over a fine line, and what stands under it. Where its content goes on on the next sheet, so does the heading.</summary>
/// <param name="heading">The heading.</param>
/// <param name="content">What stands under it.</param>
public sealed class Section(string heading, IBlock content) : IDivisible
{
    private const double LineGap = 1.2;
    private const double ContentGap = 3.2;
    private const string Continued = ", continued";

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

    /// <inheritdoc/>
    public (IBlock Head, IBlock Tail)? Divide(double width, double height)
    {
        double above = _heading.HeightAt(width) + LineGap + ContentGap;
        if ((content as IDivisible)?.Divide(width, height - above) is not var (head, rest)) return null;
        string again = heading.EndsWith(Continued, StringComparison.Ordinal) ? heading : heading + Continued;
        return (new Section(heading, head), new Section(again, rest));
    }
}
