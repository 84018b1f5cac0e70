using Ringwright.Core.Geometry;
using Ringwright.Core.Rings;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures;

/// <summary>A joint of the dry ring that gapes, much too wide: wedges in true shape on either side of it, the open joint on top.</summary>
public static class GapPicture
{
    private const double Opening = 0.12; // each side turned by this, rad: wide enough to see at a glance

    /// <summary>Draws the joint, without spacers.</summary>
    /// <param name="wedge">The ring's wedges.</param>
    /// <param name="atRim">Whether it is open at the rim; otherwise at the centre.</param>
    /// <param name="room">Room on the paper.</param>
    public static Drawing Draw(WedgeGeometry wedge, bool atRim, Room room) =>
        ScaledPicture.Largest(wedge.RimEdge, room, scale => Draw(wedge with { ApexRadius = 0 }, atRim, scale.Ratio)).Drawing;

    private static Drawing Draw(WedgeGeometry wedge, bool atRim, double scale)
    {
        Drawing drawing = new(0, 0);
        Vector2D hinge = new(0, atRim ? wedge.InnerCorner : wedge.OuterCorner);
        int each = wedge.Segments < 12 ? 1 : 2;
        for (int i = -each; i < each; i++)
        {
            // The joint between the wedges -1 and 0 stands upright; each side turns about its closed end.
            double turn = (i < 0 ? -1 : 1) * (atRim ? -Opening : Opening), middle = (Math.PI / 2) - ((i + 0.5) * wedge.WedgeAngle);
            Placement place = new(Vector2D.Zero, scale);
            drawing.Stroke(
                place.Polygon(wedge.Plan(0).Vertices.Select(v => hinge + (v.Rotated(middle) - hinge).Rotated(turn))), Pens.Medium);
        }

        return drawing;
    }
}
