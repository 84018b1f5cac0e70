using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// The fences from above: the blade (or the sanding disc) upright at the right, the line square to it, the fence at its
/// mitre, and where the rule measures it. Angles and distances from the pivot are true; how far two fences stand apart is not.
/// </summary>
public sealed class FencePicture
{
    private const double Apart = 17;    // between the square lines of two fences, mm on the paper
    private const double Thick = 4;     // of a fence, mm on the paper
    private const double Disc = 3;      // thickness of the sanding disc, mm on the paper
    private const double Beyond = 6;    // of a fence past the blade, mm on the paper
    private const double Overrun = 1.05; // fence drawn to this times the rule distance

    private readonly MeasureStyle _style;
    private readonly SledKind _kind;
    private readonly double _mitre;
    private readonly double _offset;
    private readonly double _rule;
    private readonly double _scale;
    private readonly Drawing _drawing = new(0, 0);

    private FencePicture(RingPlan plan, Sled sled, MeasureStyle style, DrawingScale scale)
    {
        (_style, _kind, _scale) = (style, sled.Kind, scale.Ratio);
        (_mitre, _offset, _rule) = (plan["mitre"].Value, plan["rule-offset"].Value, sled.RuleDistance.Millimetres);
    }

    private bool Two => _kind == SledKind.TwoFences;

    // Away from the square line: the near fence falls back to the left; against a sanding disc it comes forward.
    private double Lean => _kind == SledKind.DiscSander ? 1 : -1;

    /// <summary>Draws the setting at the largest preferred scale that fits.</summary>
    /// <param name="plan">The ring.</param>
    /// <param name="sled">What holds the board.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    public static ScaledPicture Draw(RingPlan plan, Sled sled, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(sled);
        ArgumentNullException.ThrowIfNull(style);
        return ScaledPicture.Largest(sled.RuleDistance.Millimetres, room, scale => new FencePicture(plan, sled, style, scale).Draw());
    }

    private Drawing Draw()
    {
        Fence(0, Lean, Two ? "fence 1" : "fence");
        if (Two) Fence(-Apart, -Lean, "fence 2");
        Rule();
        Blade();
        return _drawing;
    }

    // A fence whose working edge passes through its pivot at (0, y); its far end lies towards lean (1 up, -1 down).
    private void Fence(double y, double lean, string name)
    {
        int outside = y == 0 ? 1 : -1; // the side of the bar, down or up
        Vector2D pivot = new(0, y), along = Vector2D.AtAngle(Math.PI + (lean * _mitre));
        double length = Overrun * _scale * _rule / Math.Cos(_mitre);
        Vector2D end = pivot + (length * along), start = _kind == SledKind.DiscSander ? pivot : pivot - (Beyond * along);
        Vector2D back = outside * new Vector2D(-Math.Sign(along.X) * along.Y, Math.Abs(along.X));
        Outline bar = Outline.Polygon([start, end, end + (Thick * back), start + (Thick * back)]);
        Vector2D square = new(-_scale * _rule, y), reading = square - new Vector2D(0, lean * _scale * _offset);
        // A sander's fence leans over its square line, which must show.
        _drawing.Hatch(bar, Hatch.All[_kind == SledKind.DiscSander ? 0 : 1]).Stroke(bar, Pens.Medium)
            .Line(new(Overrun * square.X, y), new(Beyond, y), Pens.Centre)
            .Fill(Outline.Circle(pivot, 0.8), Colour.Black)
            .UprightDimension(square, reading, -7, _style.Length(_offset).Replace(" (", "\n(", StringComparison.Ordinal));
        Vector2D middle = pivot + (0.55 * length * along) + ((Thick + 1.5) * back);
        // Left out beside a fence drawn shorter than the words; its angle stands in the settings too.
        TextLine? words = TypeScale.Down(TypeScale.Dimension, TypeScale.Note.Height)
            .Select(s => Typesetter.Set($"{name}, {_style.Print(_mitre, Quantity.Angle)} from square", s))
            .FirstOrDefault(line => line.Width <= 0.75 * length);
        if (words is not null)
            _drawing.Text(words, middle, outside > 0 ? Anchor.TopCentre : Anchor.Centre, Math.Atan2(-along.Y, -along.X));
    }

    // One dimension serves both fences, between their square lines; a single fence has it on the free side. Drawn towards the
    // left, so that a value without room goes away from the blade's name.
    private void Rule()
    {
        double up = Two ? (Apart / 2) + 2.4 : _kind == SledKind.DiscSander ? -Thick - 12 : 8;
        _drawing.Dimension(Vector2D.Zero, new(-_scale * _rule, 0), -up, $"rule at {Caliper.Short(_style, _rule)}");
    }

    private void Blade()
    {
        double top = -(Two ? Apart : 0) - 16, bottom = 14;
        if (_kind == SledKind.DiscSander)
        {
            Outline disc = Outline.Rectangle(new(0, top, Disc, bottom - top));
            _drawing.Hatch(disc, Hatch.All[3]).Stroke(disc, Pens.Heavy)
                .Text("sanding disc", new(Disc + 1.5, (top + bottom) / 2), TypeScale.Dimension, Anchor.TopCentre, -Math.PI / 2);
            return;
        }

        _drawing.Line(new(0, top), new(0, bottom), Pens.Heavy);
        if (Two)
            _drawing.Text("blade", new(2, -Apart / 2), TypeScale.Dimension, Anchor.MiddleLeft);
        else
            _drawing.Text("blade", new(0, top - 2), TypeScale.Dimension, Anchor.Centre);
    }
}
