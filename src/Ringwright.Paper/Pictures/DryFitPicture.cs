using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// A ring under a band from above, its gaps drawn larger by a stated factor, the joints numbered counter-clockwise as they
/// lie and the widest pointed out with its true size.
/// </summary>
public sealed class DryFitPicture
{
    private const double Width = 170;      // of the page, mm
    private const double Across = 108;     // of the ring on the paper, mm
    private const double Outside = 3.2;    // from the rim to a joint's number, mm
    private const double NumberRoom = 4.5; // along the rim for one number, mm
    private const double Circle = 2.6;       // radius of the circle around the widest gap, mm

    private const int MostMedium = 16;     // wedges
    private const double MostMoved = 1;    // of the rim edge, by which a corner is drawn out of its place

    private readonly DryFitResult _fit;
    private readonly ImmutableArray<ImmutableArray<Vector2D>> _outlines;
    private readonly Placement _place;
    private readonly double _radius;
    private readonly Drawing _drawing = new(0, 0);

    private DryFitPicture(DryFitResult fit, bool top, double factor)
    {
        _fit = fit;
        _outlines = FitOutlines.Draw(fit, top, factor);
        double reach = _outlines.Max(o => o.Max(v => v.Length));
        _place = new(Vector2D.Zero, Across / (2 * reach));
        _radius = Across / 2;
    }

    /// <summary>Draws the ring with its words.</summary>
    /// <param name="fit">The dry fit.</param>
    /// <param name="heading">What ring it is.</param>
    /// <param name="style">How lengths are printed.</param>
    public static Drawing Draw(DryFitResult fit, string heading, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(style);
        bool top = fit.Summary.WorstCorner is JointCorners.RimTop or JointCorners.TipTop;
        double factor = Factor(fit, top);
        Drawing ring = new DryFitPicture(fit, top, factor).Draw(style);
        return PicturePage.Of(Width, new Paragraph(heading, TypeScale.Heading), new Picture(ring), new Paragraph(Words(fit, top, factor)));
    }

    // Steps between neighbours grow with the gaps; where points end at unlike places the factor must be smaller, or wedges are drawn out of shape.
    private static double Factor(DryFitResult fit, bool top)
    {
        double most = FitOutlines.SuggestFactor(fit), edge = fit.Summary.BandLength / fit.Wedges.Length;
        ImmutableArray<ImmutableArray<Vector2D>> real = FitOutlines.Draw(fit, top, 1), twice = FitOutlines.Draw(fit, top, 2);
        double moved = real.Zip(twice, (a, b) => a.Zip(b, (v, w) => (w - v).Length).Max()).Max();
        return new[] { 2.0, 5, 10, 20, 50, 100, 200, 500, 1000 }.LastOrDefault(f => f <= most && (f - 1) * moved <= MostMoved * edge, 1);
    }

    private static string Words(DryFitResult fit, bool top, double factor)
    {
        string drawn = factor == 1 ? "Gaps and steps are drawn as they are." : string.Create(CultureInfo.InvariantCulture, $"Gaps and steps are drawn {factor:0} times as large as they are.");
        string level = fit.Wedges.All(w => w.IsUpright) ? "" : $" Seen at the {(top ? "upper" : "lower")} side.";
        return $"{drawn}{level} Numbers: joints, counter-clockwise; joint 1 lies between the wedges 1 and 2. Encircled: the widest.";
    }

    private Drawing Draw(MeasureStyle style)
    {
        // Where many edges run together in the middle, heavier lines would hide what is open there.
        Pen pen = _outlines.Length > MostMedium ? Pens.Fine : Pens.Medium;
        foreach (ImmutableArray<Vector2D> outline in _outlines)
        {
            Outline wedge = _place.Polygon(outline);
            _drawing.Fill(wedge, Colour.Grey(226)).Stroke(wedge, pen);
        }

        Numbers();
        Widest(style);
        return _drawing.Cropped();
    }

    private void Numbers()
    {
        int n = _fit.Joints.Length, worst = _fit.Summary.WorstJoint;
        int step = (int)Math.Ceiling(n * NumberRoom / (2 * Math.PI * (_radius + Outside)));
        for (int j = 0; j < n; j++)
        {
            // The widest joint has its own words, and room for them.
            int apart = Math.Min(Math.Abs(j - worst), n - Math.Abs(j - worst));
            if (apart == 0 || j % step != 0 || (step > 1 && apart < step)) continue;
            _drawing.Text(Number(j), Out(j, _radius + Outside), TypeScale.Note, Anchor.Middle);
        }
    }

    private void Widest(MeasureStyle style)
    {
        int joint = _fit.Summary.WorstJoint;
        bool rim = _fit.Summary.WorstCorner is JointCorners.RimBottom or JointCorners.RimTop;
        string gap = style.Print(_fit.Summary.WorstGap, Quantity.FineLength);
        TextStyle bold = TypeScale.Dimension with { Weight = FontWeight.SemiBold };
        Vector2D at = Out(joint, _radius + Outside + 1.5);
        Anchor anchor = new(at.X < -1 ? 1 : at.X > 1 ? 0 : 0.5, at.Y < 0 ? 0 : 1);
        _drawing.Stroke(Outline.Circle(_place.Point(End(joint, rim)), Circle), Pens.Medium)
            .Text($"{Number(joint)}: {gap} at the {(rim ? "rim" : "centre")}", at, bold, anchor);
    }

    // Midway between the two corners that look at each other at that end, as drawn.
    private Vector2D End(int joint, bool rim)
    {
        Func<Vector2D, double> length = v => v.Length;
        double radius = rim ? _outlines.Average(o => o.Max(length)) : _outlines.Average(o => o.Min(length));
        Vector2D about = radius * Direction(joint);
        Vector2D Nearest(int wedge) => _outlines[wedge].MinBy(v => (v - about).Length);
        return 0.5 * (Nearest(joint) + Nearest((joint + 1) % _outlines.Length));
    }

    private Vector2D Direction(int joint) => Vector2D.AtAngle((joint + 0.5) * 2 * Math.PI / _fit.Joints.Length);

    private Vector2D Out(int joint, double distance)
    {
        Vector2D along = Direction(joint);
        return new(distance * along.X, -distance * along.Y);
    }

    private static string Number(int joint) => (joint + 1).ToString(CultureInfo.InvariantCulture);
}
