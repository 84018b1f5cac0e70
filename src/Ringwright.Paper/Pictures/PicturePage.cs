using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures;

/// <summary>A picture that stands by itself, with its heading and its words: no frame, no title block, as tall as it needs.</summary>
internal static class PicturePage
{
    private const double Margin = 8;

    /// <summary>The blocks under each other.</summary>
    /// <param name="width">Width for the blocks, mm; the margin comes on top.</param>
    /// <param name="blocks">The blocks.</param>
    public static Drawing Of(double width, params IReadOnlyList<IBlock> blocks)
    {
        Column column = new(5, blocks);
        double height = column.HeightAt(width);
        Drawing page = new(width + (2 * Margin), height + (2 * Margin));
        column.Draw(page, new(Margin, Margin, width, height));
        return page;
    }
}
