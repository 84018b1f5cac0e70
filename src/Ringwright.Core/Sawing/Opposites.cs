namespace Ringwright.Core.Sawing;

/// <summary>The other edge, the other side.</summary>
internal static class Opposites
{
    /// <summary>The other long edge.</summary>
    public static BoardEdge Opposite(this BoardEdge edge) => edge == BoardEdge.Edge1 ? BoardEdge.Edge2 : BoardEdge.Edge1;

    /// <summary>The other wide face.</summary>
    public static BoardSide Opposite(this BoardSide side) => side == BoardSide.Bottom ? BoardSide.Top : BoardSide.Bottom;
}
