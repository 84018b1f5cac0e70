using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>The glued ring from above: every wedge in its true shape, its wood by pattern and letter, what is turned away dashed.</summary>
public sealed class RingPicture
{
    private const double LeastForHatch = 3.2; // rim edge on the paper, mm: narrower wedges are shaded
    private const double Balloon = 1.7;       // radius of a letter's disc, mm

    private readonly RingPlan _plan;
    private readonly MeasureStyle _style;
    private readonly Placement _place;
    private readonly WoodKey _key;
    private readonly bool _coloured;
    private readonly Drawing _drawing = new(0, 0);

    private RingPicture(RingPlan plan, MeasureStyle style, DrawingScale scale, bool coloured)
    {
        (_plan, _style, _coloured) = (plan, style, coloured);
        _place = new(Vector2D.Zero, scale.Ratio);
        _key = WoodKey.Of(plan.Ring);
    }

    private WedgeGeometry Glued => _plan.Glued;

    private double Outside => _place.Scale * Glued.OuterCorner;

    /// <summary>Draws the ring at the largest preferred scale that fits.</summary>
    /// <param name="plan">The ring.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room, bool coloured = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return ScaledPicture.Largest(2 * plan.Glued.OuterCorner, room, scale => new RingPicture(plan, style, scale, coloured).Draw());
    }

    private Drawing Draw()
    {
        foreach ((ConvexPolygon wedge, int index) in Glued.PlanOfRing().Select((wedge, index) => (wedge, index)))
            Wedge(_place.Polygon(wedge.Vertices), _key[_plan.Ring.WoodOf(index)], index * Glued.WedgeAngle);
        if (_key.Entries.Count > 1) Letters();
        Cross();
        Turned();
        Sizes();
        return _drawing;
    }

    private void Wedge(Outline outline, WoodEntry wood, double middle)
    {
        bool wide = _place.Scale * Glued.RimEdge >= LeastForHatch;
        if (_coloured)
            _drawing.Fill(outline, wood.Tint);
        else if (!wide)
            _drawing.Fill(outline, wood.Shade);
        if (wide)
            _drawing.Hatch(outline, wood.Hatch.Turned(_place.Angle(middle)));
        _drawing.Stroke(outline, wide ? Pens.Medium : Pens.Fine);
    }

    // Just inside the rim, on a white disc, so that lines do not cross them; left out where wedges are too narrow.
    private void Letters()
    {
        double radius = (_place.Scale * Glued.OuterApothem) - Balloon - 1;
        double deep = _place.Scale * Glued.Depth;
        if (deep < 2 * (Balloon + 1) || 2 * radius * Math.Sin(Glued.HalfAngle) < 2 * (Balloon + 0.5)) return;
        for (int i = 0; i < Glued.Segments; i++)
        {
            Vector2D at = _place.Origin + Vector2D.Polar(radius, _place.Angle(i * Glued.WedgeAngle));
            TextLine letter = Typesetter.Set(_key[_plan.Ring.WoodOf(i)].Letter, TypeScale.Note);
            if (letter.Width > 1.8 * Balloon) return;
            _drawing.Fill(Outline.Circle(at, Balloon), new Colour(255, 255, 255)).Text(letter, at, Anchor.Middle);
        }
    }

    private void Cross()
    {
        double reach = Outside + 3;
        _drawing.Line(new(-reach, 0), new(reach, 0), Pens.Centre).Line(new(0, -reach), new(0, reach), Pens.Centre);
    }

    private void Turned()
    {
        double turned = _plan.Ring.Diameter.Millimetres;
        if (turned < (2 * Glued.OuterApothem) - 1e-6) Round(turned);
        switch (_plan.Ring)
        {
            case WedgeDisc { Bore: Length bore }:
                Round(bore.Millimetres);
                Hole("Bore", bore.Millimetres);
                break;
            case SegmentRing open:
                Round(open.InnerDiameter.Millimetres);
                Hole("Turned inside", open.InnerDiameter.Millimetres);
                break;
        }
    }

    private void Round(double diameter) => _drawing.Stroke(_place.Circle(Vector2D.Zero, diameter / 2), Pens.Hidden);

    // The label stands above the ring's shoulder, on two lines, so that it needs little room at the side.
    private void Hole(string what, double diameter)
    {
        double angle = -2.2;
        Vector2D target = Vector2D.Polar(_place.Scale * diameter / 2, angle);
        Vector2D knee = new(0.62 * -Outside, -Outside - 5);
        _drawing.Note(target, knee, $"{what} Ø {_style.Length(diameter)}");
    }

    private void Sizes()
    {
        double below = Outside + 9, from = 0.45 * Outside, half = _place.Scale * Glued.OuterApothem;
        double turned = _plan.Ring.Diameter.Millimetres;
        if (turned < (2 * Glued.OuterApothem) - 1e-6)
        {
            double radius = _place.Scale * turned / 2;
            _drawing.Dimension(new(-radius, from), new(radius, from), from - below, $"turned Ø {_style.Length(turned)}");
            below += 8;
        }

        _drawing.Dimension(new(-half, from), new(half, from), from - below, $"across flats {_style.Length(2 * Glued.OuterApothem)}");
        Vector2D up = _place.Point(new(Glued.OuterApothem, Glued.RimEdge / 2));
        Vector2D down = _place.Point(new(Glued.OuterApothem, -Glued.RimEdge / 2));
        _drawing.Dimension(up, down, Outside - half + 9, $"rim edge {_style.Length(Glued.RimEdge)}");
    }
}
