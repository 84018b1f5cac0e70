namespace Ringwright.Paper.Blocks;

/// <summary>A block that may go on on the next sheet. Immutable.</summary>
public interface IDivisible : IBlock
{
    /// <summary>The part that fits a height, and the rest for the next sheet; null where no sensible part fits.</summary>
    /// <param name="width">Width of both parts, mm.</param>
    /// <param name="height">Room for the first part, mm.</param>
    (IBlock Head, IBlock Tail)? Divide(double width, double height);
}
