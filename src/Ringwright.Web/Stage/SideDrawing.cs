using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stage;

/// <summary>A point of a curve that can be dragged.</summary>
/// <param name="Id">Which: <c>outer-3</c> or <c>inner-1</c>, counted from 0.</param>
/// <param name="Inner">Whether it is of the inside.</param>
/// <param name="Index">Its index in its curve.</param>
/// <param name="X">Radius, mm.</param>
/// <param name="Y">Height, mm, downwards.</param>
/// <param name="Sharp">Whether the curve turns sharply there.</param>
/// <param name="Label">Its name and place in words.</param>
internal sealed record Handle(string Id, bool Inner, int Index, double X, double Y, bool Sharp, string Label);

/// <summary>The piece from its side in millimetres, with what is drawn around it.</summary>
internal sealed class SideDrawing
{
    private readonly Plan _plan;

    public SideDrawing(Plan plan, MeasureStyle style)
    {
        _plan = plan;
        Outlines = PieceOutlines.Side(plan);
        double reach = Outlines.Blanks.SelectMany(b => b).Concat(Outlines.Cut.SelectMany(c => c)).Max(v => v.X);
        High = Math.Max(Outlines.Blanks.SelectMany(b => b).Max(v => v.Y), plan.Form?.Top ?? 0);
        Low = Math.Min(0, Outlines.Cut.SelectMany(c => c).Select(v => v.Y).DefaultIfEmpty(0).Min());
        Extent = Math.Max(2 * reach, High - Low);
        Letter = Extent / 26;
        HeightX = -reach - (Extent * 0.05);
        WidthY = -Low + (Extent * 0.06);
        double left = HeightX - (2 * Letter), right = reach + (Extent * 0.05), top = -High - (Extent * 0.05), bottom = WidthY + (2 * Letter);
        ViewBox = $"{Svg.N(left)} {Svg.N(top)} {Svg.N(right - left)} {Svg.N(bottom - top)}";
        CutPath = Svg.Path(Outlines.Cut);
        BlankPath = Svg.Path(Outlines.Blanks);
        double turned = Outlines.Cut.SelectMany(c => c).Select(v => v.X).DefaultIfEmpty(reach).Max(), from = plan.Form?.Bottom ?? Low, to = plan.Form?.Top ?? High;
        HeightText = Svg.Short(style.Length(to - from)) + " high";
        HeightLine = $"M{Svg.N(HeightX)},{Svg.N(-from)}V{Svg.N(-to)}m{Svg.N(-Letter / 3)},0h{Svg.N(Letter / 1.5)}M{Svg.N(HeightX - (Letter / 3))},{Svg.N(-from)}h{Svg.N(Letter / 1.5)}";
        WidthText = Svg.Short(style.Length(2 * turned)) + " across";
        WidthLine = $"M{Svg.N(-turned)},{Svg.N(WidthY)}H{Svg.N(turned)}m0,{Svg.N(-Letter / 3)}v{Svg.N(Letter / 1.5)}M{Svg.N(-turned)},{Svg.N(WidthY - (Letter / 3))}v{Svg.N(Letter / 1.5)}";
        CurvePath = plan.Form is TurnedForm form ? Curve(form.OuterCurve) + (plan.Piece.Shape?.Inside is Hollow drawn ? Curve(ProfileCurve.Through(drawn.Points)) : "") : "";
        Handles = plan.Piece.Shape is Shape shape ? [.. Points(shape.Outer, false, style), .. shape.Inside is Hollow hollow ? Points(hollow.Points, true, style) : []] : [];
    }

    public SideOutlines Outlines { get; }

    /// <summary>The larger of width and height, mm.</summary>
    public double Extent { get; }

    public double High { get; }

    public double Low { get; }

    /// <summary>Height of letters, mm.</summary>
    public double Letter { get; }

    public double HeightX { get; }

    public double WidthY { get; }

    public string ViewBox { get; }

    public string CutPath { get; }

    public string BlankPath { get; }

    public string HeightText { get; }

    public string HeightLine { get; }

    public string WidthText { get; }

    public string WidthLine { get; }

    public string CurvePath { get; }

    public ImmutableArray<Handle> Handles { get; }

    /// <summary>The box around a ring as glued on both sides; null when it is the only one.</summary>
    public (double X, double Y, double Width, double Height)? RingBox(int ring)
    {
        if (_plan.Rings.Length < 2 || ring >= Outlines.Blanks.Length) return null;
        ImmutableArray<Vector2D> blank = Outlines.Blanks[ring];
        double outer = blank.Max(v => v.X), low = blank.Min(v => v.Y), high = blank.Max(v => v.Y);
        return (-outer, -high, 2 * outer, high - low);
    }

    private static string Curve(ProfileCurve curve)
    {
        string At(Vector2D v) => $"{Svg.N(v.X)},{Svg.N(-v.Y)}";
        return $"M{At(curve.Spans[0].Start)}" + string.Concat(curve.Spans.Select(s => $"C{At(s.StartHandle)} {At(s.EndHandle)} {At(s.End)}"));
    }

    private static IEnumerable<Handle> Points(ImmutableArray<ShapePoint> points, bool inner, MeasureStyle style) => points.Select((p, i) => new Handle(
        $"{(inner ? "inner" : "outer")}-{i}", inner, i, p.Diameter.Millimetres / 2, -p.Height.Millimetres, p.Sharp,
        $"{(inner ? "Inside point" : "Point")} {i + 1}: {style.Length(p.Diameter.Millimetres)} across at a height of {style.Length(p.Height.Millimetres)}, {(p.Sharp ? "sharp" : "smooth")}"));
}
