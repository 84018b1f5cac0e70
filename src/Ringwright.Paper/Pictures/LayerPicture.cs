using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>A plain layer from above, lying in the board it is sawn from: the round heavy, what is turned away dashed, the grain by an arrow.</summary>
public sealed class LayerPicture
{
    private readonly RingPlan _plan;
    private readonly MeasureStyle _style;
    private readonly bool _coloured;
    private readonly Placement _place;
    private readonly Drawing _drawing = new(0, 0);

    private LayerPicture(RingPlan plan, MeasureStyle style, DrawingScale scale, bool coloured) =>
        (_plan, _style, _coloured, _place) = (plan, style, coloured, new(Vector2D.Zero, scale.Ratio));

    private double Round => _plan["round"].Value;

    private double Wide => _plan["board-width"].Value;

    private double Long => _plan["board-length"].Value;

    // The board's frame from above, so that the grain lies on the paper as it lies in the piece.
    private Frame3D Board => _plan.Layout[0].Frame;

    /// <summary>Draws the layer at the largest preferred scale that fits.</summary>
    /// <param name="plan">The layer.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room for the picture with its dimensions.</param>
    /// <param name="coloured">Also with a guess of the wood's colour, for a screen.</param>
    public static ScaledPicture Draw(RingPlan plan, MeasureStyle style, Room room, bool coloured = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return ScaledPicture.Largest(plan["round"].Value, room, scale => new LayerPicture(plan, style, scale, coloured).Draw());
    }

    private Drawing Draw()
    {
        WoodEntry wood = WoodKey.Of(_plan.Ring)[_plan.Layout[0].Wood];
        Outline round = _place.Circle(Vector2D.Zero, Round / 2);
        if (_coloured) _drawing.Fill(round, wood.Tint);
        double grain = Math.Atan2(Board.X.Y, Board.X.X);
        _drawing.Hatch(round, wood.Hatch.Turned(_place.Angle(grain))).Stroke(Sheet(), Pens.Fine);
        GlueLines();
        _drawing.Stroke(round, Pens.Heavy);
        double turned = _plan.Ring.Outside.Millimetres;
        if (turned < Round - 1e-6) _drawing.Stroke(_place.Circle(Vector2D.Zero, turned / 2), Pens.Medium with { Dashes = Pens.Hidden.Dashes });
        Cross();
        Grain();
        Sizes(turned);
        return _drawing;
    }

    private Outline Sheet() => _place.Polygon([At(0, 0), At(Long, 0), At(Long, Wide), At(0, Wide)]);

    // Equal boards side by side, as far as more than one is needed.
    private void GlueLines()
    {
        int across = _plan.Find("boards-across") is Figure boards ? (int)boards.Value : 1;
        for (int i = 1; i < across; i++)
            _drawing.Line(_place.Point(At(0, Wide * i / across)), _place.Point(At(Long, Wide * i / across)), Pens.Fine);
    }

    private void Cross()
    {
        double reach = (_place.Scale * Round / 2) + 2;
        _drawing.Line(new(-reach, 0), new(reach, 0), Pens.Centre).Line(new(0, -reach), new(0, reach), Pens.Centre);
    }

    // Both ways along the grain, on white, above the middle of the round.
    private void Grain()
    {
        Vector2D along = _place.Point(new(Board.X.X, Board.X.Y)) - _place.Origin;
        Vector2D unit = (1 / along.Length) * along, middle = _place.Scale * 0.22 * Round * new Vector2D(unit.Y, -unit.X);
        if (middle.Y > 0) middle = -middle;
        double half = Math.Min(16, 0.3 * _place.Scale * Round);
        TextLine word = Typesetter.Set("grain", TypeScale.Dimension);
        Box clear = new(middle.X - (word.Width / 2) - 1, middle.Y - 2.2, word.Width + 2, 4.4);
        _drawing.Line(middle - (half * unit), middle + (half * unit), Pens.Medium);
        Arrows.Head(_drawing, middle - (half * unit), -unit);
        Arrows.Head(_drawing, middle + (half * unit), unit);
        _drawing.Fill(Outline.Rectangle(clear), new Colour(255, 255, 255)).Text(word, middle, Anchor.Middle);
    }

    // Below everything: what is turned, then the round.
    private void Sizes(double turned)
    {
        double foot = new[] { At(0, 0), At(Long, 0), At(Long, Wide), At(0, Wide) }.Max(p => _place.Point(p).Y), below = foot + 7;
        if (turned < Round - 1e-6) below = Size(turned, below, "turned Ø");
        Size(Round, below, _plan.Ring is Core.Pieces.SolidLayer { IsVeneer: true } ? "cut Ø" : "sawn Ø");
    }

    private double Size(double size, double below, string what)
    {
        double half = _place.Scale * size / 2;
        _drawing.Dimension(new(-half, 0), new(half, 0), -below, $"{what} {Caliper.Short(_style, size)}");
        return below + 8;
    }

    private Vector2D At(double along, double across)
    {
        Vector3D at = Board.ToOuter(new Vector3D(along, across, 0));
        return new(at.X, at.Y);
    }
}
