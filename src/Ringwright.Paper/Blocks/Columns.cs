using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Blocks;

/// <summary>Blocks beside each other, their tops level.</summary>
/// <param name="columns">Each block with its share of the width.</param>
public sealed class Columns(params IReadOnlyList<(double Share, IBlock Block)> columns) : IBlock
{
    /// <summary>Room between columns, mm.</summary>
    public const double Gutter = 8;

    /// <summary>Columns of one width.</summary>
    public Columns(params IReadOnlyList<IBlock> blocks)
        : this([.. blocks.Select(block => (1.0, block))])
    {
    }

    /// <inheritdoc/>
    public double HeightAt(double width) => Boxes(new(0, 0, width, 0)).Max(c => c.Block.HeightAt(c.Box.Width));

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        foreach ((IBlock block, Box part) in Boxes(box))
            block.Draw(drawing, part);
    }

    private IEnumerable<(IBlock Block, Box Box)> Boxes(Box box)
    {
        double shared = box.Width - (Gutter * (columns.Count - 1));
        double shares = columns.Sum(c => c.Share);
        double x = box.X;
        foreach ((double share, IBlock block) in columns)
        {
            Box part = box with { X = x, Width = shared * share / shares };
            yield return (block, part);
            x = part.Right + Gutter;
        }
    }
}
