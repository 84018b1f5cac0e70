using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Blocks;

/// <summary>Something that takes a width and says how tall it becomes. Immutable.</summary>
public interface IBlock
{
    /// <summary>Height at a width, mm.</summary>
    /// <exception cref="LayoutException">It cannot be set in that width.</exception>
    double HeightAt(double width);

    /// <summary>Draws it into a box of that width and at least that height, from the top.</summary>
    void Draw(Drawing drawing, Box box);
}
