using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Blocks;

/// <summary>Blocks under each other.</summary>
/// <param name="gap">Room between them, mm.</param>
/// <param name="blocks">The blocks from the top.</param>
public sealed class Column(double gap, params IReadOnlyList<IBlock> blocks) : IBlock
{
    /// <inheritdoc/>
    public double HeightAt(double width) =>
        blocks.Sum(block => block.HeightAt(width)) + (gap * Math.Max(0, blocks.Count - 1));

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        double y = box.Y;
        foreach (IBlock block in blocks)
        {
            double height = block.HeightAt(box.Width);
            block.Draw(drawing, box with { Y = y, Height = height });
            y += height + gap;
        }
    }
}
