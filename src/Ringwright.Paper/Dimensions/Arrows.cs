using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Dimensions;

/// <summary>The ends of dimension lines and leaders.</summary>
internal static class Arrows
{
    /// <summary>Length of an arrowhead, mm.</summary>
    public const double Length = 2.6;

    private const double HalfWidth = 0.45; // closed and filled, 20 degrees in all

    /// <summary>An arrowhead whose tip is at <paramref name="tip"/> and which points along <paramref name="direction"/> (a unit vector).</summary>
    public static void Head(Drawing drawing, Vector2D tip, Vector2D direction)
    {
        Vector2D foot = tip - (Length * direction);
        Vector2D side = HalfWidth * direction.Perpendicular();
        drawing.Fill(Outline.Polygon([tip, foot + side, foot - side]), Colour.Black);
    }
}
