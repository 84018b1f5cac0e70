using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>
/// A whole piece to scale: the left half from outside with every segment, the right half cut through along the axis with the glued
/// rings dashed around the turned wall; its sizes, and its rings at the left.
/// </summary>
public sealed class PiecePicture
{
    private const double ColumnGap = 5;  // from the piece to the column of rings, mm
    private const double AxisOver = 2.5; // of the axis beyond the piece, mm

    private readonly Plan _plan;
    private readonly ImmutableArray<PieceRing> _rings;
    private readonly ImmutableArray<WallLevel> _levels;
    private readonly MeasureStyle _style;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private PiecePicture(Plan plan, ImmutableArray<PieceRing> rings, MeasureStyle style, DrawingScale scale) =>
        (_plan, _rings, _levels, _style, _place) = (plan, rings, [.. rings.SelectMany(r => r.Levels)], style, new(Vector2D.Zero, scale.Ratio));

    private Holding? Holding => _plan.Piece.Shape?.Holding;

    /// <summary>Draws the piece at the largest preferred scale that fits.</summary>
    /// <param name="plan">The piece.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its sizes.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    /// <exception cref="LayoutException">There is no room for it at any scale.</exception>
    public static ScaledPicture Draw(Plan plan, MeasureStyle style, Room room, bool coloured = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        ImmutableArray<PieceRing> rings = PieceRing.Of(plan);
        double wide = 2 * Reach(rings), tall = rings[^1].Stacked.Top;
        // The segments lie inside the walls.
        return ScaledPicture.Largest(
            Math.Max(wide, tall * room.Width / room.Height), room,
            scale => new PiecePicture(plan, rings, style, scale).Draw(null),
            scale => new PiecePicture(plan, rings, style, scale).Draw(new(WoodKey.Of(plan), Elevation.IsShaded(rings, scale.Ratio), coloured)), DrawingScale.WithBetween);
    }

    /// <summary>Whether woods are shown by greys instead of lines at a scale, because segments are too small.</summary>
    public static bool IsShaded(Plan plan, double scale)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Elevation.IsShaded(PieceRing.Of(plan), scale);
    }

    private static double Reach(ImmutableArray<PieceRing> rings) =>
        Math.Max(rings.SelectMany(r => RingBlank.Of(r.Stacked)).Max(c => c.X), rings.SelectMany(r => r.Levels).Select(l => l.Outer).DefaultIfEmpty(0).Max());

    // Without its segments where there are no tones for them.
    private Drawing Draw(WoodTones? tones)
    {
        CutHalf.Draw(_drawing, _rings, _place);
        if (tones is not null) Elevation.Draw(_drawing, _rings, _place, tones);
        GlueLines();
        Walls();
        if (Holding is not null) Held(Holding);
        double low = Math.Min(_rings[0].Stacked.Bottom, _levels[0].Z - (Holding is { Kind: HoldingKind.Tenon } tenon ? tenon.Length.Millimetres : 0));
        double foot = _place.Point(new(0, low)).Y, head = _place.Point(new(0, _rings[^1].Stacked.Top)).Y;
        _drawing.Line(new(0, foot + AxisOver), new(0, head - AxisOver), Pens.Centre);
        Sizes(foot, head);
        return _drawing;
    }

    // Where rings meet, on both halves; a wider ring shows its edge on the narrower one's side.
    private void GlueLines()
    {
        for (int i = 1; i < _rings.Length; i++)
        {
            if (_rings[i - 1].Turned is null || _rings[i].Turned is null) continue;
            WallLevel below = _rings[i - 1].Levels[^1], above = _rings[i].Levels[0];
            double outer = Math.Max(below.Outer, above.Outer), inner = Math.Min(below.Inner, above.Inner);
            _drawing.Line(_place.Point(new(-outer, above.Z)), _place.Point(new(0, above.Z)), Pens.Fine)
                .Line(_place.Point(new(inner, above.Z)), _place.Point(new(outer, above.Z)), Pens.Fine);
        }
    }

    private void Walls()
    {
        WallLevel bottom = _levels[0], top = _levels[^1];
        foreach (int side in new[] { -1, 1 })
            _drawing.Stroke(Outline.Polyline(_place.Points(_levels.Select(l => new Vector2D(side * l.Outer, l.Z)))), Pens.Medium);
        foreach (WallLevel end in new[] { bottom, top })
            _drawing.Line(_place.Point(new(-end.Outer, end.Z)), _place.Point(new(end.Outer, end.Z)), Pens.Medium);
        foreach (IReadOnlyList<Vector2D> chain in CutHalf.Inside(_rings))
            _drawing.Stroke(Outline.Polyline(_place.Points(chain)), Pens.Medium);
    }

    // A tenon on both halves; a recess is hidden from outside.
    private void Held(Holding holding)
    {
        double radius = holding.Diameter.Millimetres / 2, from = _levels[0].Z;
        bool tenon = holding.Kind == HoldingKind.Tenon;
        double to = from + ((tenon ? -1 : 1) * holding.Length.Millimetres), left = tenon ? -radius : 0;
        Vector2D[] line = [new(left, from), new(left, to), new(radius, to), new(radius, from)];
        _drawing.Stroke(Outline.Polyline(_place.Points(tenon ? line : line[1..])), Pens.Hidden);
    }

    private void Sizes(double foot, double head)
    {
        double reach = _place.Scale * Reach(_rings);
        new PieceSizes(_plan, _levels, _place, _style).Draw(_drawing, foot, head, reach);
        double left = Math.Min(-reach, _drawing.TextBoxes.Select(t => t.Box.X).DefaultIfEmpty(-reach).Min());
        RingColumn.Draw(
            _drawing, left - ColumnGap, [.. _rings.Select(r => r.Plan.Ring)],
            [_place.Point(new(0, 0)).Y, .. _rings.Select(r => _place.Point(new(0, r.Stacked.Top)).Y)], _style);
    }
}
