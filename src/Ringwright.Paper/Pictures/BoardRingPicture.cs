using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>A ring sawn out of a board, from above as it stands in the piece: edges of the upper face whole, of the lower one dashed.</summary>
public sealed class BoardRingPicture
{
    private const double LeastForHatch = 3.2; // rim edge on the paper, mm: narrower segments are shaded
    private const double Arc = Math.PI / 90;  // a rim is drawn in chords no longer than this, rad

    private readonly RingPlan _plan;
    private readonly SawnBoardRing _ring;
    private readonly MeasureStyle _style;
    private readonly bool _coloured;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private BoardRingPicture(RingPlan plan, SawnBoardRing ring, MeasureStyle style, DrawingScale scale, bool coloured) =>
        (_plan, _ring, _style, _coloured, _place) = (plan, ring, style, coloured, new(Vector2D.Zero, scale.Ratio));

    private FaceRadii Upper => _ring.Face(up: true);

    private FaceRadii Lower => _ring.Face(up: false);

    private double Outer => Math.Max(Upper.Outer, Lower.Outer);

    private double Inner => Math.Min(Upper.Inner, Lower.Inner);

    /// <summary>Draws the ring at the largest preferred scale that fits.</summary>
    /// <param name="plan">The ring; it comes from a board.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room, bool coloured = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        SawnBoardRing ring = plan.Board?[plan.Ring.Name] ?? throw new ArgumentException("The ring comes from no board.", nameof(plan));
        return ScaledPicture.Largest(2 * ring.Wide.Outer, room, scale => new BoardRingPicture(plan, ring, style, scale, coloured).Draw());
    }

    private Drawing Draw()
    {
        WoodKey key = WoodKey.Of(_plan.Ring);
        foreach (LaidSegment laid in _plan.Layout) Segment(laid, key[laid.Wood]);
        foreach (double radius in new[] { Upper.Outer, Upper.Inner }) _drawing.Stroke(_place.Circle(Vector2D.Zero, radius), Pens.Medium);
        foreach (double radius in new[] { Lower.Outer, Lower.Inner }.Except([Upper.Outer, Upper.Inner]))
            _drawing.Stroke(_place.Circle(Vector2D.Zero, radius), Pens.Medium with { Dashes = Pens.Hidden.Dashes });
        double reach = (_place.Scale * Outer) + 2;
        _drawing.Line(new(-reach, 0), new(reach, 0), Pens.Centre).Line(new(0, -reach), new(0, reach), Pens.Centre);
        Sizes();
        return _drawing;
    }

    private void Segment(LaidSegment laid, WoodEntry wood)
    {
        double from = laid.From.Direction, to = laid.To.Direction;
        Outline outline = _place.Polygon([.. Rim(Outer, from, to), .. Rim(Inner, to, from)]);
        bool shaded = _place.Scale * Outer * (to - from) < LeastForHatch;
        if (_coloured) _drawing.Fill(outline, wood.Tint);
        else if (shaded) _drawing.Fill(outline, wood.Shade);
        if (!shaded) _drawing.Hatch(outline, wood.Hatch.Turned(_place.Angle((from + to) / 2)));
        _drawing.Line(_place.Point(Vector2D.Polar(Inner, from)), _place.Point(Vector2D.Polar(Outer, from)), Pens.Fine);
        Letter(wood.Letter, (from + to) / 2, to - from);
    }

    private void Letter(string letter, double middle, double angle)
    {
        const double Balloon = 1.7;
        double radius = (Outer + Inner) / 2;
        TextLine text = Typesetter.Set(letter, TypeScale.Note);
        if (_plan.Layout.DistinctBy(l => l.Wood).Count() == 1 || text.Width > 1.8 * Balloon) return;
        if (_place.Scale * radius * angle < 2 * (Balloon + 0.5) || _place.Scale * (Outer - Inner) < 2 * (Balloon + 1)) return;
        Vector2D at = _place.Point(Vector2D.Polar(radius, middle));
        _drawing.Fill(Outline.Circle(at, Balloon), new Colour(255, 255, 255)).Text(text, at, Anchor.Middle);
    }

    private static ImmutableArray<Vector2D> Rim(double radius, double from, double to)
    {
        int chords = Math.Max(1, (int)Math.Ceiling(Math.Abs(to - from) / Arc));
        return [.. Enumerable.Range(0, chords + 1).Select(i => Vector2D.Polar(radius, from + ((to - from) * i / chords)))];
    }

    // Below: outside and inside, upper face first.
    private void Sizes()
    {
        double below = (_place.Scale * Outer) + 8;
        foreach ((string what, double radius) in new[] { ("inside above Ø", Upper.Inner), ("inside below Ø", Lower.Inner), ("outside above Ø", Upper.Outer), ("outside below Ø", Lower.Outer) })
        {
            double half = _place.Scale * radius;
            _drawing.Dimension(new(-half, 0), new(half, 0), -below, $"{what} {Caliper.Short(_style, 2 * radius)}");
            below += 8;
        }
    }
}
