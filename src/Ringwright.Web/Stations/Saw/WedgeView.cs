using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stations;

/// <summary>One wedge as it leaves the saw, rim edge above and tip below, its longer extent 150 units.</summary>
internal sealed class WedgeView
{
    private const double Extent = 150;

    // A tip shorter than this is drawn and named as a point.
    private const double PointBelow = 1e-6;

    public WedgeView(RingPlan plan, MeasureStyle style)
    {
        WedgeGeometry sawn = plan.Strip.Wedge;
        double scale = Extent / Math.Max(sawn.Depth, sawn.RimEdge);
        HalfRim = sawn.RimEdge * scale / 2;
        HalfTip = sawn.Tip * scale / 2;
        Depth = sawn.Depth * scale;
        RimText = Svg.Short(style.Length(sawn.RimEdge));
        TipText = sawn.Tip < PointBelow ? "a point" : Svg.Short(style.Length(sawn.Tip));
        DepthText = Svg.Short(style.Length(sawn.Depth));
        MitreText = style.Print(sawn.HalfAngle, Quantity.Angle);
        WedgeAngleText = style.Print(sawn.WedgeAngle, Quantity.Angle);
        double reach = Math.Min(Depth * 0.6, HalfRim / Math.Sin(sawn.HalfAngle) * 0.6);
        Arc = $"M{Svg.N(HalfRim)},{Svg.N(reach)} A{Svg.N(reach)},{Svg.N(reach)} 0 0 1 {Svg.N(HalfRim - (reach * Math.Sin(sawn.HalfAngle)))},{Svg.N(reach * Math.Cos(sawn.HalfAngle))}";
        ArcReach = reach;
    }

    public double HalfRim { get; }

    public double HalfTip { get; }

    public double Depth { get; }

    public string RimText { get; }

    public string TipText { get; }

    public string DepthText { get; }

    public string MitreText { get; }

    public string WedgeAngleText { get; }

    /// <summary>The arc between square and the joint face, at the right corner of the rim.</summary>
    public string Arc { get; }

    public double ArcReach { get; }

    public string Outline => HalfTip == 0
        ? $"{Svg.N(-HalfRim)},0 {Svg.N(HalfRim)},0 0,{Svg.N(Depth)}"
        : $"{Svg.N(-HalfRim)},0 {Svg.N(HalfRim)},0 {Svg.N(HalfTip)},{Svg.N(Depth)} {Svg.N(-HalfTip)},{Svg.N(Depth)}";
}
