namespace Ringwright.Core.Sawing;

/// <summary>One of the two long narrow faces of a board; the one at the fence becomes the rim of the wedge.</summary>
public enum BoardEdge
{
    /// <summary>The edge at y = 0.</summary>
    Edge1,

    /// <summary>The edge at y = width.</summary>
    Edge2,
}
