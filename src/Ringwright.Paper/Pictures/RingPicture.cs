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
    private const double LeastApart = 0.3;    // joints on the paper, mm
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

    /// <summary>Whether the wedges are so narrow at a scale that woods are shown by greys instead of lines.</summary>
    public static bool IsShaded(RingPlan plan, double scale)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return scale * plan.Glued.RimEdge < LeastForHatch;
    }

    private Drawing Draw()
    {
        for (int i = 0; i < Glued.Segments; i++)
        {
            if (_plan.Lamination is null) Wedge(_place.Polygon(Glued.Plan(i).Vertices), _key[_plan.Ring.WoodOf(i)], i * Glued.WedgeAngle);
            Joint((i + 0.5) * Glued.WedgeAngle);
        }

        if (_plan.Lamination is not null) Strips();
        Contour(Glued.OuterCorner);
        if (Glued.InnerApothem > 0) Contour(Glued.InnerCorner);
        Cross();
        Turned();
        if (_key.Entries.Count > 1 && _plan.Lamination is null) Letters();
        Sizes();
        return _drawing;
    }

    private void Wedge(Outline outline, WoodEntry wood, double middle)
    {
        bool shaded = IsShaded(_plan, _place.Scale);
        if (_coloured)
            _drawing.Fill(outline, wood.Tint);
        else if (shaded)
            _drawing.Fill(outline, wood.Shade);
        if (!shaded)
            _drawing.Hatch(outline, wood.Hatch.Turned(_place.Angle(middle)));
    }

    // Several strips show on the upper face of each segment.
    private void Strips()
    {
        double top = _plan.Ring.Thickness.Millimetres;
        foreach (LaidSegment piece in _plan.Layout)
        {
            double middle = (piece.Within!.Value.From.Direction + piece.Within.Value.To.Direction) / 2;
            ConvexPolygon strip = piece.At(Glued.PlanAt(middle), top);
            if (strip.IsEmpty) continue;
            Outline outline = _place.Polygon(strip.Vertices);
            Wedge(outline, _key[piece.Wood], middle);
            _drawing.Stroke(outline, Pens.Fine);
        }
    }

    // Towards the centre joints end where their lines would run into each other.
    private void Joint(double angle)
    {
        double from = Math.Max(_place.Scale * Glued.InnerCorner, LeastApart * Glued.Segments / (2 * Math.PI));
        if (from < Outside) _drawing.Line(Vector2D.Polar(from, _place.Angle(angle)), Vector2D.Polar(Outside, _place.Angle(angle)), Pens.Fine);
    }

    private void Contour(double corner) => _drawing.Stroke(
        _place.Polygon(Enumerable.Range(0, Glued.Segments).Select(i => Vector2D.Polar(corner, ((2 * i) + 1) * Glued.HalfAngle))), Pens.Medium);

    // On a white disc, so that lines do not cross them, half way in or just inside a disc's rim; left out where wedges are too narrow.
    private void Letters()
    {
        double radius = _plan.Ring is IHollowRing
            ? _place.Scale * (Glued.OuterApothem + Glued.InnerApothem) / 2
            : (_place.Scale * Glued.OuterApothem) - Balloon - 1;
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
        double reach = Outside + 2;
        _drawing.Line(new(-reach, 0), new(reach, 0), Pens.Centre).Line(new(0, -reach), new(0, reach), Pens.Centre);
    }

    private void Turned()
    {
        double turned = _plan.Ring.Outside.Millimetres;
        if (turned < (2 * Glued.OuterApothem) - 1e-6) Round(turned);
        switch (_plan.Ring)
        {
            case WedgeDisc { Bore: Length bore }:
                Round(bore.Millimetres);
                Centre($"bore Ø {Caliper.Short(_style, bore.Millimetres)}", bore.Millimetres);
                break;
            case IHollowRing { InnerDiameter: Length inside }:
                Round(inside.Millimetres);
                Centre($"turned inside Ø {Caliper.Short(_style, inside.Millimetres)}", inside.Millimetres);
                break;
            case WedgeDisc when Glued.InnerApothem > 0:
                Centre($"opening {Caliper.Short(_style, 2 * Glued.InnerApothem)} across flats", 2 * Glued.InnerApothem);
                break;
        }
    }

    private void Round(double diameter) =>
        _drawing.Stroke(_place.Circle(Vector2D.Zero, diameter / 2), Pens.Medium with { Dashes = Pens.Hidden.Dashes });

    // The label stands above the ring, level with its landing, so that it needs no room at the side.
    private void Centre(string note, double diameter)
    {
        Vector2D target = Vector2D.Polar(_place.Scale * diameter / 2, -1.9);
        _drawing.Note(target, new(target.X + 4, -Outside - 5), note);
    }

    // Below the ring: what is turned, then what is glued.
    private void Sizes()
    {
        double turned = _plan.Ring.Outside.Millimetres, flats = 2 * Glued.OuterApothem;
        double below = Outside + 8;
        if (turned < flats - 1e-6) below = Size(turned, below, "turned Ø");
        Size(flats, below, "across flats");
    }

    private double Size(double size, double below, string what)
    {
        double half = _place.Scale * size / 2, from = 0.45 * Outside;
        _drawing.Dimension(new(-half, from), new(half, from), from - below, $"{what} {Caliper.Short(_style, size)}");
        return below + 8;
    }
}
