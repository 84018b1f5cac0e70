namespace Ringwright.Core.Sawing;

/// <summary>One of the two wide faces of a board; the marked one is the top.</summary>
public enum BoardSide
{
    /// <summary>The face at z = 0, on the saw table when the board is not turned over.</summary>
    Bottom,

    /// <summary>The face at z = thickness.</summary>
    Top,
}
