using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stations;

/// <summary>The first strip of one wood, taken apart: the whole length that its wedges need, 1000 units long, to scale.</summary>
internal sealed class StripView
{
    private const double LongSide = 1000;

    public StripView(RingPlan plan, WoodNeed need, double board, MeasureStyle style)
    {
        StripLayout strip = plan.Strip;
        int wedges = Math.Min(need.ToSaw, strip.WedgesIn(board));
        double length = strip.LengthFor(wedges);
        StripPlan sawn = strip.Saw(length, wedges);
        double scale = LongSide / length;
        Height = strip.Wedge.Depth * scale;
        Wedges = [.. sawn.Wedges.Select(w => Svg.Points(w, scale))];
        Kerfs = [.. sawn.Kerfs.Select(k => Svg.Points(k, scale))];
        Trim = Svg.Points(sawn.Trim, scale);
        Offcut = Svg.Points(sawn.Offcut, scale);
        Rest = Svg.Points(sawn.Rest, scale);
        WedgesFrom = Left(sawn.Wedges[0]) * scale;
        WedgesTo = sawn.Wedges[^1].Vertices.Max(v => v.X) * scale;
        WedgesText = $"{wedges} {(wedges == 1 ? "wedge" : "wedges")}, {Svg.Short(style.Length((WedgesTo - WedgesFrom) / scale))}";
        RestText = "hold " + Svg.Short(style.Length(strip.HoldingLength));
        LengthText = style.Length(length);
        LeftText = board - length > 0.5 ? style.Length(board - length) : null;
    }

    /// <summary>Width of the strip.</summary>
    public double Height { get; }

    public ImmutableArray<string> Wedges { get; }

    public ImmutableArray<string> Kerfs { get; }

    public string Trim { get; }

    public string Offcut { get; }

    public string Rest { get; }

    public double WedgesFrom { get; }

    public double WedgesTo { get; }

    public string WedgesText { get; }

    public string RestText { get; }

    /// <summary>The length that is drawn.</summary>
    public string LengthText { get; }

    /// <summary>What the board has beyond it; null for next to nothing.</summary>
    public string? LeftText { get; }

    private static double Left(ConvexPolygon polygon) => polygon.Vertices.Min(v => v.X);
}
