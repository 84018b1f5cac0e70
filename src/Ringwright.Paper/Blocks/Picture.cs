using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>A drawing in the middle of its column with a caption under it. Not corrected for the printer: for pictures to look at.</summary>
/// <param name="picture">The drawing.</param>
/// <param name="caption">What it shows; none when absent.</param>
public sealed class Picture(Drawing picture, string? caption = null) : IBlock
{
    private const double CaptionGap = 2.5;

    /// <inheritdoc/>
    public double HeightAt(double width)
    {
        if (picture.Width > width + 1e-9)
            throw new LayoutException($"The picture \"{caption}\"", picture.Width, width);
        return picture.Height + (caption is null ? 0 : CaptionGap + Wrapping.HeightOf(Caption(width)));
    }

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        drawing.Place(picture, new Vector2D(box.Centre.X - (picture.Width / 2), box.Y));
        if (caption is not null)
            drawing.Text(Caption(box.Width), new(box.Centre.X, box.Y + picture.Height + CaptionGap), Anchor.TopCentre);
    }

    private IReadOnlyList<TextLine> Caption(double width) => Wrapping.Lines(caption ?? "", TypeScale.Caption, width);
}
