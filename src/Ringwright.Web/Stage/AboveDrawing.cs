using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stage;

/// <summary>A glued ring from above, whatever its construction, drawn so that its corners lie 100 units from the middle.</summary>
internal sealed class AboveDrawing
{
    private const double CornerRadius = 100;

    private const int ArcSteps = 48; // around a whole turn

    public AboveDrawing(RingPlan plan, MeasureStyle style)
    {
        ImmutableArray<LaidOutline> laid = LaidOutline.Of(plan);
        double outside = plan.Ring.Outside.Millimetres / 2;
        double reach = Math.Max(outside, laid.SelectMany(o => o.Corners).Select(c => c.Length).DefaultIfEmpty(0).Max());
        double scale = CornerRadius / reach;
        Pieces = laid.IsEmpty ? [.. Sectors(plan, outside, scale)] : [.. laid.Select(o => (Svg.Points(o.Corners, scale), WoodOf(plan, o)))];
        Turned = outside * scale;
        Length? hole = Hole(plan.Ring);
        HoleRadius = hole?.Millimetres / 2 * scale;
        HoleText = hole is Length h ? $"{(plan.Ring is WedgeDisc ? "bore" : "inside")} {Svg.Short(style.Length(h.Millimetres))}" : null;
        AcrossText = $"turned to {Svg.Short(style.Length(2 * outside))}";
        Half = Turned;
        ThinnestEdge = laid.IsEmpty ? CornerRadius : laid.Min(o => o.Width) * scale;
        if (plan.Batches.Length == 1 && plan.Ring is WedgeDisc or SegmentRing or StaveRing) Equal(plan.Glued, scale, style);
    }

    /// <summary>Corners and wood of each piece.</summary>
    public ImmutableArray<(string Points, string Wood)> Pieces { get; }

    /// <summary>Radius of the turned outside.</summary>
    public double Turned { get; }

    /// <summary>Radius of the bore, or of the turned inside.</summary>
    public double? HoleRadius { get; }

    public string? HoleText { get; }

    /// <summary>Half of what is dimensioned across: the flats of equal segments, else the turned outside.</summary>
    public double Half { get; private set; }

    public string AcrossText { get; private set; }

    /// <summary>Half of a segment's rim edge; null when they are not equal.</summary>
    public double? HalfRim { get; private set; }

    public string? RimText { get; private set; }

    /// <summary>Distance of the opening's corners from the middle; null for wedges sawn to a point.</summary>
    public double? OpeningCorner { get; private set; }

    public string? OpeningText { get; private set; }

    /// <summary>The shortest rim edge: how close the lines of the wood may be.</summary>
    public double ThinnestEdge { get; }

    private void Equal(WedgeGeometry glued, double scale, MeasureStyle style)
    {
        Half = glued.OuterApothem * scale;
        AcrossText = "across flats " + Svg.Short(style.Length(2 * glued.OuterApothem));
        HalfRim = glued.RimEdge * scale / 2;
        RimText = Svg.Short(style.Length(glued.RimEdge));
        if (glued.InnerCorner <= 0) return;
        OpeningCorner = glued.InnerCorner * scale;
        OpeningText = Svg.Short(style.Length(2 * glued.InnerCorner));
    }

    // A glued segment of several woods is drawn in the first of them.
    private static string WoodOf(RingPlan plan, LaidOutline outline) => plan.Lamination is null ? outline.Wood : plan.Layout[outline.Place].Wood;

    // Rings whose wedges are planned with another ring, and layers in one piece.
    private static IEnumerable<(string Points, string Wood)> Sectors(RingPlan plan, double outside, double scale)
    {
        double inside = (Hole(plan.Ring)?.Millimetres ?? 0) / 2;
        foreach (LaidSegment segment in plan.Layout)
        {
            double from = segment.From.Direction, span = Math.Max(segment.To.Direction - from, 1e-6);
            int steps = Math.Max(1, (int)Math.Ceiling(ArcSteps * span / (2 * Math.PI)));
            IEnumerable<Vector2D> Arc(double radius) => Enumerable.Range(0, steps + 1).Select(i => Vector2D.Polar(radius, from + (span * i / steps)));
            yield return (Svg.Points([.. Arc(outside), .. Arc(inside).Reverse()], scale), segment.Wood);
        }
    }

    private static Length? Hole(Ring ring) => ring switch
    {
        WedgeDisc disc => disc.Bore,
        IHollowRing hollow => hollow.InnerDiameter,
        _ => null,
    };
}
