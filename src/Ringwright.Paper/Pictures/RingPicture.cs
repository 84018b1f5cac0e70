using System.Collections.Immutable;
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
    private readonly RingSizes _sizes;
    private readonly Placement _place;
    private readonly WoodKey _key;
    private readonly bool _coloured, _bare;
    private readonly ImmutableArray<LaidOutline> _pieces;
    private readonly RingLines _lines;
    private readonly Drawing _drawing = new(0, 0);

    private RingPicture(RingPlan plan, ImmutableArray<LaidOutline> pieces, RingLines lines, MeasureStyle style, DrawingScale scale, bool coloured, bool bare)
    {
        (_plan, _pieces, _lines, _sizes, _coloured, _bare) = (plan, pieces, lines, new(plan, style), coloured, bare);
        _place = new(Vector2D.Zero, scale.Ratio);
        _key = WoodKey.Of(plan.Ring);
    }

    private WedgeGeometry Glued => _plan.Glued;

    private double Outside => _place.Scale * _lines.Reach;

    /// <summary>Draws the ring at the largest preferred scale that fits.</summary>
    /// <param name="plan">The ring.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room, bool coloured = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        if (plan.Ring is SolidLayer) return LayerPicture.Draw(plan, style, room, coloured);
        if (plan.Batches.IsEmpty) return BoardRingPicture.Draw(plan, style, room, coloured);
        ImmutableArray<LaidOutline> pieces = LaidOutline.Of(plan);
        RingLines lines = new(pieces, whole: true);
        return ScaledPicture.Largest(2 * lines.Reach, room, scale => new RingPicture(plan, pieces, lines, style, scale, coloured, bare: false).Draw());
    }

    /// <summary>
    /// Draws a ring of wedges without dimensions, which in a small room leave it smaller than it need be; <see cref="RingSizes.InWords"/>
    /// tells them. Null where that makes it no larger than at <paramref name="scale"/>.
    /// </summary>
    internal static ScaledPicture? LargerBare(RingPlan plan, MeasureStyle style, Room room, DrawingScale scale)
    {
        ImmutableArray<LaidOutline> pieces = LaidOutline.Of(plan);
        RingLines lines = new(pieces, whole: true);
        DrawingScale[] larger = [.. DrawingScale.LargestFirst.TakeWhile(s => s.Ratio > scale.Ratio)];
        return ScaledPicture.First(2 * lines.Reach, room, s => new RingPicture(plan, pieces, lines, style, s, coloured: false, bare: true).Draw(), larger, out _);
    }

    /// <summary>Whether the wedges are so narrow at a scale that woods are shown by greys instead of lines.</summary>
    public static bool IsShaded(RingPlan plan, double scale)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return scale * plan.Batches.Min(b => b.Glued.RimEdge) < LeastForHatch;
    }

    /// <summary>
    /// Woods of spacers too thin for lines at a scale at which the wedges have them: the spacers are shown by greys. The value tells
    /// whether wedges are of that wood too.
    /// </summary>
    public static IReadOnlyDictionary<string, bool> ThinWoods(RingPlan plan, double scale)
    {
        ArgumentNullException.ThrowIfNull(plan);
        bool shaded = IsShaded(plan, scale);
        return plan.Spacers.Where(s => !shaded && scale * s.Thickness < LeastForHatch).Select(s => s.Wood).Distinct(StringComparer.OrdinalIgnoreCase)
            .ToDictionary(wood => wood, wood => plan.Woods.Any(w => string.Equals(w.Wood, wood, StringComparison.OrdinalIgnoreCase)), StringComparer.OrdinalIgnoreCase);
    }

    private Drawing Draw()
    {
        bool shaded = IsShaded(_plan, _place.Scale);
        foreach (LaidOutline piece in _pieces)
            if (_plan.Lamination is null) Wood(_place.Polygon(piece.Corners), _key[piece.Wood], piece.Middle, shaded || (piece.IsSpacer && _place.Scale * piece.Width < LeastForHatch));
        if (_plan.Lamination is not null) Strips();
        if (_lines.IsClosed) Closed();
        else foreach (LaidOutline piece in _pieces) _drawing.Stroke(_place.Polygon(piece.Corners), Pens.Medium);
        Cross();
        Turned();
        if (_key.Entries.Count > 1 && _plan.Lamination is null) Letters();
        if (!_bare) Sizes();
        return _drawing;
    }

    private void Wood(Outline outline, WoodEntry wood, double middle, bool shaded)
    {
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
        bool shaded = IsShaded(_plan, _place.Scale);
        foreach (LaidSegment piece in _plan.Layout)
        {
            double middle = (piece.Within!.Value.From.Direction + piece.Within.Value.To.Direction) / 2;
            ConvexPolygon strip = piece.At(Glued.PlanAt(middle), top);
            if (strip.IsEmpty) continue;
            Outline outline = _place.Polygon(strip.Vertices);
            Wood(outline, _key[piece.Wood], middle, shaded);
            _drawing.Stroke(outline, Pens.Fine);
        }
    }

    private void Closed()
    {
        foreach ((Vector2D inner, Vector2D outer) in _lines.Joints(LeastApart / _place.Scale))
            _drawing.Line(_place.Point(inner), _place.Point(outer), Pens.Fine);
        _drawing.Stroke(_place.Polygon(_lines.Outside), Pens.Medium);
        Vector2D[] inside = _lines.Inside;
        if (inside.Length > 2) _drawing.Stroke(_place.Polygon(inside), Pens.Medium);
    }

    // On a white disc, so that lines do not cross them, half way in or just inside a disc's rim; left out where wedges are too narrow.
    private void Letters()
    {
        foreach (LaidOutline piece in _pieces.Where(p => !p.IsSpacer))
        {
            Vector2D rim = _place.Point(0.5 * (piece.Corners[0] + piece.Corners[1])), tip = _place.Point(0.5 * (piece.Corners[2] + piece.Corners[3]));
            double deep = (rim - tip).Length, down = _plan.Ring is IHollowRing ? 0.5 : (Balloon + 1) / deep;
            double wide = ((1 - down) * _place.Scale * piece.Width) + (down * _place.Scale * (piece.Corners[2] - piece.Corners[3]).Length);
            TextLine letter = Typesetter.Set(_key[piece.Wood].Letter, TypeScale.Note);
            if (deep < 2 * (Balloon + 1) || wide < 2 * (Balloon + 0.5) || letter.Width > 1.8 * Balloon) continue;
            Vector2D at = rim + (down * (tip - rim));
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
        foreach (RingSizes.Size size in _sizes.Outside.Where(s => s.IsTurned)) Round(size.Millimetres);
        if (_sizes.Inside is not { } inside) return;
        if (inside.IsTurned) Round(inside.Millimetres);
        if (!_bare) Centre(inside.Words, inside.Millimetres);
    }

    private void Round(double diameter) =>
        _drawing.Stroke(_place.Circle(Vector2D.Zero, diameter / 2), Pens.Medium with { Dashes = Pens.Hidden.Dashes });

    // The label stands above the ring, level with its landing, so that it needs no room at the side.
    private void Centre(string note, double diameter)
    {
        Vector2D target = Vector2D.Polar(_place.Scale * diameter / 2, -1.9);
        _drawing.Note(target, new(target.X + 4, -Outside - 5), note);
    }

    // Below the ring, under each other.
    private void Sizes()
    {
        double below = Outside + 8, from = 0.45 * Outside;
        foreach (RingSizes.Size size in _sizes.Outside)
        {
            double half = _place.Scale * size.Millimetres / 2;
            _drawing.Dimension(new(-half, from), new(half, from), from - below, size.Words);
            below += 8;
        }
    }
}
