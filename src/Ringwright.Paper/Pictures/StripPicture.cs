using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// A ripped strip as it is sawn up: end trim and first offcut hatched, kerfs grey, wedges numbered at their rim edge, the
/// rest to hold. What does not fit at a readable scale is left out between two break lines.
/// </summary>
public sealed class StripPicture
{
    private const double Tallest = 34;     // strip on the paper, mm
    private const double RestShown = 24;   // of the rest behind the last wedge, mm on the paper
    private const double BreakGap = 4;     // between two break lines, mm
    private const double StartShare = 0.6; // of the room for the start of a broken strip

    private readonly RingPlan _plan;
    private readonly MeasureStyle _style;
    private readonly StripPlan _strip;
    private readonly double _length;
    private readonly double _scale;
    private readonly double _width;
    private readonly Drawing _drawing = new(0, 0);
    private readonly double[] _numbered = [double.NegativeInfinity, double.NegativeInfinity];

    private StripPicture(RingPlan plan, MeasureStyle style, double length, int wedges, double scale, double width)
    {
        (_plan, _style, _length, _scale, _width) = (plan, style, length, scale, width);
        _strip = plan.Strip.Saw(length, wedges);
    }

    private StripLayout Layout => _plan.Strip;

    /// <summary>Draws one strip at the largest preferred scale at which its first two wedges and its last one fit.</summary>
    /// <param name="plan">The ring.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="length">Length of the strip, mm.</param>
    /// <param name="wedges">Wedges sawn from it.</param>
    /// <param name="width">Room across, mm.</param>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, double length, int wedges, double width)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        double room = width - 1; // lines have a thickness
        foreach (DrawingScale scale in DrawingScale.LargestFirst.Where(s => Readable(plan.Strip, s.Ratio, length, room)))
        {
            Drawing drawing = new StripPicture(plan, style, length, wedges, scale.Ratio, room).Draw().Cropped();
            if (drawing.Width <= width) return new(drawing, scale);
        }

        throw new LayoutException("The strip", length, width);
    }

    private static bool Readable(StripLayout strip, double scale, double length, double room)
    {
        double start = strip.EndTrim + (strip.Wedge.Depth * Math.Tan(strip.Wedge.HalfAngle)) + strip.KerfAlong + (2 * strip.Pitch);
        bool broken = scale * start <= StartShare * room && (scale * 1.5 * strip.Pitch) + RestShown + BreakGap <= (1 - StartShare) * room;
        return scale * strip.Wedge.Depth <= Tallest && (broken || scale * length <= room);
    }

    private Drawing Draw()
    {
        double rest = _strip.Rest.Vertices.Min(v => v.X), shown = Math.Min(_length, rest + (RestShown / _scale));
        if (_scale * _length <= _width) shown = _length;
        if (_scale * shown <= _width)
        {
            Part(new(0, shown, 0));
        }
        else
        {
            Window start = new(0, StartShare * _width / _scale, 0), end = End(start.To, rest, shown);
            Part(start);
            Part(end);
            Break(_scale * start.To);
            Break(_scale * (end.From + end.Shift));
            shown += end.Shift;
        }

        if (shown < _length) Break(_scale * shown);
        Sizes();
        return _drawing;
    }

    // The last wedge and a little of the rest, moved towards the start.
    private Window End(double after, double rest, double to)
    {
        double from = Math.Max(after, rest - (1.5 * Layout.Pitch));
        return new(from, to, after + (BreakGap / _scale) - from);
    }

    private void Part(Window window)
    {
        foreach (ConvexPolygon waste in new[] { _strip.Trim, _strip.Offcut })
            Piece(waste, window, o => _drawing.Hatch(o, Hatch.All[1]));
        foreach (ConvexPolygon kerf in _strip.Kerfs)
            Piece(kerf, window, o => _drawing.Fill(o, Colour.Grey(190)));
        foreach (ConvexPolygon wedge in _strip.Wedges)
            Piece(wedge, window, _ => { });
        Piece(_strip.Rest, window, _ => { });
        Numbers(window);
    }

    private void Piece(ConvexPolygon piece, Window window, Action<Outline> paint)
    {
        ConvexPolygon seen = window.Clip(piece);
        if (seen.IsEmpty) return;
        paint(Outline.Polygon([.. seen.Vertices.Select(window.Paper(_scale))]));
        foreach ((Vector2D a, Vector2D b) in seen.Edges())
        {
            bool cutOff = Math.Abs(a.X - b.X) < 1e-9 && ((a.X == window.From && a.X > 0) || (a.X == window.To && a.X < _length));
            if (!cutOff) _drawing.Line(window.Paper(_scale)(a), window.Paper(_scale)(b), Pens.Medium);
        }
    }

    // Beside the rim edge, left out where the one before is too near.
    private void Numbers(Window window)
    {
        for (int i = 0; i < _strip.Wedges.Length; i++)
        {
            double middle = _strip.Wedges[i].Vertices.Average(v => v.X);
            TextLine number = Typesetter.Set((i + 1).ToString(CultureInfo.InvariantCulture), TypeScale.Note);
            double x = _scale * (middle + window.Shift);
            double clear = (number.Width / 2) + 1;
            if (x - clear < _scale * (window.From + window.Shift) || x + clear > _scale * (window.To + window.Shift)) continue;
            if (x - (number.Width / 2) < _numbered[i % 2]) continue;
            _numbered[i % 2] = x + (number.Width / 2) + 1;
            double edge = i % 2 == 0 ? 1.6 : (-_scale * Layout.Wedge.Depth) - 1.6;
            _drawing.Text(number, new(x, edge), i % 2 == 0 ? Anchor.TopCentre : Anchor.Centre);
        }
    }

    private void Break(double x)
    {
        double tall = _scale * Layout.Wedge.Depth, tooth = 1.1, middle = -tall / 2;
        _drawing.Stroke(
            Outline.Polyline([
                new(x, 2), new(x, middle + 1.2), new(x - tooth, middle + 0.6), new(x + tooth, middle - 0.6), new(x, middle - 1.2),
                new(x, -tall - 2),
            ]),
            Pens.Fine);
    }

    private void Sizes()
    {
        double y = -_scale * Layout.Wedge.Depth / 2, up = (-y) + 9;
        double first = _scale * _strip.Kerfs[0].Vertices.Average(v => v.X);
        _drawing.Dimension(new(first, y), new(first + (_scale * Layout.Pitch), y), up, $"{Caliper.Short(_style, Layout.Pitch)} each");
    }

    /// <summary>A stretch of the strip and how far it is moved along, mm in the workshop.</summary>
    private readonly record struct Window(double From, double To, double Shift)
    {
        public ConvexPolygon Clip(ConvexPolygon piece) =>
            piece.Clip(new(new(-1, 0), -From)).Clip(new(new(1, 0), To));

        public Func<Vector2D, Vector2D> Paper(double scale)
        {
            double shift = Shift;
            return p => new(scale * (p.X + shift), -scale * p.Y);
        }
    }
}
