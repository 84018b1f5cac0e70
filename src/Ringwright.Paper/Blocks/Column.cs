using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Blocks;

/// <summary>Blocks under each other.</summary>
/// <param name="gap">Room between them, mm.</param>
/// <param name="blocks">The blocks from the top.</param>
public sealed class Column(double gap, params IReadOnlyList<IBlock> blocks) : IDivisible
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

    /// <inheritdoc/>
    public (IBlock Head, IBlock Tail)? Divide(double width, double height)
    {
        int whole = 0;
        double left = height;
        for (; whole < blocks.Count && blocks[whole].HeightAt(width) <= left; whole++) left -= blocks[whole].HeightAt(width) + gap;
        if (whole == blocks.Count) return null;
        if ((blocks[whole] as IDivisible)?.Divide(width, left) is var (head, rest))
            return (new Column(gap, [.. blocks.Take(whole), head]), new Column(gap, [rest, .. blocks.Skip(whole + 1)]));
        return whole == 0 ? null : (new Column(gap, [.. blocks.Take(whole)]), new Column(gap, [.. blocks.Skip(whole)]));
    }
}
