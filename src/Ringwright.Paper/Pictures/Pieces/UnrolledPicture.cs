using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>
/// The outside of a piece laid flat, ring by ring from the bottom up, as seen from outside. In the middle stands the middle of the
/// first segment of a ring that is not turned.
/// </summary>
public sealed class UnrolledPicture
{
    private const double ColumnGap = 5, Away = 8, MarkTall = 3; // mm

    private readonly ImmutableArray<UnrolledRing> _rows;
    private readonly MeasureStyle _style;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private UnrolledPicture(ImmutableArray<UnrolledRing> rows, MeasureStyle style, DrawingScale scale) =>
        (_rows, _style, _place) = (rows, style, new(Vector2D.Zero, scale.Ratio));

    /// <summary>Draws it at the largest preferred scale that fits.</summary>
    /// <param name="plan">The piece.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its sizes.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    /// <exception cref="LayoutException">There is no room for it at any scale.</exception>
    public static ScaledPicture Draw(Plan plan, MeasureStyle style, Room room, bool coloured = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        ImmutableArray<UnrolledRing> rows = UnrolledRing.Of(PieceRing.Of(plan));
        WoodKey key = WoodKey.Of(plan);
        double wide = 2 * rows.Max(r => r.Half), tall = rows[^1].High;
        // The segments lie inside their rows.
        return ScaledPicture.Largest(
            Math.Max(wide, tall * room.Width / room.Height), room,
            scale => new UnrolledPicture(rows, style, scale).Draw(null),
            scale => new UnrolledPicture(rows, style, scale).Draw(new(key, IsShaded(rows, scale.Ratio), coloured)));
    }

    /// <summary>Whether woods are shown by greys instead of lines at a scale, because segments are too small.</summary>
    public static bool IsShaded(Plan plan, double scale)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return IsShaded(UnrolledRing.Of(PieceRing.Of(plan)), scale);
    }

    private static bool IsShaded(ImmutableArray<UnrolledRing> rows, double scale) =>
        rows.Any(r => WoodTones.MustShade(scale * Widths(r).Min(), scale * (r.High - r.Low)));

    private static IEnumerable<double> Widths(UnrolledRing row) => row.Ring.Turned!.Segments.Select(s => SeenSegment.Width(s, row.Middle));

    // Without the segments where there are no tones for them.
    private Drawing Draw(WoodTones? tones)
    {
        if (tones is not null) Segments(tones);
        _drawing.Stroke(Outline.Join(_rows.Select(Edge)), Pens.Fine);
        Sizes();
        return _drawing;
    }

    private void Segments(WoodTones tones)
    {
        List<Outline> joints = [];
        foreach (UnrolledRing row in _rows)
        {
            JointLines lines = new();
            foreach (SeenSegment segment in row.Seen())
                foreach (double move in UnrolledRing.Turn.Moves(segment)) Add(row, segment, move, tones, lines);
            joints.AddRange(lines.Shown(_place.Scale * Widths(row).Max()));
        }

        tones.Draw(_drawing);
        if (joints.Count > 0) _drawing.Stroke(Outline.Join(joints), Pens.Fine);
    }

    private Outline Edge(UnrolledRing row) =>
        _place.Polygon([new(-row.Half, row.Low), new(row.Half, row.Low), new(row.Half, row.High), new(-row.Half, row.High)]);

    // Its sides run straight between the ring's faces.
    private void Add(UnrolledRing row, SeenSegment segment, double move, WoodTones tones, JointLines lines)
    {
        IReadOnlyList<Vector2D> from = _place.Points(row.Edge(segment, move, level => level.From)), to = _place.Points(row.Edge(segment, move, level => level.To));
        tones.Add(segment.Wood, Outline.Polygon([.. from, .. to.Reverse()]));
        lines.Add(UnrolledRing.Turn, segment, move, from, to);
    }

    private void Sizes()
    {
        UnrolledRing widest = _rows.MaxBy(r => r.Half)!;
        double half = _place.Scale * widest.Half, top = -_place.Scale * _rows[^1].High;
        foreach ((double from, double to) in new[] { (0.8, MarkTall), (top - 0.8, top - MarkTall) })
            _drawing.Line(new(0, from), new(0, to), Pens.Medium);
        Vector2D left = _place.Point(new(-widest.Half, widest.Low)), right = _place.Point(new(widest.Half, widest.Low));
        _drawing.Dimension(left, right, left.Y - Away, $"longest ring {Caliper.Short(_style, 2 * widest.Half)} around");
        RingColumn.Draw(
            _drawing, Math.Min(-half, _drawing.TextBoxes.Min(t => t.Box.X)) - ColumnGap, [.. _rows.Select(r => r.Ring.Plan.Ring)],
            [0, .. _rows.Select(r => -_place.Scale * r.High)], _style);
    }
}
