using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Web.Drawing;

/// <summary>
/// The glued ring in plan, drawn so that its corners lie 100 units from the middle. One wedge's true shape, turned into each
/// place, so that the grain (the pattern) runs around the ring as it does in the wood.
/// </summary>
internal sealed class PlanView
{
    private const double CornerRadius = 100;

    public PlanView(RingPlan plan, MeasureStyle style)
    {
        WedgeGeometry glued = plan.Glued;
        double scale = CornerRadius / glued.OuterCorner;
        Segments = glued.Segments;
        Step = 360.0 / glued.Segments;
        Wedge = Svg.Points(glued.Plan(0), scale);
        Apothem = glued.OuterApothem * scale;
        HalfRim = glued.RimEdge * scale / 2;
        Turned = plan.Ring.Outside.Millimetres / 2 * scale;
        HoleRadius = Hole(plan.Ring) is Length hole ? hole.Millimetres / 2 * scale : null;
        HoleText = Hole(plan.Ring) is Length h ? $"{(plan.Ring is WedgeDisc ? "bore" : "inside")} {Svg.Short(style.Length(h.Millimetres))}" : null;
        bool open = glued.InnerCorner > 0;
        OpeningCorner = open ? glued.InnerCorner * scale : null;
        OpeningText = open ? Svg.Short(style.Length(2 * glued.InnerCorner)) : null;
        AcrossText = Svg.Short(style.Length(2 * glued.OuterApothem));
        RimText = Svg.Short(style.Length(glued.RimEdge));
    }

    public int Segments { get; }

    /// <summary>Degrees from one wedge to the next.</summary>
    public double Step { get; }

    /// <summary>Corners of the first wedge, its middle on +x.</summary>
    public string Wedge { get; }

    public double Apothem { get; }

    public double HalfRim { get; }

    /// <summary>Radius of the turned outside.</summary>
    public double Turned { get; }

    /// <summary>Radius of the bore, or of the turned inside.</summary>
    public double? HoleRadius { get; }

    public string? HoleText { get; }

    /// <summary>Distance of the opening's corners from the middle; null for wedges sawn to a point.</summary>
    public double? OpeningCorner { get; }

    public string? OpeningText { get; }

    public string AcrossText { get; }

    public string RimText { get; }

    /// <summary>How wedge <paramref name="index"/> is turned from the first one's place: counter-clockwise as seen.</summary>
    public string Turn(int index) => index == 0 ? "rotate(0)" : $"rotate({Svg.N(-index * Step)})";

    private static Length? Hole(Ring ring) => ring switch
    {
        WedgeDisc disc => disc.Bore,
        SegmentRing open => open.InnerDiameter,
        _ => null,
    };
}
