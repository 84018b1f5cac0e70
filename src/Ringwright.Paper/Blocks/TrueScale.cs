using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Blocks;

/// <summary>A drawing at true scale in the middle of its column, stretched by the packet's print correction. It belongs beside check rulers.</summary>
/// <param name="drawing">The drawing; its millimetres are the workshop's.</param>
/// <param name="correction">The printer's correction.</param>
internal sealed class TrueScale(Drawing drawing, PrintCorrection correction) : IBlock
{
    /// <summary>Its width on the paper, mm.</summary>
    public double Width => drawing.Width * correction.Across;

    public double HeightAt(double width) => Width <= width + 1e-9
        ? drawing.Height * correction.Down
        : throw new LayoutException("A true-scale drawing", Width, width);

    public void Draw(Drawing onto, Box box) => onto.Place(drawing, new(box.Centre.X - (Width / 2), box.Y), correction.Across, correction.Down);
}
