using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>One wedge, large, its rim below: as finished in heavy lines, as sawn dashed, with the sizes of both, those as sawn in brackets.</summary>
public static class WedgePicture
{
    private const double Row = 8; // between dimension lines, mm

    /// <summary>Draws the wedge at the largest preferred scale that fits.</summary>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return ScaledPicture.Largest(plan.Glued.RimEdge, room, scale => Draw(plan, Caliper.Of(style), scale));
    }

    private static Drawing Draw(RingPlan plan, MeasureStyle style, DrawingScale scale)
    {
        Drawing drawing = new(0, 0);
        WedgeCorners finished = new(plan.Glued, scale.Ratio), sawn = new(plan.Strip.Wedge, scale.Ratio);
        bool sanded = plan.Strip.Wedge.RimEdge - plan.Glued.RimEdge > 1e-6;
        if (sanded) drawing.Stroke(sawn.Outline, Pens.Hidden);
        drawing.Stroke(finished.Outline, Pens.Heavy);
        Angle(drawing, finished, style);
        Rims(drawing, style, sanded, finished, sawn);
        Tips(drawing, style, sanded, finished, sawn);
        Vector2D foot = sanded ? sawn.RimLeft : finished.RimLeft;
        return drawing.Dimension(foot, foot with { Y = finished.TipY }, Row, style.Length(plan.Glued.Depth));
    }

    // Below the rim: the wedge converges on a point that may lie far outside the picture.
    private static void Angle(Drawing drawing, WedgeCorners wedge, MeasureStyle style)
    {
        Vector2D apex = new(0, wedge.TipY - wedge.Apex);
        double half = wedge.Geometry.HalfAngle, corner = (wedge.RimRight - apex).Length;
        drawing.AngleDimension(
            apex, corner + 5, (Math.PI / 2) - half, 2 * half, style.Print(2 * half, Quantity.Angle), edge: corner);
    }

    private static void Rims(Drawing drawing, MeasureStyle style, bool sanded, WedgeCorners finished, WedgeCorners sawn)
    {
        double below = 18 + Sagitta(finished);
        drawing.Dimension(finished.RimLeft, finished.RimRight, -below, style.Length(finished.Geometry.RimEdge));
        if (sanded) drawing.Dimension(sawn.RimLeft, sawn.RimRight, -below - Row, $"({style.Length(sawn.Geometry.RimEdge)})");
    }

    // How far the arc below the rim bulges past its ends.
    private static double Sagitta(WedgeCorners wedge) =>
        (new Vector2D(0, wedge.Apex) + wedge.RimRight).Length * (1 - Math.Cos(wedge.Geometry.HalfAngle));

    private static void Tips(Drawing drawing, MeasureStyle style, bool sanded, WedgeCorners finished, WedgeCorners sawn)
    {
        double above = Row;
        if (finished.Geometry.Tip > 1e-6)
        {
            drawing.Dimension(finished.TipLeft, finished.TipRight, above, style.Length(finished.Geometry.Tip));
            above += Row;
        }

        if (sanded) drawing.Dimension(sawn.TipLeft, sawn.TipRight, above, $"({style.Length(sawn.Geometry.Tip)})");
    }
}

/// <summary>A wedge on the paper, its rim level and below, the middle of the rim at the origin; y down, mm.</summary>
internal readonly record struct WedgeCorners(WedgeGeometry Geometry, double Scale)
{
    public double TipY => -Scale * Geometry.Depth;

    /// <summary>From the tip up to where the joint faces would meet.</summary>
    public double Apex => Scale * Geometry.InnerApothem;

    public Vector2D RimLeft => new(-Scale * Geometry.RimEdge / 2, 0);

    public Vector2D RimRight => new(Scale * Geometry.RimEdge / 2, 0);

    public Vector2D TipLeft => new(-Scale * Geometry.Tip / 2, TipY);

    public Vector2D TipRight => new(Scale * Geometry.Tip / 2, TipY);

    public Outline Outline => Outline.Polygon(
        Geometry.Tip > 0 ? [RimLeft, RimRight, TipRight, TipLeft] : [RimLeft, RimRight, TipRight]);
}
